using System.Collections.Immutable;

namespace Recipe.Syntax.Merging;

/// <summary>
/// Merges what stands in one block, and so on down. Pieces that both sides kept in line with each other are the backbone; between two of
/// them stands what either side added, moved or took out.
/// </summary>
internal sealed class ListMerger(MergeWriter output)
{
    private readonly HashSet<Piece> _written = new(ReferenceEqualityComparer.Instance);

    /// <summary>Merges the pieces of a block and the blank lines at its end.</summary>
    public void Merge(PieceBlock before, PieceBlock ours, PieceBlock theirs)
    {
        var sides = new Sides(before.Pieces, ours.Pieces, theirs.Pieces, ours.IsOrdered);
        var (b, o, t) = (0, 0, 0);
        foreach (var i in Enumerable.Range(0, before.Pieces.Length).Where(sides.IsBackbone))
        {
            var (oi, ti) = (sides.Ours.ToSide[i], sides.Theirs.ToSide[i]);
            Region(sides, o..oi, t..ti);
            Write(new Meeting(before.Pieces[i], ours.Pieces[oi], theirs.Pieces[ti]));
            (b, o, t) = (i + 1, oi + 1, ti + 1);
        }

        Region(sides, o..ours.Pieces.Length, t..theirs.Pieces.Length);
        output.Write(Space(before.EndSpace, ours.EndSpace, theirs.EndSpace));
    }

    private void Region(Sides sides, Range ours, Range theirs)
    {
        var o = sides.RunOfOurs(ours, theirs);
        var t = sides.RunOfTheirs(theirs, ours);

        // What both added alike at the beginning or the end is no dispute.
        var start = 0;
        while (start < o.Count && start < t.Count && o[start].IsSameAs(t[start]))
        {
            Write(o[start].With(t[start]));
            start++;
        }

        var end = 0;
        while (end < o.Count - start && end < t.Count - start && o[^(end + 1)].IsSameAs(t[^(end + 1)]))
        {
            end++;
        }

        Between(sides, o[start..^end], t[start..^end]);
        for (var k = end; k > 0; k--)
        {
            Write(o[^k].With(t[^k]));
        }
    }

    private void Between(Sides sides, List<Meeting> ours, List<Meeting> theirs)
    {
        if (ours.Count > 0 && theirs.Count > 0 && sides.IsOrdered && !AreRemarks(ours) && !AreRemarks(theirs))
        {
            output.Conflict(ours.SelectMany(m => Lines(m.Ours!)), theirs.SelectMany(m => Lines(m.Theirs!)));
            return;
        }

        // A comment belongs to what follows it. For the rest any order will do, but the same one whoever merges.
        var (first, second) = (ours, theirs);
        if (AreRemarks(ours) == AreRemarks(theirs) ? string.CompareOrdinal(Text(ours), Text(theirs)) > 0 : AreRemarks(ours))
        {
            (first, second) = (theirs, ours);
        }

        first.ForEach(Write);
        var said = first.Where(m => m.IsOfOneSide).Select(m => m.Says).ToList();
        second.Where(m => !(m.IsOfOneSide && said.Remove(m.Says))).ToList().ForEach(Write);
    }

    private static bool AreRemarks(List<Meeting> run) => run.Count > 0 && run.TrueForAll(m => m.IsRemark);

    private static string Text(List<Meeting> run) => string.Join('\n', run.Select(m => m.Says));

    private static IEnumerable<MergeLine> Lines(Piece piece) => piece.Space.Concat(piece.AllLines);

    private void Write(Meeting meeting)
    {
        var (before, ours, theirs) = (meeting.Before, meeting.Ours, meeting.Theirs);
        if (!_written.Add(ours ?? theirs!))
        {
            // Both sides moved or added it, and it stands further up.
            return;
        }

        if (meeting.IsDisputed)
        {
            output.Write((ours ?? theirs)!.Space);
            output.Conflict(ours?.AllLines ?? [], theirs?.AllLines ?? []);
        }
        else if (ours is null || theirs is null)
        {
            output.Write(Lines((ours ?? theirs)!));
        }
        else
        {
            output.Write(Space(before?.Space, ours.Space, theirs.Space));
            Content(before, ours, theirs);
        }
    }

    private void Content(Piece? before, Piece ours, Piece theirs)
    {
        if (ours.Block is { } o && theirs.Block is { } t && (before is null || before.Block is not null))
        {
            var b = before?.Block;
            Leaf(before?.Lines, before?.HeadSays, ours.Lines, ours.HeadSays, theirs.Lines, theirs.HeadSays);
            Merge(b ?? new PieceBlock([], [], [], "", o.IsOrdered), o, t);
            Leaf(b?.Foot, b?.FootSays, o.Foot, o.FootSays, t.Foot, t.FootSays);
        }
        else
        {
            Leaf(before is null ? null : [.. before.AllLines], before?.Says, [.. ours.AllLines], ours.Says, [.. theirs.AllLines], theirs.Says);
        }
    }

    private void Leaf(
        ImmutableArray<MergeLine>? before, string? beforeSays, ImmutableArray<MergeLine> ours, string oursSays, ImmutableArray<MergeLine> theirs, string theirsSays)
    {
        if (oursSays == theirsSays)
        {
            output.Write(Choose(before, ours, theirs));
        }
        else if (oursSays == beforeSays)
        {
            output.Write(theirs);
        }
        else if (theirsSays == beforeSays)
        {
            output.Write(ours);
        }
        else
        {
            output.Conflict(ours, theirs);
        }
    }

    /// <summary>Blank lines: those of the side that changed them, the more where both did.</summary>
    private static ImmutableArray<MergeLine> Space(ImmutableArray<MergeLine>? before, ImmutableArray<MergeLine> ours, ImmutableArray<MergeLine> theirs) =>
        before is { } b && (Same(b, ours) || Same(b, theirs)) || ours.Length == theirs.Length
            ? Choose(before, ours, theirs)
            : ours.Length > theirs.Length ? ours : theirs;

    /// <summary>Of two ways to write the same, the one that somebody changed; else the same one whoever merges.</summary>
    private static ImmutableArray<MergeLine> Choose(ImmutableArray<MergeLine>? before, ImmutableArray<MergeLine> ours, ImmutableArray<MergeLine> theirs) =>
        Same(ours, theirs) ? ours
        : before is { } b && Same(b, ours) ? theirs
        : before is { } was && Same(was, theirs) ? ours
        : string.CompareOrdinal(Joined(ours), Joined(theirs)) < 0 ? ours : theirs;

    private static bool Same(ImmutableArray<MergeLine> a, ImmutableArray<MergeLine> b) => a.Select(line => line.Text).SequenceEqual(b.Select(line => line.Text), StringComparer.Ordinal);

    private static string Joined(ImmutableArray<MergeLine> lines) => string.Join('\n', lines.Select(line => line.Text));
}
