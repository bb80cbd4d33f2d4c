using System.Text.RegularExpressions;
using CsCheck;
using Recipe.Syntax.Merging;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Tests;

/// <summary>What is true of every merge.</summary>
public sealed partial class MergeProperties
{
    private const int Iterations = 1000;

    private static readonly ConflictMarkers Markers = new();

    [Fact]
    public void Every_line_that_neither_side_took_out_and_every_new_line_is_there() => Drafts.VersionsOfUniqueLines.Sample(
        versions =>
        {
            var (before, ours, theirs) = versions;
            var (b, o, t) = (Lines(before), Lines(ours), Lines(theirs));
            foreach (var side in (HashSet<string>[])[b, o, t])
            {
                // Of all lines these are alike.
                side.Remove("}");
            }

            foreach (var merged in (MergeResult[])[Merge(before, ours, theirs), ByLines(before, ours, theirs)])
            {
                var m = Lines(merged.Text);
                Assert.Superset(o.Except(b).ToHashSet(), m);
                Assert.Superset(t.Except(b).ToHashSet(), m);
                Assert.Superset(b.Intersect(o).Intersect(t).ToHashSet(), m);
            }
        },
        iter: Iterations);

    [Fact]
    public void No_line_of_any_text_gets_lost() => Gen.Select(Texts.Edits, Texts.Any, Texts.Any).Sample(
        (before, ours, theirs) => New(before, ours, theirs, RecipeMerge.Merge(before, ours, theirs, TestRules.File).Text),
        iter: 1000);

    [Fact]
    public void No_new_line_of_a_recipe_with_lines_alike_gets_lost() => Drafts.Versions.Sample(
        versions =>
        {
            var (before, ours, theirs) = versions;
            New(before, ours, theirs, Merge(before, ours, theirs).Text);
            New(before, ours, theirs, ByLines(before, ours, theirs).Text);
        },
        iter: Iterations);

    [Fact]
    public void A_clean_merge_of_recipes_can_be_read() => Drafts.Versions.Sample(
        versions =>
        {
            var merged = Merge(versions.Before, versions.Ours, versions.Theirs);
            Assert.True(merged.Conflicts > 0 || Read.Tree(merged.Text).Findings.All(finding => finding.Severity != Severity.Error));
            Assert.Equal(merged.Conflicts, merged.Text.Split('\n').Count(line => line == Markers.Start));
            Assert.Equal(merged.Conflicts, merged.Text.Split('\n').Count(line => line == Markers.End));
        },
        iter: Iterations);

    [Fact]
    public void Where_one_side_did_nothing_the_other_is_the_result() => Drafts.Versions.Sample(
        versions =>
        {
            var (before, ours, theirs) = versions;
            Assert.Equal(new MergeResult(theirs, 0, ByLines: false), Merge(before, before, theirs));
            Assert.Equal(new MergeResult(ours, 0, ByLines: false), Merge(before, ours, before));
            Assert.Equal(new MergeResult(ours, 0, ByLines: false), Merge(before, ours, ours));
            foreach (var whole in (Func<string, string, string, MergeResult>[])[Whole, ByLines])
            {
                Assert.Equal(theirs, whole(before, before, theirs).Text);
                Assert.Equal(ours, whole(before, ours, before).Text);
                Assert.Equal(ours, whole(before, ours, ours).Text);
            }
        },
        iter: Iterations);

    /// <summary>
    /// Where a line stands several times, which of them a side took out can be told in several ways, and each side is told first.
    /// The same holds where both sides wrote the same new line, one perhaps above another block than the other.
    /// </summary>
    [Fact]
    public void It_does_not_matter_who_merges()
    {
        var compared = 0;
        Drafts.Versions.Sample(
            versions =>
            {
                var (before, ours, theirs) = versions;
                if (HasTwins(before) || HasTwins(ours) || HasTwins(theirs) || Lines(ours).Except(Lines(before)).Intersect(Lines(theirs)).Any())
                {
                    return;
                }

                Interlocked.Increment(ref compared);
                Assert.Equal(Merge(before, ours, theirs).Text, Swapped(Merge(before, theirs, ours).Text));
                Assert.Equal(ByLines(before, ours, theirs).Conflicts, ByLines(before, theirs, ours).Conflicts);
            },
            iter: Iterations);
        Assert.True(compared > Iterations / 20, $"only {compared} were compared");

        static bool HasTwins(string text) =>
            text.Split('\n').Select(line => line.Trim()).Where(line => line.Length > 1).GroupBy(line => line, StringComparer.Ordinal).Any(line => line.Count() > 1);
    }

    /// <summary>The merge by pieces, which is null when its own accounts do not add up.</summary>
    private static MergeResult Merge(string before, string ours, string theirs)
    {
        var merged = RecipeMerge.ByPieces(before, ours, theirs, TestRules.File, Markers);
        Assert.NotNull(merged);
        return merged;
    }

    private static MergeResult Whole(string before, string ours, string theirs) => RecipeMerge.Merge(before, ours, theirs, TestRules.File);

    private static MergeResult ByLines(string before, string ours, string theirs) => LineMerge.Merge(before, ours, theirs, Markers);

    private static void New(string before, string ours, string theirs, string merged)
    {
        var (b, m) = (Lines(before), Lines(merged));
        Assert.Superset(Lines(ours).Except(b).ToHashSet(), m);
        Assert.Superset(Lines(theirs).Except(b).ToHashSet(), m);
    }

    // A line is the same with more or fewer blanks, and a byte order mark is no letter of it.
    private static HashSet<string> Lines(string text) =>
        [.. text.Replace("\ufeff", "", StringComparison.Ordinal).Split(["\r\n", "\n", "\r"], StringSplitOptions.None).Select(line => Blanks().Replace(line, " ").Trim()).Where(line => line.Length > 0)];

    private static string Swapped(string text) => Hunk().Replace(text, "<<<<<<< ours\n$2=======\n$1>>>>>>> theirs\n");

    [GeneratedRegex(@"\s+", RegexOptions.CultureInvariant)]
    private static partial Regex Blanks();

    [GeneratedRegex(@"<<<<<<< ours\n((?:.*\n)*?)=======\n((?:.*\n)*?)>>>>>>> theirs\n", RegexOptions.CultureInvariant)]
    private static partial Regex Hunk();
}
