using Recipe.Syntax.Merging;

namespace Recipe.Syntax.Tests;

/// <summary>Rules as a caller hands them in: things by kind and name, lines by their first word, and a few blocks in which order counts.</summary>
internal sealed class TestRules(string block) : MergeRules
{
    private static readonly string[] Ordered = ["plies", "cure", "bag"];
    private static readonly string[] Repeatable = ["hold", "ramp", "use", "accept", "note"];

    public static MergeRules File { get; } = new TestRules("");

    public override bool IsOrdered => Ordered.Contains(block);

    public override string? KeyOf(EntrySyntax entry) =>
        block.Length == 0 && entry.Block is not null && entry.Values is [WordSyntax name, ..] ? $"{entry.Head.Text} {name.Text}"
        : Repeatable.Contains(entry.Head.Text) ? null
        : entry.Head.Text;

    public override MergeRules Inside(EntrySyntax entry) => new TestRules(entry.Head.Text);
}
