using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Recipe.RuleAnalyzers.AllowList;

/// <summary>
/// Holds the source of a rule to the list: every name, and every member that the compiler chooses without its being named
/// (operators, conversions, enumerators, deconstruction, collection initialisers, queries), the type of every expression, and what
/// is kept in static fields. It is meant for source that compiles; where symbols are missing it stays silent, for the compiler speaks.
/// </summary>
internal static class RuleGate
{
    private static readonly HashSet<string> Reserved = ["Recipe", "System", "UnitsNet", "Microsoft"];

    /// <summary>What the file may not do, in order, one for each name on a line.</summary>
    /// <param name="model">The meaning of the file.</param>
    /// <param name="stop">Ends the work.</param>
    public static IReadOnlyList<Violation> Examine(SemanticModel model, CancellationToken stop)
    {
        var gate = new SymbolGate(model.Compilation.Assembly);
        var found = new List<Violation>();
        foreach (var node in model.SyntaxTree.GetRoot(stop).DescendantNodesAndSelf(node => !IsNamingOnly(node, model)))
        {
            stop.ThrowIfCancellationRequested();
            if (IsNamingOnly(node, model))
            {
                continue;
            }

            found.AddRange(Constructs.In(node));
            found.AddRange(Meaning(node, model, gate));
            found.AddRange(Formats.In(node, model));
            found.AddRange(KeptState.In(node, model));
        }

        var text = model.SyntaxTree.GetText(stop);
        return
        [
            .. found
                .OrderBy(violation => violation.Span.Start)
                .GroupBy(violation => (text.Lines.GetLineFromPosition(violation.Span.Start).LineNumber, violation.Message))
                .Select(group => group.First()),
        ];
    }

    // Names that do nothing: of a namespace, in an import, in nameof.
    private static bool IsNamingOnly(SyntaxNode node, SemanticModel model) =>
        node is UsingDirectiveSyntax
        || (node.Parent is BaseNamespaceDeclarationSyntax space && space.Name == node)
        || (node is ArgumentListSyntax { Parent: InvocationExpressionSyntax { Expression: IdentifierNameSyntax { Identifier.ValueText: "nameof" } } call }
            && model.GetSymbolInfo(call).Symbol is null && model.GetConstantValue(call).HasValue);

    private static IEnumerable<Violation> Meaning(SyntaxNode node, SemanticModel model, SymbolGate gate)
    {
        if (node is ExpressionSyntax expression)
        {
            var info = model.GetTypeInfo(expression);
            foreach (var violation in gate.Type(info.Type, node))
            {
                yield return violation;
            }

            // A conversion that calls something makes another type of it.
            if (!SymbolEqualityComparer.Default.Equals(info.Type, info.ConvertedType))
            {
                var conversion = model.GetConversion(expression).MethodSymbol;
                foreach (var violation in gate.Type(info.ConvertedType, node).Concat(gate.Symbol(conversion, node, writes: false)))
                {
                    yield return violation;
                }
            }
        }

        if (MayMean(node))
        {
            foreach (var violation in gate.Symbol(model.GetSymbolInfo(node).Symbol, node, IsWritten(node)))
            {
                yield return violation;
            }
        }

        foreach (var symbol in Implied(node, model))
        {
            foreach (var violation in gate.Symbol(symbol, node, writes: false))
            {
                yield return violation;
            }
        }

        foreach (var violation in Casts(node, model).Concat(Delegates(node, model)).Concat(Declarations(node, model)))
        {
            yield return violation;
        }
    }

    // What a call and an access mean, the name in them means too; a call of a function's value calls what the type of the value allows.
    private static bool MayMean(SyntaxNode node) => node switch
    {
        InvocationExpressionSyntax or MemberAccessExpressionSyntax or LiteralExpressionSyntax or ParenthesizedExpressionSyntax => false,
        ExpressionSyntax or ConstructorInitializerSyntax or PrimaryConstructorBaseTypeSyntax or SelectOrGroupClauseSyntax or OrderingSyntax or PatternSyntax => true,
        _ => false,
    };

    /// <summary>Members that the compiler calls although nobody wrote their name.</summary>
    private static IEnumerable<ISymbol?> Implied(SyntaxNode node, SemanticModel model)
    {
        switch (node)
        {
            case CommonForEachStatementSyntax loop:
                var each = model.GetForEachStatementInfo(loop);
                yield return each.GetEnumeratorMethod;
                yield return each.MoveNextMethod;
                yield return each.CurrentProperty;
                yield return each.DisposeMethod;
                yield return each.ElementConversion.MethodSymbol;
                yield return each.CurrentConversion.MethodSymbol;
                if (loop is ForEachVariableStatementSyntax variables)
                {
                    foreach (var symbol in Deconstruction(model.GetDeconstructionInfo(variables)))
                    {
                        yield return symbol;
                    }
                }

                break;
            case AssignmentExpressionSyntax { Left: TupleExpressionSyntax or DeclarationExpressionSyntax } assignment:
                foreach (var symbol in Deconstruction(model.GetDeconstructionInfo(assignment)))
                {
                    yield return symbol;
                }

                break;
            case QueryClauseSyntax clause:
                var query = model.GetQueryClauseInfo(clause);
                yield return query.OperationInfo.Symbol;
                yield return query.CastInfo.Symbol;
                break;
            case ExpressionSyntax { Parent: InitializerExpressionSyntax { RawKind: (int)SyntaxKind.CollectionInitializerExpression } } element:
                yield return model.GetCollectionInitializerSymbolInfo(element).Symbol;
                break;
        }
    }

