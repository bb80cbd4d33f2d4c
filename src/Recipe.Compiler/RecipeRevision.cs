using System.IO.Hashing;
using System.Runtime.CompilerServices;
using System.Runtime.InteropServices;
using System.Text;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Compiler;

/// <summary>
/// The revision of recipes: ten letters that change when what is said changes. Comments, layout and build records say nothing of how a part
/// is made, so they do not count: a remark beside a line, or what happened last week, makes no new recipe. It tells texts apart; it is no seal.
/// </summary>
internal static class RecipeRevision
{
    private static readonly ConditionalWeakTable<SyntaxTree, string> Said = [];

    /// <summary>The revision of texts taken together, the first one first.</summary>
    public static string Of(IEnumerable<SyntaxTree> trees, IEnumerable<string> shapes)
    {
        var hash = new XxHash128();
        foreach (var tree in trees)
        {
            hash.Append(MemoryMarshal.AsBytes(Said.GetValue(tree, WhatIsSaid).AsSpan()));
            hash.Append([0, 0]);
        }

        foreach (var shape in shapes)
        {
            hash.Append(MemoryMarshal.AsBytes(shape.AsSpan()));
            hash.Append([0, 0]);
        }

        return Convert.ToHexStringLower(hash.GetCurrentHash().AsSpan(0, 5));
    }

    /// <summary>The text in one spelling: laid out, a blank where there were some, a line end between entries.</summary>
    internal static string WhatIsSaid(SyntaxTree written)
    {
        var tree = TextLayout.TreeOf(written);
        var text = new StringBuilder(tree.Source.Length);
        var records = new Queue<TextSpan>(tree.Root.Statements.OfType<EntrySyntax>().Where(entry => entry.Head.Text == "build").Select(entry => entry.Span));
        var (blank, lineEnd) = (false, false);
        var before = TokenKind.OpenBrace;
        foreach (var token in tree.Tokens)
        {
            while (records.TryPeek(out var passed) && passed.End <= token.Span.Start)
            {
                records.Dequeue();
            }

            if (token.Kind == TokenKind.EndOfFile || (records.TryPeek(out var record) && token.Span.Start >= record.Start))
            {
                continue;
            }

            if (token.Kind is TokenKind.LineEnd or TokenKind.Semicolon)
            {
                lineEnd = true;
                continue;
            }

            if (token.IsTrivia)
            {
                blank = true;
                continue;
            }

            if (before != TokenKind.OpenBrace && token.Kind != TokenKind.CloseBrace && lineEnd)
            {
                text.Append('\n');
            }
            else if (before != TokenKind.OpenBrace && token.Kind != TokenKind.CloseBrace && (blank || token.Kind is TokenKind.Unit or TokenKind.OpenBrace))
            {
                // Whether blanks stand there can matter (a fraction and a division), how many cannot.
                text.Append(' ');
            }

            text.Append(tree.Source.Text, token.Span.Start, token.Span.Length);
            (blank, lineEnd, before) = (false, false, token.Kind);
        }

        return text.ToString();
    }
}
