using Microsoft.CodeAnalysis;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Recipe.RulesHost.Compiling;

/// <summary>Source that would take the compiler too long, or too deep, is refused before it gets there.</summary>
internal static class SourceLimits
{
    /// <summary>The longest file, in characters.</summary>
    public const int LongestFile = 200_000;

    /// <summary>How deep brackets may stand in brackets.</summary>
    public const int DeepestBrackets = 60;

    /// <summary>How deep the tree may be.</summary>
    public const int DeepestTree = 250;

    /// <summary>How deep functions without a name may stand in each other: each level multiplies the work of the compiler.</summary>
    public const int DeepestFunctions = 6;

    /// <summary>What is wrong with the text before anything reads it, or null.</summary>
    public static RuleDiagnostic? Of(RuleSource file)
    {
        if (file.Text.Length > LongestFile)
        {
            return Make(file, 0, $"The file has {file.Text.Length:N0} characters; a file of rules has at most {LongestFile:N0}. Put some of its rules into another file.");
        }

        var depth = 0;
        var run = 0;
        for (var i = 0; i < file.Text.Length; i++)
        {
            var character = file.Text[i];
            depth += character is '(' or '[' or '{' ? 1 : character is ')' or ']' or '}' ? -1 : 0;
            depth = Math.Max(depth, 0);
            run = character is '!' or '-' or '+' or '~' or '?' or '<' or '^' or '*' or '&' ? run + 1 : char.IsWhiteSpace(character) ? run : 0;
            if (depth > DeepestBrackets || run > 4 * DeepestBrackets)
            {
                return Make(file, i, $"Brackets or signs are nested more than {DeepestBrackets} deep here. Split the expression with named values.");
            }
        }

        return null;
    }

    /// <summary>What is wrong with the tree before anything looks for its meaning, or null.</summary>
    public static RuleDiagnostic? Of(RuleSource file, SyntaxNode root)
    {
        // With a stack of its own: a tree too deep for the compiler is too deep for a walk that calls itself.
        var open = new Stack<(SyntaxNode Node, int Depth, int Functions)>();
        open.Push((root, 0, 0));
        while (open.TryPop(out var at))
        {
            var functions = at.Functions + (at.Node is AnonymousFunctionExpressionSyntax or QueryExpressionSyntax ? 1 : 0);
            if (at.Depth > DeepestTree)
            {
                return Make(file, at.Node.SpanStart, $"The code is nested more than {DeepestTree} deep here. Split the expression with named values.");
            }

            if (functions > DeepestFunctions)
            {
                return Make(file, at.Node.SpanStart, $"More than {DeepestFunctions} functions without a name stand in each other here. Give one a name.");
            }

            foreach (var child in at.Node.ChildNodes())
            {
                open.Push((child, at.Depth + 1, functions));
            }
        }

        return null;
    }

    private static RuleDiagnostic Make(RuleSource file, int at, string message) =>
        new(file.Name, at, Math.Min(at + 1, file.Text.Length), "RULE010", message);
}
