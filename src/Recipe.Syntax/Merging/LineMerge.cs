using System.Collections.Immutable;
using Recipe.Text;

namespace Recipe.Syntax.Merging;

/// <summary>
/// Merges any text line by line. Lines that all three have, in line with each other, are the backbone; between two of them
/// the side counts that changed something, and where both did it is a conflict (Khanna, Kunal and Pierce 2007, on what diff3 does).
/// </summary>
internal static class LineMerge
{
    // So few lines between two conflicts are read with them.
    private const int ReadTogether = 3;

    /// <summary>Merges. Line ends are no difference.</summary>
    public static MergeResult Merge(string before, string ours, string theirs, ConflictMarkers markers)
    {
        var (b, o, t) = (Lines(before), Lines(ours), Lines(theirs));
        var (toOurs, toTheirs) = (Places(b, o), Places(b, t));
        var output = new MergeWriter();
        var (i, j, k) = (0, 0, 0);
        for (var next = 0; next <= b.Length; next++)
        {
            var (nextOurs, nextTheirs) = next < b.Length ? (toOurs[next], toTheirs[next]) : (o.Length, t.Length);
            if (nextOurs < 0 || nextTheirs < 0)
            {
                continue;
            }

            Region(output, b[i..next], o[j..nextOurs], t[k..nextTheirs]);
            output.Write(o[nextOurs..Math.Min(nextOurs + 1, o.Length)], areShared: true);
            (i, j, k) = (next + 1, nextOurs + 1, nextTheirs + 1);
        }

        output.JoinAcross(ReadTogether);
        return new(RecipeMerge.Finish(output, before, ours, theirs, markers), output.Conflicts, ByLines: true);
    }

    private static void Region(MergeWriter output, ImmutableArray<MergeLine> before, ImmutableArray<MergeLine> ours, ImmutableArray<MergeLine> theirs)
    {
        if (Same(ours, theirs))
        {
            output.Write(ours, areShared: true);
        }
        else if (Same(before, theirs))
        {
            Change(output, ours);
        }
        else if (Same(before, ours))
        {
            Change(output, theirs);
        }
        else
        {
            Dispute(output, ours, theirs);
        }
    }

    // A change of one side parts two conflicts, also when all it did was to take lines out.
    private static void Change(MergeWriter output, ImmutableArray<MergeLine> lines)
    {
        if (lines.IsEmpty)
        {
            output.TakenOut();
        }

        output.Write(lines);
    }

    // What both wrote alike is taken out of the conflict.
    private static void Dispute(MergeWriter output, ImmutableArray<MergeLine> ours, ImmutableArray<MergeLine> theirs)
    {
        var (i, j) = (0, 0);
        foreach (var (left, right) in Alignment.Of([.. ours.Select(line => line.Text)], [.. theirs.Select(line => line.Text)], StringComparer.Ordinal).Append((ours.Length, theirs.Length)))
        {
            if (left > i || right > j)
            {
                output.Conflict(ours[i..left], theirs[j..right]);
            }

            output.Write(ours[left..Math.Min(left + 1, ours.Length)], areShared: true);
            (i, j) = (left + 1, right + 1);
        }
    }

    private static int[] Places(ImmutableArray<MergeLine> before, ImmutableArray<MergeLine> side)
    {
        var places = new int[before.Length];
        Array.Fill(places, -1);
        foreach (var (left, right) in Alignment.Of([.. before.Select(line => line.Text)], [.. side.Select(line => line.Text)], StringComparer.Ordinal))
        {
            places[left] = right;
        }

        return places;
    }

    private static bool Same(ImmutableArray<MergeLine> a, ImmutableArray<MergeLine> b) => a.Select(line => line.Text).SequenceEqual(b.Select(line => line.Text), StringComparer.Ordinal);

    private static ImmutableArray<MergeLine> Lines(string text) => MergeLine.Of(new SourceText("", MergeLine.WithoutMark(text)));
}
