using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Recipe.RuleAnalyzers.AllowList;

/// <summary>Constructs of the language that a rule may not use, told from the syntax alone.</summary>
internal static class Constructs
{
    private const string Pointers = "a rule does not reach the memory of the machine. Use a list or an array";
    private const string Threads = "a rule runs on one thread. Leave it out";
    private const string Jumps = "jumps hide loops from the counter that stops them. Use a loop, or a method";

    private static readonly Dictionary<SyntaxKind, string> Forbidden = new()
    {
        [SyntaxKind.AttributeList] = "An attribute|attributes can change how the code runs. Leave it out",
        [SyntaxKind.UnsafeStatement] = "`unsafe`|" + Pointers,
        [SyntaxKind.FixedStatement] = "`fixed`|" + Pointers,
        [SyntaxKind.StackAllocArrayCreationExpression] = "`stackalloc`|" + Pointers,
        [SyntaxKind.ImplicitStackAllocArrayCreationExpression] = "`stackalloc`|" + Pointers,
        [SyntaxKind.PointerType] = "A pointer|" + Pointers,
        [SyntaxKind.FunctionPointerType] = "A pointer to a function|use `Func` or `Action`",
        [SyntaxKind.AddressOfExpression] = "`&`|" + Pointers,
        [SyntaxKind.PointerIndirectionExpression] = "`*`|" + Pointers,
        [SyntaxKind.ArgListExpression] = "`__arglist`|it is no part of the language",
        [SyntaxKind.MakeRefExpression] = "`__makeref`|it is no part of the language",
        [SyntaxKind.RefTypeExpression] = "`__reftype`|it is no part of the language",
        [SyntaxKind.RefValueExpression] = "`__refvalue`|it is no part of the language",
        [SyntaxKind.LockStatement] = "`lock`|" + Threads,
        [SyntaxKind.AwaitExpression] = "`await`|" + Threads,
        [SyntaxKind.GotoStatement] = "`goto`|" + Jumps,
        [SyntaxKind.GotoCaseStatement] = "`goto case`|" + Jumps,
        [SyntaxKind.GotoDefaultStatement] = "`goto default`|" + Jumps,
        [SyntaxKind.LabeledStatement] = "A label|" + Jumps,
        [SyntaxKind.TryStatement] = "`try`|a rule that cannot judge says so. Test first, or call `report.NotChecked(...)`",
        [SyntaxKind.UsingStatement] = "`using`|nothing that a rule may use needs to be closed. Leave it out",
        [SyntaxKind.TypeOfExpression] = "`typeof`|a rule does not look into types. Compare with `is` instead",
        [SyntaxKind.DestructorDeclaration] = "A finalizer|it runs at no known time on another thread. Leave it out",
        [SyntaxKind.EventDeclaration] = "An event|a rule keeps nothing. Use a method",
        [SyntaxKind.EventFieldDeclaration] = "An event|a rule keeps nothing. Use a method",
        [SyntaxKind.DelegateDeclaration] = "A delegate type|use `Func` or `Action` instead",
        [SyntaxKind.ExternAliasDirective] = "`extern alias`|a rule uses what it is given. Leave it out",
    };

    private static readonly Dictionary<SyntaxKind, string> ForbiddenModifiers = new()
    {
        [SyntaxKind.UnsafeKeyword] = "`unsafe`|" + Pointers,
        [SyntaxKind.ExternKeyword] = "`extern`|a rule calls nothing outside itself. Write the body",
        [SyntaxKind.AsyncKeyword] = "`async`|" + Threads,
        [SyntaxKind.VolatileKeyword] = "`volatile`|" + Threads,
    };

    /// <summary>The violations in one node, not in those below it.</summary>
    public static IEnumerable<Violation> In(SyntaxNode node)
    {
        if (Forbidden.TryGetValue(node.Kind(), out var reason))
        {
            yield return Make(node.GetFirstToken(), node, reason);
        }

        foreach (var modifier in Modifiers(node))
        {
            if (ForbiddenModifiers.TryGetValue(modifier.Kind(), out var why))
            {
                yield return Make(modifier, node, why);
            }
            else if (node is ConstructorDeclarationSyntax && modifier.IsKind(SyntaxKind.StaticKeyword))
            {
                yield return Make(modifier, node, "A static constructor|it runs at no known time. Use `static readonly` fields with a value");
            }
        }

        switch (node)
        {
            case ArrayRankSpecifierSyntax { Rank: > 1 }:
                yield return Make(node.GetFirstToken(), node, "An array of several dimensions|its size cannot be bounded. Use an array of arrays");
                break;
            case LocalDeclarationStatementSyntax { UsingKeyword.RawKind: not 0 } local:
                yield return Make(local.UsingKeyword, node, Forbidden[SyntaxKind.UsingStatement]);
                break;
            case CommonForEachStatementSyntax { AwaitKeyword.RawKind: not 0 } loop:
                yield return Make(loop.AwaitKeyword, node, Forbidden[SyntaxKind.AwaitExpression]);
                break;
            case MethodDeclarationSyntax { Identifier.ValueText: "Finalize" } method:
                yield return Make(method.Identifier, node, Forbidden[SyntaxKind.DestructorDeclaration]);
                break;
        }
    }

    private static SyntaxTokenList Modifiers(SyntaxNode node) => node switch
    {
        MemberDeclarationSyntax member => member.Modifiers,
        LocalFunctionStatementSyntax function => function.Modifiers,
        AnonymousFunctionExpressionSyntax function => function.Modifiers,
        _ => default,
    };

    private static Violation Make(SyntaxToken at, SyntaxNode node, string reason)
    {
        var parts = reason.Split('|');
        var span = at.Span.Length > 0 ? at.Span : node.Span;
        return new Violation(Violation.Construct, span, $"{parts[0]} is not allowed in a rule: {parts[1]}.");
    }
}
