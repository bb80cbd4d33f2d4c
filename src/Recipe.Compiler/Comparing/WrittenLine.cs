using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using System.Text;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Compiler.Comparing;

/// <summary>A line of a recipe without its layout and remarks, and the lines of its block.</summary>
/// <param name="Word">The word it begins with; for a top-level thing its name too.</param>
/// <param name="Text">What stands behind it, single blanks between words.</param>
/// <param name="Inside">The lines of its block; empty when it has none.</param>
/// <param name="Key">All of it, its block included: two lines are the same when their keys are.</param>
internal sealed record WrittenLine(string Word, string Text, ImmutableArray<WrittenLine> Inside, string Key)
{
    // Asked for again and again while parts of two versions are matched.
    private static readonly ConditionalWeakTable<SyntaxTree, StrongBox<ImmutableArray<WrittenLine>>> Known = [];

    /// <summary>The lines at the top level of a text, as they are once it is laid out: <c>15mm</c> and <c>15 mm</c> are written alike.</summary>
    public static ImmutableArray<WrittenLine> Of(SyntaxTree tree) => Known.GetValue(tree, static written =>
    {
        var laidOut = TextLayout.TreeOf(written);
        return new StrongBox<ImmutableArray<WrittenLine>>(Of(laidOut.Root.Statements, laidOut.Source, isTop: true));
    }).Value;

    private static ImmutableArray<WrittenLine> Of(IEnumerable<StatementSyntax> statements, SourceText source, bool isTop) =>
        [.. statements.Select(statement => Of(statement, source, isTop))];

    private static WrittenLine Of(StatementSyntax statement, SourceText source, bool isTop)
    {
        switch (statement)
        {
            case LetSyntax let:
                return Make("let " + let.Name.Text, Plain(source, let.Value.Span), []);
            case EntrySyntax entry:
                var inside = entry.Block is { } block ? Of(block.Statements, source, isTop: false) : [];
                var rest = entry.Values.Length == 0 ? default : TextSpan.FromBounds(entry.Values[0].Span.Start, entry.LineSpan.End);
                return isTop && entry.Block is not null && entry.Values is [WordSyntax name, ..]
                    ? Make($"{entry.Head.Text} {name.Text}", Plain(source, TextSpan.FromBounds(name.Span.End, rest.End)), inside)
                    : Make(entry.Head.Text, Plain(source, rest), inside);
            default:
                // What cannot be read is compared as it stands.
                return Make("", Plain(source, statement.Span), []);
        }
    }

    private static WrittenLine Make(string word, string text, ImmutableArray<WrittenLine> inside) =>
        new(word, text, inside, inside.IsEmpty ? $"{word}\0{text}" : $"{word}\0{text}\0{{{string.Join('\n', inside.Select(line => line.Key))}}}");

    // Blanks inside quotes count, and a quote behind a backslash ends no text.
    private static string Plain(SourceText source, TextSpan span)
    {
        var text = new StringBuilder(span.Length);
        var (quoted, escaped) = (false, false);
        foreach (var c in source.Slice(span))
        {
            quoted ^= c == '"' && !escaped;
            escaped = c == '\\' && !escaped;
            if (quoted || !char.IsWhiteSpace(c))
            {
                text.Append(c);
            }
            else if (text.Length > 0 && text[^1] != ' ')
            {
                text.Append(' ');
            }
        }

        return text.ToString().Trim();
    }
}
