using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using static Microsoft.CodeAnalysis.CSharp.SyntaxFactory;

namespace Recipe.RulesHost.Compiling;

/// <summary>What grows or repeats without a loop or a body: sizes of arrays, texts, sequences, queries, initialisers of fields, arguments of base constructors.</summary>
internal sealed partial class StepRewriter
{
    public override SyntaxNode? VisitArrayCreationExpression(ArrayCreationExpressionSyntax node)
    {
        var visited = (ArrayCreationExpressionSyntax)base.VisitArrayCreationExpression(node)!;
        if (node.Initializer is not null || node.Type.RankSpecifiers is not [var rank, ..] || rank.Sizes is not [not OmittedArraySizeExpressionSyntax])
        {
            return visited;
        }

        var first = visited.Type.RankSpecifiers[0];
        return visited.WithType(visited.Type.WithRankSpecifiers(visited.Type.RankSpecifiers.Replace(first, first.WithSizes([Call("Size", first.Sizes[0])]))));
    }

    public override SyntaxNode? VisitBinaryExpression(BinaryExpressionSyntax node)
    {
        var visited = (BinaryExpressionSyntax)base.VisitBinaryExpression(node)!;

        // A chain of pluses is one text.
        return IsGrowingText(node) && !(node.Parent is BinaryExpressionSyntax parent && IsGrowingText(parent)) ? Call("Text", visited) : visited;
    }

    public override SyntaxNode? VisitInterpolatedStringExpression(InterpolatedStringExpressionSyntax node)
    {
        var visited = (InterpolatedStringExpressionSyntax)base.VisitInterpolatedStringExpression(node)!;
        return IsText(node) && model.GetTypeInfo(node).ConvertedType?.SpecialType is SpecialType.System_String or SpecialType.System_Object ? Call("Text", visited) : visited;
    }

    public override SyntaxNode? VisitAssignmentExpression(AssignmentExpressionSyntax node)
    {
        var visited = (AssignmentExpressionSyntax)base.VisitAssignmentExpression(node)!;
        return node.IsKind(SyntaxKind.AddAssignmentExpression)
            && model.GetTypeInfo(node.Left).Type?.SpecialType == SpecialType.System_String
            && model.GetTypeInfo(node.Right).Type?.SpecialType == SpecialType.System_String
                ? visited.WithRight(Call("Text", visited.Right))
                : visited;
    }

    public override SyntaxNode? VisitInvocationExpression(InvocationExpressionSyntax node)
    {
        var visited = (InvocationExpressionSyntax)base.VisitInvocationExpression(node)!;
        if (node.Parent is ExpressionStatementSyntax || HangsOnQuestionMark(node) || model.GetSymbolInfo(node).Symbol is not IMethodSymbol method || method.Locations.Any(location => location.IsInSource))
        {
            return visited;
        }

        if (method.ReturnType.SpecialType == SpecialType.System_String && IsText(node) && !IsVoidLambda(node))
        {
            return Call("Text", visited);
        }

        return IsSequence(method.ReturnType) && !IsVoidLambda(node) ? Call("Counted", visited) : visited;
    }

    public override SyntaxNode? VisitQueryExpression(QueryExpressionSyntax node)
    {
        var visited = (QueryExpressionSyntax)base.VisitQueryExpression(node)!;
        return model.GetTypeInfo(node).Type is { } type && IsSequence(type) ? Call("Counted", visited) : visited;
    }

    public override SyntaxNode? VisitFromClause(FromClauseSyntax node)
    {
        var visited = (FromClauseSyntax)base.VisitFromClause(node)!;
        return visited.WithExpression(Source(node.Expression, visited.Expression));
    }

    public override SyntaxNode? VisitJoinClause(JoinClauseSyntax node)
    {
        var visited = (JoinClauseSyntax)base.VisitJoinClause(node)!;
        return visited
            .WithInExpression(Source(node.InExpression, visited.InExpression))
            .WithLeftExpression(Call("Through", visited.LeftExpression))
            .WithRightExpression(Call("Through", visited.RightExpression));
    }

    public override SyntaxNode? VisitLetClause(LetClauseSyntax node)
    {
        var visited = (LetClauseSyntax)base.VisitLetClause(node)!;
        return visited.WithExpression(Call("Through", visited.Expression));
    }

    public override SyntaxNode? VisitWhereClause(WhereClauseSyntax node)
    {
        var visited = (WhereClauseSyntax)base.VisitWhereClause(node)!;
        return visited.WithCondition(Call("Through", visited.Condition));
    }

    public override SyntaxNode? VisitOrdering(OrderingSyntax node)
    {
        var visited = (OrderingSyntax)base.VisitOrdering(node)!;
        return visited.WithExpression(Call("Through", visited.Expression));
    }

    public override SyntaxNode? VisitSelectClause(SelectClauseSyntax node)
    {
        var visited = (SelectClauseSyntax)base.VisitSelectClause(node)!;
        return visited.WithExpression(Through(visited.Expression));
    }

