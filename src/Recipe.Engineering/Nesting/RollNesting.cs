using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Lays rectangles out on a roll of limited width so that little of its length is used.</summary>
/// <remarks>
/// The problem is strip packing; the shortest layout of more than a few pieces takes too long to find, so several heuristics run and the
/// shortest of their layouts is taken: shelves (Coffman, Garey, Johnson, Tarjan 1980), best fit on a skyline (Burke, Kendall, Whitwell 2004)
/// and bottom-left (Baker, Coffman, Rivest 1980) in several orders, improved by exchanging pieces. The work is limited by a count of steps,
/// never by time, and the random numbers have a fixed seed: the same pieces give the same layout. A piece that is cut at an angle
/// counts with the rectangle round it, as a straight cut takes it; bias pieces side by side take less.
/// </remarks>
public static class RollNesting
{
    /// <summary>The most pieces that are laid out.</summary>
    public const int MostPieces = 1000;

    // Comparisons of the search by exchange: about a millisecond.
    private const long StepsOfSearch = 100_000;
    private const int MostTries = 100;

    // A piece that is too wide by less than this is not: it is rounding, not cloth.
    private const double Slack = 1e-9;

    /// <summary>Lays pieces out on a roll.</summary>
    /// <param name="pieces">The pieces, <see cref="MostPieces"/> at the most in all; no piece may be wider than the roll however it is turned.</param>
    /// <param name="usableWidth">Usable width of the roll, selvedges left out; greater than zero.</param>
    /// <param name="gap">Least distance between two pieces; zero or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of range, or a piece does not fit the roll.</exception>
    /// <exception cref="ArgumentException">There are too many pieces.</exception>
    public static Nest Pack(ImmutableArray<NestPiece> pieces, Length usableWidth, Length gap)
    {
        (NestBoxes boxes, double space) = Boxes(pieces, usableWidth, gap);
        if (boxes.Count == 0)
        {
            return new Nest([], Length.Zero, Length.Zero, Ratio.Zero);
        }

        double least = Least(boxes, space);
        return Read(boxes, Best(boxes, least + space), space, least, usableWidth.Meters);
    }

    /// <summary>The pieces by first fit on shelves alone, none turned that fits as it is; what the proved bound speaks of.</summary>
    internal static Nest PackOnShelves(ImmutableArray<NestPiece> pieces, Length usableWidth, Length gap)
    {
        (NestBoxes boxes, double space) = Boxes(pieces, usableWidth, gap);
        return Read(boxes, ShelfPacking.Pack(boxes, Turns(boxes, _ => false)), space, Least(boxes, space), usableWidth.Meters);
    }

    private static NestLayout Best(NestBoxes boxes, double least)
    {
        NestLayout best = ShelfPacking.Pack(boxes, Turns(boxes, _ => false));
        void Offer(NestLayout layout) => best = layout.Length < best.Length ? layout : best;
        Offer(ShelfPacking.Pack(boxes, Turns(boxes, box => boxes.Across[box] < boxes.Along[box])));
        Offer(ShelfPacking.Pack(boxes, Turns(boxes, box => boxes.Across[box] > boxes.Along[box])));

        int[][] orders =
        [
            NestOrders.By(boxes, box => boxes.Along[box], box => boxes.Across[box]),
            NestOrders.By(boxes, box => boxes.Across[box], box => boxes.Along[box]),
            NestOrders.By(boxes, box => boxes.Along[box] * boxes.Across[box], box => boxes.Along[box]),
            NestOrders.By(boxes, box => Math.Max(boxes.Along[box], boxes.Across[box]), box => boxes.Along[box]),
        ];
        (int[] from, double shortest) = (orders[0], double.PositiveInfinity);
        foreach (int[] order in orders)
        {
            if (best.Length <= least * (1 + Slack))
            {
                return best;
            }

            Offer(SkylinePacking.BestFit(boxes, order, widest: true, againstHigher: false));
            Offer(SkylinePacking.BestFit(boxes, order, widest: true, againstHigher: true));
            Offer(SkylinePacking.BottomLeft(boxes, order));
            NestLayout layout = SkylinePacking.BestFit(boxes, order, widest: false, againstHigher: true);
            Offer(layout);
            (from, shortest) = layout.Length < shortest ? (order, layout.Length) : (from, shortest);
        }

        return Exchange(boxes, from, shortest, best, least);
    }

