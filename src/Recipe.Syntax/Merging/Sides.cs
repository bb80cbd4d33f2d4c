using System.Collections.Immutable;

namespace Recipe.Syntax.Merging;

/// <summary>One piece as the three texts have it.</summary>
/// <param name="Before">In the base; null when it is new.</param>
/// <param name="Ours">On our side; null when it is not there.</param>
/// <param name="Theirs">On their side; null when it is not there.</param>
/// <param name="IsDisputed">Whether one side wants it here and the other does not.</param>
internal sealed record Meeting(Piece? Before, Piece? Ours, Piece? Theirs, bool IsDisputed = false)
{
    /// <summary>What it says, on the side that has it.</summary>
    public string Says => (Ours ?? Theirs)!.Says;

    /// <summary>Whether it is a comment.</summary>
    public bool IsRemark => (Ours ?? Theirs)!.IsRemark;

    /// <summary>Whether it is a statement that one side alone added here.</summary>
    public bool IsOfOneSide => Before is null && Ours is null != Theirs is null && !IsRemark && !IsDisputed;

    /// <summary>Whether one side added here what the other added.</summary>
    public bool IsSameAs(Meeting other) => Before is null && other.Before is null && !IsDisputed && !other.IsDisputed && Says == other.Says;

    /// <summary>What one side added and the other added too.</summary>
    public Meeting With(Meeting theirs) => new(null, Ours ?? theirs.Ours, Theirs ?? theirs.Theirs);
}

/// <summary>The pieces of one block in three texts, and who took them where.</summary>
internal sealed class Sides
{
    private readonly ImmutableArray<Piece> _before;
    private readonly ImmutableArray<Piece> _ours;
    private readonly ImmutableArray<Piece> _theirs;
    private readonly Dictionary<int, int> _addedToo = [];
    private readonly Dictionary<int, int> _addedByUsToo = [];

    public Sides(ImmutableArray<Piece> before, ImmutableArray<Piece> ours, ImmutableArray<Piece> theirs, bool isOrdered)
    {
        (_before, _ours, _theirs, IsOrdered) = (before, ours, theirs, isOrdered);
        Ours = Matching.Of(before, ours, isOrdered);
        Theirs = Matching.Of(before, theirs, isOrdered);
        var there = Matching.UniqueKeys(theirs);
        foreach (var (key, o) in Matching.UniqueKeys(ours))
        {
            if (there.TryGetValue(key, out var t) && Ours.ToBase[o] < 0 && Theirs.ToBase[t] < 0)
            {
                (_addedToo[o], _addedByUsToo[t]) = (t, o);
            }
        }
    }

    public Matching Ours { get; }

    public Matching Theirs { get; }

    public bool IsOrdered { get; }

    /// <summary>Whether both sides kept a piece of the base in line with its neighbours.</summary>
    public bool IsBackbone(int i) => Ours.ToSide[i] >= 0 && Theirs.ToSide[i] >= 0 && Ours.InOrder[i] && Theirs.InOrder[i];

    /// <summary>What our side has between two pieces of the backbone, without what the other side took out or elsewhere.</summary>
    /// <param name="places">Where that is on our side.</param>
    /// <param name="across">Where it is on the other side.</param>
    public List<Meeting> RunOfOurs(Range places, Range across) =>
        Run(places, _ours, Ours, Theirs, j => _addedToo.TryGetValue(j, out var t) ? (t, _theirs[t]) : null, across);

    /// <summary>The same of their side, each piece of it on the side where it belongs.</summary>
    public List<Meeting> RunOfTheirs(Range places, Range across) =>
        [.. Run(places, _theirs, Theirs, Ours, j => _addedByUsToo.TryGetValue(j, out var o) ? (o, _ours[o]) : null, across).Select(m => m with { Ours = m.Theirs, Theirs = m.Ours })];

    private List<Meeting> Run(Range places, ImmutableArray<Piece> side, Matching match, Matching other, Func<int, (int Place, Piece Piece)?> addedToo, Range across)
    {
        var run = new List<Meeting>();
        for (var j = places.Start.Value; j < places.End.Value; j++)
        {
            if ((match.ToBase[j] is var i && i < 0 ? New(side[j], addedToo(j), across) : Old(i, side[j], match, other)) is { } meeting)
            {
                run.Add(meeting);
            }
        }

        return run;
    }

    // One name in two places of a list in which order counts cannot both be right.
    private Meeting New(Piece piece, (int Place, Piece Piece)? too, Range across) =>
        too is not { } twin ? new(null, piece, null)
        : !IsOrdered ? new(null, piece, twin.Piece)
        : new(null, piece, null, IsDisputed: twin.Place < across.Start.Value || twin.Place >= across.End.Value);

    private Meeting? Old(int i, Piece piece, Matching match, Matching other)
    {
        if (other.ToSide[i] < 0)
        {
            return piece.Says == _before[i].Says ? null : new(_before[i], piece, null, IsDisputed: true);
        }

        // The side that moved it says where it stands.
        return match.InOrder[i] ? null : new(_before[i], piece, (ReferenceEquals(other, Theirs) ? _theirs : _ours)[other.ToSide[i]]);
    }
}
