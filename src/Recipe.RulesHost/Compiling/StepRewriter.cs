using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;
using static Microsoft.CodeAnalysis.CSharp.SyntaxFactory;

namespace Recipe.RulesHost.Compiling;

/// <summary>
/// Writes the counter into source that passed the list: a step at the start of every turn of a loop and of every body, whatever its
/// form. The other half, <c>StepRewriter.Values.cs</c>, counts what grows without a loop: arrays, texts, sequences, initialisers.
/// </summary>
internal sealed partial class StepRewriter(SemanticModel model) : CSharpSyntaxRewriter
{
    private const string Counter = "global::Recipe.RulesHost.Running.Steps.";
    private static readonly StatementSyntax Take = ParseStatement(Counter + "Take();");
    private static readonly StatementSyntax Enter = ParseStatement(Counter + "Enter();");

    public override SyntaxNode? VisitMethodDeclaration(MethodDeclarationSyntax node)
    {
        var visited = (MethodDeclarationSyntax)base.VisitMethodDeclaration(node)!;
        return Method(visited, ReturnsVoid(model.GetDeclaredSymbol(node)));
    }

    public override SyntaxNode? VisitConstructorDeclaration(ConstructorDeclarationSyntax node) =>
        Method((ConstructorDeclarationSyntax)base.VisitConstructorDeclaration(node)!, isVoid: true);

    public override SyntaxNode? VisitOperatorDeclaration(OperatorDeclarationSyntax node) =>
        Method((OperatorDeclarationSyntax)base.VisitOperatorDeclaration(node)!, ReturnsVoid(model.GetDeclaredSymbol(node)));

    public override SyntaxNode? VisitConversionOperatorDeclaration(ConversionOperatorDeclarationSyntax node) =>
        Method((ConversionOperatorDeclarationSyntax)base.VisitConversionOperatorDeclaration(node)!, isVoid: false);

    public override SyntaxNode? VisitLocalFunctionStatement(LocalFunctionStatementSyntax node)
    {
        var visited = (LocalFunctionStatementSyntax)base.VisitLocalFunctionStatement(node)!;
        return visited switch
        {
            { Body: { } body } => visited.WithBody(Entered(body)),
            { ExpressionBody: { } arrow } => visited
                .WithExpressionBody(null)
                .WithSemicolonToken(default)
                .WithBody(Body(arrow.Expression, ReturnsVoid(model.GetDeclaredSymbol(node)))),
            _ => visited,
        };
    }

    public override SyntaxNode? VisitPropertyDeclaration(PropertyDeclarationSyntax node)
    {
        var visited = (PropertyDeclarationSyntax)base.VisitPropertyDeclaration(node)!;
        return visited.ExpressionBody is { } arrow
            ? visited.WithExpressionBody(null).WithSemicolonToken(default).WithAccessorList(Getter(arrow))
            : visited;
    }

    public override SyntaxNode? VisitIndexerDeclaration(IndexerDeclarationSyntax node)
    {
        var visited = (IndexerDeclarationSyntax)base.VisitIndexerDeclaration(node)!;
        return visited.ExpressionBody is { } arrow
            ? visited.WithExpressionBody(null).WithSemicolonToken(default).WithAccessorList(Getter(arrow))
            : visited;
    }

    public override SyntaxNode? VisitAccessorDeclaration(AccessorDeclarationSyntax node)
    {
        var visited = (AccessorDeclarationSyntax)base.VisitAccessorDeclaration(node)!;
        return visited switch
        {
            { Body: { } body } => visited.WithBody(Entered(body)),
            { ExpressionBody: { } arrow } => visited
                .WithExpressionBody(null)
                .WithSemicolonToken(default)
                .WithBody(Body(arrow.Expression, isVoid: !node.IsKind(SyntaxKind.GetAccessorDeclaration))),
            _ => visited,
        };
    }

    public override SyntaxNode? VisitSimpleLambdaExpression(SimpleLambdaExpressionSyntax node) =>
        Function(node, (SimpleLambdaExpressionSyntax)base.VisitSimpleLambdaExpression(node)!);

    public override SyntaxNode? VisitParenthesizedLambdaExpression(ParenthesizedLambdaExpressionSyntax node) =>
        Function(node, (ParenthesizedLambdaExpressionSyntax)base.VisitParenthesizedLambdaExpression(node)!);

    public override SyntaxNode? VisitAnonymousMethodExpression(AnonymousMethodExpressionSyntax node)
    {
        var visited = (AnonymousMethodExpressionSyntax)base.VisitAnonymousMethodExpression(node)!;
        return visited.WithBlock(Entered(visited.Block));
    }

    public override SyntaxNode? VisitWhileStatement(WhileStatementSyntax node)
    {
        var visited = (WhileStatementSyntax)base.VisitWhileStatement(node)!;
        return visited.WithStatement(Turn(visited.Statement));
    }

    public override SyntaxNode? VisitDoStatement(DoStatementSyntax node)
    {
        var visited = (DoStatementSyntax)base.VisitDoStatement(node)!;
        return visited.WithStatement(Turn(visited.Statement));
    }

    public override SyntaxNode? VisitForStatement(ForStatementSyntax node)
    {
        var visited = (ForStatementSyntax)base.VisitForStatement(node)!;
        return visited.WithStatement(Turn(visited.Statement));
    }

    public override SyntaxNode? VisitForEachStatement(ForEachStatementSyntax node)
    {
        var visited = (ForEachStatementSyntax)base.VisitForEachStatement(node)!;
        return visited.WithStatement(Turn(visited.Statement));
    }

    public override SyntaxNode? VisitForEachVariableStatement(ForEachVariableStatementSyntax node)
    {
        var visited = (ForEachVariableStatementSyntax)base.VisitForEachVariableStatement(node)!;
        return visited.WithStatement(Turn(visited.Statement));
    }

    private static BaseMethodDeclarationSyntax Method(BaseMethodDeclarationSyntax visited, bool isVoid) => visited switch
    {
        { Body: { } body } => visited.WithBody(Entered(body)),
        { ExpressionBody: { } arrow } => visited.WithExpressionBody(null).WithSemicolonToken(default).WithBody(Body(arrow.Expression, isVoid)),
        _ => visited,
    };

    private static AccessorListSyntax Getter(ArrowExpressionClauseSyntax arrow) =>
        AccessorList([AccessorDeclaration(SyntaxKind.GetAccessorDeclaration, Body(arrow.Expression, isVoid: false))]);

    private static bool ReturnsVoid(ISymbol? symbol) => symbol is IMethodSymbol { ReturnsVoid: true };

    private static BlockSyntax Turn(StatementSyntax body) => Block(Take, body);

    private static BlockSyntax Entered(BlockSyntax body) => body.WithStatements(body.Statements.Insert(0, Enter));

    private static BlockSyntax Body(ExpressionSyntax expression, bool isVoid) => expression switch
    {
        ThrowExpressionSyntax thrown => Block(Enter, ThrowStatement(thrown.Expression)),
        _ when isVoid => Block(Enter, ExpressionStatement(expression)),
        _ => Block(Enter, ReturnStatement(expression)),
    };

    private LambdaExpressionSyntax Function(LambdaExpressionSyntax node, LambdaExpressionSyntax visited) => visited.Body switch
    {
        BlockSyntax block => visited.WithBody(Entered(block)),
        ExpressionSyntax expression => visited.WithBody(Body(expression, ReturnsVoid(model.GetSymbolInfo(node).Symbol))),
        _ => visited,
    };
}