    // Two pieces of the order change places; the change stays when the layout grows no longer.
    private static NestLayout Exchange(NestBoxes boxes, int[] from, double length, NestLayout best, double least)
    {
        int count = boxes.Count;
        int[] order = [.. from];
        ulong random = 1;
        long tries = Math.Min(MostTries, StepsOfSearch / ((long)count * count));
        for (long i = 0; i < tries && count > 1 && best.Length > least * (1 + Slack); i++)
        {
            int a = NestOrders.Next(ref random, count);
            int b = NestOrders.Next(ref random, count);
            if (boxes.Piece[order[a]] == boxes.Piece[order[b]])
            {
                continue;
            }

            (order[a], order[b]) = (order[b], order[a]);
            NestLayout layout = SkylinePacking.BestFit(boxes, order, widest: false, againstHigher: true);
            if (layout.Length > length)
            {
                (order[a], order[b]) = (order[b], order[a]);
                continue;
            }

            length = layout.Length;
            best = length < best.Length ? layout : best;
        }

        return best;
    }

    private static bool[] Turns(NestBoxes boxes, Func<int, bool> wanted)
    {
        bool[] turned = new bool[boxes.Count];
        for (int box = 0; box < turned.Length; box++)
        {
            turned[box] = boxes.CanTurn[box] && (wanted(box) || !boxes.FitsStraight(box));
        }

        return turned;
    }

    private static double Least(NestBoxes boxes, double gap)
    {
        (double area, double longest, double behind) = (0, 0, 0);
        for (int box = 0; box < boxes.Count; box++)
        {
            (double along, double across) = (boxes.Along[box], boxes.Across[box]);
            area += along * across;
            double shorter = !boxes.CanTurn[box] ? along : boxes.FitsStraight(box) ? Math.Min(along, across) : across;
            longest = Math.Max(longest, shorter);
            double narrower = boxes.CanTurn[box] ? Math.Min(along, across) : across;
            behind += narrower > boxes.Width / 2 * (1 + Slack) ? shorter : 0;
        }

        return Math.Max(Math.Max(area / boxes.Width, longest), behind) - gap;
    }

    private static Nest Read(NestBoxes boxes, NestLayout layout, double gap, double least, double width)
    {
        int[] order = new int[boxes.Count];
        int[] copy = new int[boxes.Count];
        double area = 0;
        for (int box = 0; box < order.Length; box++)
        {
            order[box] = box;
            copy[box] = box > 0 && boxes.Piece[box] == boxes.Piece[box - 1] ? copy[box - 1] + 1 : 0;
            area += (boxes.Along[box] - gap) * (boxes.Across[box] - gap);
        }

        Array.Sort(order, (a, b) =>
        {
            int result = layout.Y[a].CompareTo(layout.Y[b]);
            result = result != 0 ? result : layout.X[a].CompareTo(layout.X[b]);
            return result != 0 ? result : a.CompareTo(b);
        });
        var placements = ImmutableArray.CreateBuilder<NestPlacement>(order.Length);
        foreach (int box in order)
        {
            placements.Add(new NestPlacement(
                boxes.Piece[box],
                copy[box],
                Length.FromMeters(layout.Y[box]),
                Length.FromMeters(layout.X[box]),
                Length.FromMeters(boxes.AlongOf(box, layout.Turned[box]) - gap),
                Length.FromMeters(boxes.AcrossOf(box, layout.Turned[box]) - gap),
                layout.Turned[box]));
        }

        double length = layout.Length - gap;
        double waste = Math.Clamp(1 - (area / (length * width)), 0, 1);
        return new Nest(placements.MoveToImmutable(), Length.FromMeters(length), Length.FromMeters(least), Ratio.FromDecimalFractions(waste));
    }

    private static (NestBoxes Boxes, double Gap) Boxes(ImmutableArray<NestPiece> pieces, Length usableWidth, Length gap)
    {
        double space = Guard.NotNegative(gap.Meters, "m", nameof(gap));
        double width = (Guard.Positive(usableWidth.Meters, "m", nameof(usableWidth)) + space) * (1 + Slack);
        (List<double> along, List<double> across, List<bool> canTurn, List<int> index) = ([], [], [], []);
        for (int i = 0; i < pieces.Length; i++)
        {
            NestPiece piece = pieces[i];
            double a = Guard.Positive(piece.Along.Meters, "m", nameof(pieces)) + space;
            double b = Guard.Positive(piece.Across.Meters, "m", nameof(pieces)) + space;
            int count = Guard.AtLeast(piece.Count, 1, nameof(pieces));
            bool turns = piece.Turn == NestTurn.Quarter && a <= width;
            if (b > width && !turns)
            {
                throw Guard.Refuse(piece.Across.Meters, "m", nameof(pieces), "must not be wider than the roll");
            }

            if (count > MostPieces - along.Count)
            {
                throw new ArgumentException($"There must be at most {MostPieces} pieces.", nameof(pieces));
            }

            for (int copy = 0; copy < count; copy++)
            {
                along.Add(a);
                across.Add(b);
                canTurn.Add(turns);
                index.Add(i);
            }
        }

        return (new NestBoxes([.. along], [.. across], [.. canTurn], [.. index], width), space);
    }
}