    public override SyntaxNode? VisitGroupClause(GroupClauseSyntax node)
    {
        var visited = (GroupClauseSyntax)base.VisitGroupClause(node)!;
        return visited.WithGroupExpression(Through(visited.GroupExpression)).WithByExpression(Call("Through", visited.ByExpression));
    }

    public override SyntaxNode? VisitEqualsValueClause(EqualsValueClauseSyntax node)
    {
        // The initialiser of a field runs in the constructor, which may be one that nobody wrote.
        var visited = (EqualsValueClauseSyntax)base.VisitEqualsValueClause(node)!;
        var isField = node.Parent is PropertyDeclarationSyntax || node.Parent is VariableDeclaratorSyntax { Parent.Parent: FieldDeclarationSyntax };
        if (!isField || model.GetConstantValue(node.Value).HasValue)
        {
            return visited;
        }

        return visited.Value is InitializerExpressionSyntax list
            ? visited.WithValue(list.WithExpressions([.. list.Expressions.Select((element, index) => model.GetConstantValue(((InitializerExpressionSyntax)node.Value).Expressions[index]).HasValue ? element : Counted(element))]))
            : visited.WithValue(Counted(visited.Value));
    }

    public override SyntaxNode? VisitConstructorInitializer(ConstructorInitializerSyntax node)
    {
        var visited = (ConstructorInitializerSyntax)base.VisitConstructorInitializer(node)!;
        return visited.WithArgumentList(Arguments(visited.ArgumentList));
    }

    public override SyntaxNode? VisitPrimaryConstructorBaseType(PrimaryConstructorBaseTypeSyntax node)
    {
        var visited = (PrimaryConstructorBaseTypeSyntax)base.VisitPrimaryConstructorBaseType(node)!;
        return visited.WithArgumentList(Arguments(visited.ArgumentList));
    }

    private static ArgumentListSyntax Arguments(ArgumentListSyntax list) =>
        list.WithArguments([.. list.Arguments.Select(argument => argument.RefKindKeyword.RawKind == 0 ? argument.WithExpression(Counted(argument.Expression)) : argument)]);

    // Counts before the expression is worked out, and leaves its type to what it is assigned to.
    private static ExpressionSyntax Counted(ExpressionSyntax expression) => expression is LiteralExpressionSyntax or AnonymousFunctionExpressionSyntax or IdentifierNameSyntax or InitializerExpressionSyntax
        ? expression
        : ParenthesizedExpression(ConditionalExpression(
            InvocationExpression(ParseExpression(Counter + "Enters")),
            ParenthesizedExpression(expression),
            ThrowExpression(LiteralExpression(SyntaxKind.NullLiteralExpression))));

    private static bool IsSequence(ITypeSymbol type) => type.OriginalDefinition.SpecialType == SpecialType.System_Collections_Generic_IEnumerable_T;

    // A query that selects a bare name is often no call at all, and would become one.
    private static ExpressionSyntax Through(ExpressionSyntax expression) => expression is IdentifierNameSyntax ? expression : Call("Through", expression);

    private static InvocationExpressionSyntax Call(string name, ExpressionSyntax argument) =>
        InvocationExpression(ParseExpression(Counter + name), ArgumentList([Argument(argument)]));

    // In a?.B().C() the call of C hangs on the question mark and cannot be taken out of it.
    private static bool HangsOnQuestionMark(ExpressionSyntax? node)
    {
        while (true)
        {
            switch (node)
            {
                case InvocationExpressionSyntax call:
                    node = call.Expression;
                    break;
                case MemberAccessExpressionSyntax access:
                    node = access.Expression;
                    break;
                case ElementAccessExpressionSyntax access:
                    node = access.Expression;
                    break;
                case PostfixUnaryExpressionSyntax unary:
                    node = unary.Operand;
                    break;
                case ConditionalAccessExpressionSyntax access:
                    node = access.Expression;
                    break;
                default:
                    return node is MemberBindingExpressionSyntax or ElementBindingExpressionSyntax;
            }
        }
    }

    // Counted each time it is asked for, and again for each element that is taken from it.
    private InvocationExpressionSyntax Source(ExpressionSyntax node, ExpressionSyntax visited)
    {
        var type = model.GetTypeInfo(node).Type;
        var isSequence = type is IArrayTypeSymbol || (type is not null && (IsSequence(type) || type.AllInterfaces.Count(IsSequence) == 1));
        return Call("Through", isSequence ? Call("Counted", visited) : visited);
    }

    // A body of a function that returns nothing must stay a call.
    private bool IsVoidLambda(ExpressionSyntax node) =>
        (node.Parent is LambdaExpressionSyntax lambda && ReturnsVoid(model.GetSymbolInfo(lambda).Symbol))
        || (node.Parent is ArrowExpressionClauseSyntax { Parent: { } owner } && ReturnsVoid(model.GetDeclaredSymbol(owner)));

    private bool IsText(ExpressionSyntax node) =>
        model.GetTypeInfo(node).Type?.SpecialType == SpecialType.System_String && !model.GetConstantValue(node).HasValue;

    private bool IsGrowingText(BinaryExpressionSyntax node) => node.IsKind(SyntaxKind.AddExpression) && IsText(node);
}
