using System.Collections.Immutable;
using Recipe.Text;

namespace Recipe.Syntax.Merging;

/// <summary>Which piece of one side is which piece of the base, in one block.</summary>
/// <param name="ToSide">By the place in the base the place on the side; -1 when it is gone.</param>
/// <param name="ToBase">The other way; -1 when it is new.</param>
/// <param name="InOrder">By the place in the base: whether it stands in line with its neighbours. A piece that moved does not.</param>
internal sealed record Matching(int[] ToSide, int[] ToBase, bool[] InOrder)
{
    // A block under another name is the same block, renamed, when at least so much of its lines is the same.
    private const double AlikeEnough = 0.6;

    /// <summary>
    /// Matches by key, by text, and between those by the word: the longest common subsequence first, so that matches rise on both
    /// sides. Where order means nothing, a piece that stands elsewhere under its key is matched too, as one that moved.
    /// </summary>
    public static Matching Of(ImmutableArray<Piece> before, ImmutableArray<Piece> side, bool isOrdered)
    {
        var match = new Matching(Filled(before.Length), Filled(side.Length), new bool[before.Length]);
        var (was, now) = (UniqueKeys(before), UniqueKeys(side));
        bool IsKnown(Piece piece) => piece.Key is { } key && was.ContainsKey(key) && now.ContainsKey(key);
        string Identity(Piece piece) => IsKnown(piece) ? "k" + piece.Key : "s" + piece.Says;
        var backbone = Alignment.Of([.. before.Select(Identity)], [.. side.Select(Identity)], StringComparer.Ordinal);
        foreach (var (i, j) in backbone)
        {
            match.Pair(i, j, inOrder: true);
        }

        var (left, right) = (0, 0);
        foreach (var (nextLeft, nextRight) in backbone.Append((before.Length, side.Length)))
        {
            match.PairBetween(before, side, left, nextLeft, right, nextRight, IsKnown);
            (left, right) = (nextLeft + 1, nextRight + 1);
        }

        if (!isOrdered)
        {
            foreach (var (key, i) in was)
            {
                if (now.TryGetValue(key, out var j) && match.ToSide[i] < 0 && match.ToBase[j] < 0)
                {
                    match.Pair(i, j, inOrder: false);
                }
            }
        }

        return match;
    }

    /// <summary>The keys that one piece alone has, with its place.</summary>
    public static Dictionary<string, int> UniqueKeys(ImmutableArray<Piece> pieces)
    {
        var places = new Dictionary<string, int>(StringComparer.Ordinal);
        for (var i = 0; i < pieces.Length; i++)
        {
            if (pieces[i].Key is { } key)
            {
                places[key] = places.ContainsKey(key) ? -1 : i;
            }
        }

        return places.Where(place => place.Value >= 0).ToDictionary(place => place.Key, place => place.Value, StringComparer.Ordinal);
    }

    // What was written differently stands between the same neighbours and begins with the same word.
    private void PairBetween(ImmutableArray<Piece> before, ImmutableArray<Piece> side, int left, int nextLeft, int right, int nextRight, Func<Piece, bool> isKnown)
    {
        var asManyRemarks = Count(before, left, nextLeft) == Count(side, right, nextRight);
        for (var i = left; i < nextLeft; i++)
        {
            for (var j = right; j < nextRight && !isKnown(before[i]); j++)
            {
                if (!isKnown(side[j]) && (before[i].IsRemark ? side[j].IsRemark && asManyRemarks : MayBeOne(before[i], side[j])))
                {
                    Pair(i, j, inOrder: true);
                    right = j + 1;
                    break;
                }
            }
        }

        static int Count(ImmutableArray<Piece> pieces, int from, int to) => Enumerable.Range(from, to - from).Count(i => pieces[i].IsRemark);
    }

    private static bool MayBeOne(Piece was, Piece now)
    {
        if (was.IsRemark || now.IsRemark || was.Word.Length == 0 || was.Word != now.Word)
        {
            return false;
        }

        return was.Key == now.Key || (was.Block is { } a && now.Block is { } b && Alike(a.Pieces, b.Pieces) >= AlikeEnough);
    }

    private static double Alike(ImmutableArray<Piece> a, ImmutableArray<Piece> b) => a.Length + b.Length == 0
        ? 0
        : 2.0 * Alignment.Of([.. a.Select(piece => piece.Says)], [.. b.Select(piece => piece.Says)], StringComparer.Ordinal).Length / (a.Length + b.Length);

    private void Pair(int i, int j, bool inOrder) => (ToSide[i], ToBase[j], InOrder[i]) = (j, i, inOrder);

    private static int[] Filled(int length)
    {
        var places = new int[length];
        Array.Fill(places, -1);
        return places;
    }
}
