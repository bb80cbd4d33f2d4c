namespace Recipe.Syntax.Merging;

/// <summary>Keeps the accounts of a merge: no line may get lost.</summary>
internal static class Ledger
{
    /// <summary>
    /// Whether every line is there as often as it must be: those of the base less what either side took out, and what either side
    /// added. Blanks do not count.
    /// </summary>
    public static bool IsWhole(SyntaxTree before, SyntaxTree ours, SyntaxTree theirs, SyntaxTree merged) =>
        IsWhole(PieceReader.Sayings(before), PieceReader.Sayings(ours), PieceReader.Sayings(theirs), PieceReader.Sayings(merged));

    /// <summary>The same of lines.</summary>
    public static bool IsWhole(IEnumerable<string> before, IEnumerable<string> ours, IEnumerable<string> theirs, IEnumerable<string> merged)
    {
        var (b, o, t, m) = (Counts(before), Counts(ours), Counts(theirs), Counts(merged));
        return b.Keys.Union(o.Keys).Union(t.Keys).All(line =>
        {
            var (was, mine, other) = (b.GetValueOrDefault(line), o.GetValueOrDefault(line), t.GetValueOrDefault(line));
            var needed = was - Math.Max(was - mine, 0) - Math.Max(was - other, 0) + Math.Max(Math.Max(mine, other) - was, 0);
            return m.GetValueOrDefault(line) >= needed;
        });
    }

    private static Dictionary<string, int> Counts(IEnumerable<string> lines) =>
        lines.Where(line => line.Length > 0).CountBy(line => line, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
}
