using System.Text;
using Recipe.Syntax;
using Recipe.Syntax.Merging;
using Recipe.Syntax.Tests;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Fuzzing.Targets;

/// <summary>
/// The language without its meaning: any text is read, its tokens tile it, findings and nodes lie inside it, laying it out keeps its tokens and
/// does nothing the second time, and a merge takes the side that changed.
/// </summary>
internal sealed class TextTarget : IFuzzTarget
{
    public string Name => "text";

    public IEnumerable<string> Words => [.. SeedFiles.WordsOfTheLanguage(), " {\n", "\n}\n", "+/-", "\\\"", " to ", " at ", "\u00b1", "\u00d7", "\r\n", "; ", "degC", "mm", " %"];

    public IEnumerable<(string Name, byte[] Bytes)> Seeds() =>
    [
        .. SeedFiles.In("samples", "*.recipe"),
        .. SeedFiles.In("tests/corpus/sound", "*.recipe", largest: 2_000),
        SeedFiles.Of("values", "a 1 to 2 mm +/- 3 %; b 1:2:3 \"x\\\"\" 2026-05-14 09:30\nlet c = (1 + 2 mm) * 3 - d / 4 # e\nf { g 0/90 -45 1 h 30 min {\n}}\n"),
    ];

    public void Run(byte[] bytes)
    {
        var text = Encoding.UTF8.GetString(bytes);
        var tree = Read(text);
        BrokenPropertyException.ThrowUnless(tree.ToText() == text, "The tokens are not the text.");
        var at = 0;
        foreach (var token in tree.Tokens)
        {
            BrokenPropertyException.ThrowUnless(token.Span.Start == at && (token.Span.Length > 0 || token.Kind == TokenKind.EndOfFile), "The tokens do not tile the text.");
            at = token.Span.End;
        }

        foreach (var finding in tree.Findings)
        {
            FindingRules.Hold(finding, tree.Source);
            foreach (var fix in finding.Fixes)
            {
                Read(TextEdit.Apply(tree.Source, fix.Edits));
            }
        }

        var printed = TreePrinter.Print(tree);
        BrokenPropertyException.ThrowUnless(printed.Length > 0, "The tree cannot be printed.");
        var laidOut = Formatter.Format(tree);
        var again = Read(laidOut);
        BrokenPropertyException.ThrowUnless(Formatter.Format(again) == laidOut, "Laying out twice changes something.");
        BrokenPropertyException.ThrowUnless(Said(tree, comments: false).SequenceEqual(Said(again, comments: false)), "Laying out changes tokens.");
        BrokenPropertyException.ThrowUnless(Said(tree, comments: true).SequenceEqual(Said(again, comments: true)), "Laying out changes comments.");
        BrokenPropertyException.ThrowUnless(tree.Findings.Length > 0 || again.Findings.IsEmpty, "Laying out a sound text breaks it.");

        // What comes of it depends on the texts; that it comes to an end does not.
        RecipeMerge.Merge(text[..(text.Length / 2)], text, laidOut + "a 1\n", MergeRules.OfUnknownBlock);
        BrokenPropertyException.ThrowUnless(
            RecipeMerge.Merge(text, text, laidOut, MergeRules.OfUnknownBlock) is { Conflicts: 0 } merged && merged.Text == laidOut,
            "Where one side did nothing, the other is not the result.");
    }

    private static SyntaxTree Read(string text) => SyntaxTree.Parse(new SourceText("fuzzed.recipe", text));

    // Each in its order; a brace that stood alone below a comment may come to stand before it.
    private static IEnumerable<string> Said(SyntaxTree tree, bool comments) =>
        from token in tree.Tokens
        where token.Kind == TokenKind.Comment == comments && token.Kind is not (TokenKind.Blank or TokenKind.LineEnd or TokenKind.Semicolon)
        select tree.Source.Slice(token.Span).TrimEnd(' ', '\t').Replace('\u00d7', 'x').Replace("\u00b1", "+/-", StringComparison.Ordinal);
}
