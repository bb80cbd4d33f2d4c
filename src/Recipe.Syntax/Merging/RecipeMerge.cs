using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Merging;

/// <summary>
/// Merges two versions of a recipe that began as one. Things are matched by kind and name and lines by what they are known by, so that
/// what touches on paper need not be a conflict; layout is no change. A line that either side wrote is in the result, alone or
/// between markers.
/// </summary>
public static class RecipeMerge
{
    /// <summary>Merges. Texts that cannot be read as recipes are merged line by line.</summary>
    /// <param name="before">What both sides began with; empty when each began by itself.</param>
    /// <param name="ours">Our side. Its line ends and its byte order mark are kept.</param>
    /// <param name="theirs">Their side.</param>
    /// <param name="rules">What lines are known by at the top level of a file, and so on down.</param>
    /// <param name="markers">How conflicts are marked; the usual way when not given.</param>
    public static MergeResult Merge(string before, string ours, string theirs, MergeRules rules, ConflictMarkers? markers = null)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(ours);
        ArgumentNullException.ThrowIfNull(theirs);
        ArgumentNullException.ThrowIfNull(rules);
        markers ??= new ConflictMarkers();

        // Where one side did nothing there is nothing to merge.
        return ours == theirs || theirs == before ? new(ours, 0, ByLines: false)
            : ours == before ? new(theirs, 0, ByLines: false)
            : ByPieces(before, ours, theirs, rules, markers) ?? LineMerge.Merge(before, ours, theirs, markers);
    }

    /// <summary>Merges line by line, as any text.</summary>
    /// <param name="before">What both sides began with.</param>
    /// <param name="ours">Our side.</param>
    /// <param name="theirs">Their side.</param>
    /// <param name="markers">How conflicts are marked; the usual way when not given.</param>
    public static MergeResult MergeLines(string before, string ours, string theirs, ConflictMarkers? markers = null)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(ours);
        ArgumentNullException.ThrowIfNull(theirs);
        return LineMerge.Merge(before, ours, theirs, markers ?? new ConflictMarkers());
    }

    /// <summary>The merge of three texts that can be read; null when one cannot.</summary>
    internal static MergeResult? ByPieces(string before, string ours, string theirs, MergeRules rules, ConflictMarkers markers)
    {
        var (b, o, t) = (Read(before), Read(ours), Read(theirs));
        if (b is null || o is null || t is null)
        {
            return null;
        }

        var output = new MergeWriter();
        new ListMerger(output).Merge(PieceReader.Read(b, rules), PieceReader.Read(o, rules), PieceReader.Read(t, rules));
        var text = Finish(output, before, ours, theirs, markers);
        var tree = SyntaxTree.Parse(new SourceText(o.Source.Name, MergeLine.WithoutMark(text)));
        if (!Ledger.IsWhole(b, o, t, tree) || (output.Conflicts == 0 && !CanBeRead(tree)))
        {
            return null;
        }

        // Columns depend on neighbours: what was laid out on both sides is laid out anew.
        var isLaidOut = output.Conflicts == 0 && Formatter.Format(o) == o.Source.Text && Formatter.Format(t) == t.Source.Text;
        return new(isLaidOut ? WithMarkOf(ours, Formatter.Format(tree)) : text, output.Conflicts, ByLines: false);
    }

    /// <summary>The text of a merge, with the line ends and the byte order mark of our side.</summary>
    internal static string Finish(MergeWriter output, string before, string ours, string theirs, ConflictMarkers markers)
    {
        var first = LineEnds.FirstOf(ours) ?? LineEnds.FirstOf(theirs) ?? "\n";
        ImmutableArray<string> ends = [first, .. EndsOf(ours)];
        var (was, mine, other) = (IsClosed(before), IsClosed(ours), IsClosed(theirs));
        return WithMarkOf(ours, output.ToText(markers, ends, endsWithLineEnd: was == mine ? other : mine));
    }

    private static string WithMarkOf(string ours, string text) => MergeLine.HasMark(ours) ? ours[0] + text : text;

    private static IEnumerable<string> EndsOf(string text) =>
        MergeLine.Of(new SourceText("", text)).Select(line => line.End).Where(end => end.Length > 0).Distinct(StringComparer.Ordinal);

    private static bool IsClosed(string text) => text.Length == 0 || text[^1] is '\n' or '\r';

    private static SyntaxTree? Read(string text) => SyntaxTree.Parse(new SourceText("", MergeLine.WithoutMark(text))) is var tree && CanBeRead(tree) ? tree : null;

    private static bool CanBeRead(SyntaxTree tree) => tree.Findings.All(finding => finding.Severity != Severity.Error);
}