    private static IEnumerable<ISymbol?> Deconstruction(DeconstructionInfo info)
    {
        yield return info.Method;
        yield return info.Conversion?.MethodSymbol;
        foreach (var symbol in info.Nested.IsDefault ? [] : info.Nested.SelectMany(Deconstruction))
        {
            yield return symbol;
        }
    }

    private static IEnumerable<Violation> Casts(SyntaxNode node, SemanticModel model)
    {
        var target = node switch
        {
            CastExpressionSyntax cast
                when model.ClassifyConversion(cast.Expression, model.GetTypeInfo(cast).Type!, isExplicitInSource: true) is { IsExplicit: true } how && (how.IsReference || how.IsUnboxing) => cast.Type,
            BinaryExpressionSyntax { RawKind: (int)SyntaxKind.AsExpression or (int)SyntaxKind.IsExpression, Right: TypeSyntax type } => type,
            DeclarationPatternSyntax pattern => pattern.Type,
            TypePatternSyntax pattern => pattern.Type,
            RecursivePatternSyntax { Type: { } type } => type,
            ConstantPatternSyntax { Expression: TypeSyntax type } when model.GetSymbolInfo(type).Symbol is ITypeSymbol => type,
            _ => null,
        };
        if (target is not null && model.GetTypeInfo(target).Type is { } opened && Immutable.OpensViews(opened))
        {
            yield return new Violation(Violation.State, target.Span, $"A cast to `{target}` is not allowed in a rule: it could change what a rule may only read. Copy it with `.ToList()` or `.ToArray()` instead.");
        }
    }

    private static IEnumerable<Violation> Delegates(SyntaxNode node, SemanticModel model)
    {
        var isSum = node is BinaryExpressionSyntax { RawKind: (int)SyntaxKind.AddExpression or (int)SyntaxKind.SubtractExpression }
            or AssignmentExpressionSyntax { RawKind: (int)SyntaxKind.AddAssignmentExpression or (int)SyntaxKind.SubtractAssignmentExpression };
        if (isSum && model.GetTypeInfo(node).Type?.TypeKind == TypeKind.Delegate)
        {
            yield return new Violation(Violation.Construct, node.Span, "Adding functions is not allowed in a rule: a chain of functions can grow without bound. Use a list of them and a loop.");
        }
    }

    private static IEnumerable<Violation> Declarations(SyntaxNode node, SemanticModel model)
    {
        switch (node)
        {
            case BaseTypeDeclarationSyntax declared when model.GetDeclaredSymbol(declared) is INamedTypeSymbol type:
                // A type of the same name as one of ours would take its place, also that of the counter of steps.
                if (type.ContainingType is null && Reserved.Contains(FirstName(type)))
                {
                    yield return new Violation(Violation.Name, declared.Identifier.Span, $"A type in `{FirstName(type)}` is not allowed in a rule: it could take the place of one that is not the rule's own. Use another namespace, or none.");
                }

                if (type.BaseType is { SpecialType: SpecialType.None } parent && !SymbolGate.IsOwn(parent, model.Compilation.Assembly) && SymbolNames.Of(parent) != "Recipe.RuleApi.HouseRule")
                {
                    yield return new Violation(Violation.Name, declared.Identifier.Span, $"A class that derives from `{parent.Name}` is not allowed in a rule: a rule derives from `HouseRule`, and its helpers from nothing.");
                }

                break;
            case ObjectCreationExpressionSyntax made when model.GetTypeInfo(made).Type is ITypeParameterSymbol:
                yield return new Violation(Violation.Construct, made.Type.Span, "`new` of a type parameter is not allowed in a rule: a rule does not make objects by their type. Hand in a function that makes one.");
                break;
        }
    }

    private static string FirstName(INamedTypeSymbol type)
    {
        ISymbol first = type;
        for (var space = type.ContainingNamespace; space is { IsGlobalNamespace: false }; space = space.ContainingNamespace)
        {
            first = space;
        }

        return first.Name;
    }

    private static bool IsWritten(SyntaxNode node)
    {
        var whole = node;
        while (whole.Parent is MemberAccessExpressionSyntax access && access.Name == whole
            || whole.Parent is ParenthesizedExpressionSyntax
            || whole.Parent is MemberBindingExpressionSyntax
            || (whole.Parent is TupleExpressionSyntax && whole is ArgumentSyntax)
            || (whole is not ArgumentSyntax && whole.Parent is ArgumentSyntax { Parent: TupleExpressionSyntax }))
        {
            whole = whole.Parent;
        }

        return whole.Parent switch
        {
            AssignmentExpressionSyntax assignment => assignment.Left == whole,
            PrefixUnaryExpressionSyntax unary => unary.RawKind is (int)SyntaxKind.PreIncrementExpression or (int)SyntaxKind.PreDecrementExpression,
            PostfixUnaryExpressionSyntax unary => unary.RawKind is (int)SyntaxKind.PostIncrementExpression or (int)SyntaxKind.PostDecrementExpression,
            _ => false,
        };
    }
}
