using System.Collections.Immutable;
using CsCheck;
using NetTopologySuite.Geometries;
using UnitsNet;

namespace Recipe.Engineering.Tests.Nesting;

/// <summary>Layouts of true outlines: valid by another library's distances, near known shortest lengths, the same each time.</summary>
public class OutlineNestingTests
{
    private static readonly Gen<Outline> Convex =
        from count in Gen.Int[3, 8]
        from along in Gen.Double[0.03, 0.3]
        from across in Gen.Double[0.03, 0.3]
        from start in Gen.Double[0, 6]
        select Round(count, start, _ => 1, along, across);

    private static readonly Gen<Outline> Concave =
        from radii in Gen.Double[0.3, 1].Array[5, 10]
        from size in Gen.Double[0.05, 0.3]
        select Round(radii.Length, 0.1, i => radii[i], size, size);

    // Many points: covered by an outline of fewer.
    private static readonly Gen<Outline> Smooth =
        from waves in Gen.Int[2, 5]
        from size in Gen.Double[0.05, 0.3]
        select Round(90, 0, i => 0.75 + (0.2 * Math.Sin(i * waves * 2 * Math.PI / 90)), size, size);

    private static readonly Gen<OutlinePiece> OnePiece =
        from outline in Gen.Frequency((3, Convex), (3, Concave), (1, Smooth))
        from count in Gen.Int[1, 3]
        from turn in Gen.Enum<NestTurn>()
        from mirror in Gen.Bool
        from kit in Gen.Int[0, 3]
        select new OutlinePiece(outline, count, turn, mirror, kit);

    private static readonly Gen<ImmutableArray<OutlinePiece>> SomePieces = OnePiece.Array[1, 6].Select(ImmutableArray.Create);

    private static Length M(double value) => Length.FromMeters(value);

    private static OutlineNestSettings Settings(double gap = 0, long steps = 400_000, ulong seed = 1) => new(M(gap), seed, steps);

    private static Outline Points(params (double X, double Y)[] points) => new([.. points.Select(at => new Point2(at.X, at.Y))]);

    private static Outline Box(double along, double across) => Points((0, 0), (along, 0), (along, across), (0, across));

    private static Outline Round(int count, double start, Func<int, double> radius, double along, double across) =>
        new([.. Enumerable.Range(0, count).Select(i =>
        {
            double angle = start + (2 * Math.PI * i / count);
            return new Point2(along * radius(i) * Math.Cos(angle), across * radius(i) * Math.Sin(angle));
        })]);

    private static Polygon Read(Outline outline) =>
        new GeometryFactory().CreatePolygon([.. outline.Points.Append(outline.Points[0]).Select(at => new Coordinate(at.X, at.Y))]);

    // Distances and overlaps by NetTopologySuite; the search uses neither.
    private static void Valid(ImmutableArray<OutlinePiece> pieces, ImmutableArray<RollStock> stock, OutlineNest nest, double gap)
    {
        Assert.Equal(pieces.Sum(piece => piece.Count), nest.Placements.Length + nest.Missing.Length);
        Assert.Equal(
            pieces.Sum(piece => piece.Count),
            nest.Placements.Select(p => (p.Piece, p.Copy)).Concat(nest.Missing.Select(p => (p.Piece, p.Copy))).Distinct().Count());
        Polygon[] lie = [.. nest.Placements.Select(p => Read(p.Lies))];
        for (int i = 0; i < lie.Length; i++)
        {
            OutlinePlacement p = nest.Placements[i];
            OutlinePiece piece = pieces[p.Piece];
            Assert.InRange(p.Copy, 0, piece.Count - 1);
            Assert.True(!p.IsMirrored || piece.MayMirror);
            Assert.Contains(p.Degrees, piece.Turn switch { NestTurn.None => [0], NestTurn.Half => [0, 180], _ => new[] { 0, 90, 180, 270 } });
            Outline moved = (p.IsMirrored ? piece.Outline.Mirrored() : piece.Outline).Turned(p.Degrees).Moved(p.Shift);
            Assert.Equal([.. moved.Points], p.Lies.Points.ToArray());
            RollStock roll = stock[p.Stock];
            Assert.InRange(p.Lies.Least.X, -1e-9, 1e9);
            Assert.InRange(p.Lies.Least.Y, -1e-9, roll.Width.Meters);
            Assert.InRange(p.Lies.Most.Y, 0, roll.Width.Meters + 2e-9);
            Assert.True(roll.Length is not { } length || p.Lies.Most.X <= length.Meters + 1e-9);
            for (int j = i + 1; j < lie.Length; j++)
            {
                if (nest.Placements[j].Stock == p.Stock)
                {
                    double distance = lie[i].Distance(lie[j]);
                    Assert.True(distance >= gap - 1e-9, $"{i} and {j}: {distance}");
                    Assert.True(gap > 0 || !lie[i].EnvelopeInternal.Intersects(lie[j].EnvelopeInternal) || lie[i].Buffer(-1e-7).Distance(lie[j].Buffer(-1e-7)) > 1e-8, $"{i} and {j} overlap");
                }
            }
        }

        foreach (RollUse use in nest.Uses)
        {
            OutlinePlacement[] here = [.. nest.Placements.Where(p => p.Stock == use.Stock)];
            Assert.Equal(use.Pieces, here.Length);
            Assert.Equal(here.Max(p => p.Lies.Most.X), use.LengthUsed.Meters, 9);
            Assert.True(use.LengthUsed >= use.LeastLength);
            double area = here.Sum(p => Read(p.Lies).Area);
            Assert.Equal(1 - (area / (use.LengthUsed.Meters * stock[use.Stock].Width.Meters)), use.Waste.DecimalFractions, 6);
        }
    }

    [Fact]
    public void No_two_pieces_are_nearer_than_the_gap_and_none_leaves_its_roll_or_is_lost() =>
        Gen.Select(SomePieces, Gen.Double[0.25, 0.9], Gen.OneOf(Gen.Const(0.0), Gen.Double[0.001, 0.02]), Gen.Double[0.2, 1]).Sample(
            (pieces, width, gap, offcut) =>
            {
                ImmutableArray<RollStock> stock = [new("roll", M(width)), new("offcut", M(0.7), M(offcut))];
                Valid(pieces, stock, OutlineNesting.Nest(pieces, stock, Settings(gap, 300_000)), gap);
            },
            iter: 60);

    [Fact]
    public void The_search_reports_only_better_layouts_all_valid_the_last_of_which_it_returns()
    {
        ImmutableArray<OutlinePiece> pieces = [.. Enumerable.Range(0, 12).Select(i =>
            new OutlinePiece(Round(5 + (i % 3), i, k => 0.6 + (0.1 * ((k * (i + 2)) % 5)), 0.1 + (0.01 * i), 0.15), 1, NestTurn.Half, KitOrder: i % 4))];
        ImmutableArray<RollStock> stock = [new("roll", M(0.8))];
        var heard = new List<OutlineNest>();
        OutlineNest last = OutlineNesting.Nest(pieces, stock, Settings(0.004, 4_000_000), new Hearing(heard));
        Assert.InRange(heard.Count, 2, 10_000);
        Assert.All(heard, nest => Valid(pieces, stock, nest, 0.004));
        Assert.All(heard.Zip(heard.Skip(1)), pair => Assert.True(pair.Second.Uses[0].LengthUsed.Meters <= pair.First.Uses[0].LengthUsed.Meters + 1e-9));
        Assert.Equal(heard[^1].Uses[0].LengthUsed, last.Uses[0].LengthUsed);
        Assert.False(last.EndedEarly);
    }

    [Fact]
    public void The_same_input_gives_the_same_layout_and_more_work_never_a_longer_one()
    {
        SomePieces.Sample(
            pieces =>
            {
                ImmutableArray<RollStock> stock = [new("roll", M(0.9))];
                OutlineNest once = OutlineNesting.Nest(pieces, stock, Settings(0.002, 500_000));
                OutlineNest again = OutlineNesting.Nest(pieces, stock, Settings(0.002, 500_000));
                Assert.Equal(
                    once.Placements.Select(p => (p.Piece, p.Copy, p.Stock, p.IsMirrored, p.Degrees, p.Shift)),
                    again.Placements.Select(p => (p.Piece, p.Copy, p.Stock, p.IsMirrored, p.Degrees, p.Shift)));
                OutlineNest hardly = OutlineNesting.Nest(pieces, stock, Settings(0.002, 0));
                Assert.True(once.Uses[0].LengthUsed.Meters <= hardly.Uses[0].LengthUsed.Meters + 1e-9);
            },
            iter: 6);
    }

    // Two angles of 300 mm with legs of 100 mm, one turned round, close up to 300 x 400 mm; one behind the other they need 600 mm.
    [Fact]
    public void Two_angles_interlock()
    {
        Outline angle = Points((0, 0), (0.3, 0), (0.3, 0.1), (0.1, 0.1), (0.1, 0.3), (0, 0.3));
        OutlineNest nest = Lay([new(angle, 2, NestTurn.Half)], 0.4);
        Assert.Equal(0.3, nest.Uses[0].LengthUsed.Meters, 6);
        Assert.Equal(0.6, RollNesting.Pack([new(M(0.3), M(0.3), 2, NestTurn.None)], M(0.4), Length.Zero).LengthUsed.Meters, 6);
    }

    // Two right-angled triangles make a rectangle: no cloth is left over.
    [Fact]
    public void Triangles_pair_up()
    {
        OutlineNest nest = Lay([new(Points((0, 0), (0.3, 0), (0, 0.2)), 6, NestTurn.Half)], 0.2);
        Assert.Equal(0.9, nest.Uses[0].LengthUsed.Meters, 6);
        Assert.Equal(0, nest.Uses[0].Waste.DecimalFractions, 6);
    }

    // Turned by half, an oblique triangle and its like make a parallelogram; a row of n pairs is n bases long and the lean once.
    [Fact]
    public void Oblique_triangles_make_parallelograms()
    {
        // Nothing lies in the two end triangles of 100 x 200 mm.
        OutlineNest nest = Lay([new(Points((0, 0), (0.3, 0), (0.1, 0.2)), 6, NestTurn.Half)], 0.2);
        Assert.Equal(1.0, nest.Uses[0].LengthUsed.Meters, 6);
    }

    // A rectangle cut up from edge to edge: its own length is the shortest.
    [Theory]
    [InlineData(9, 1.10)]
    [InlineData(16, 1.12)]
    [InlineData(25, 1.13)]
    [InlineData(60, 1.13)]
    public void It_comes_near_the_known_shortest_of_a_rectangle_cut_up(int count, double worst)
    {
        double most = 0;
        for (ulong seed = 1; seed <= 3; seed++)
        {
            ImmutableArray<(double Along, double Across)> boxes = CutUp(seed, count);
            OutlineNest nest = OutlineNesting.Nest(
                [.. boxes.Select(box => new OutlinePiece(Box(box.Along, box.Across), 1, NestTurn.None))], [new("roll", M(1.2))], Settings(steps: 1_500_000));
            double length = nest.Uses[0].LengthUsed.Meters;
            Assert.True(length >= 2 - 1e-8);
            Nest rectangles = RollNesting.Pack([.. boxes.Select(box => new NestPiece(M(box.Along), M(box.Across), 1, NestTurn.None))], M(1.2), Length.Zero);
            Assert.True(length <= rectangles.LengthUsed.Meters + 1e-8);
            most = Math.Max(most, length / 2);
        }

        Assert.InRange(most, 1, worst);
    }

    [Fact]
    public void One_piece_lies_in_the_corner_and_is_as_long_as_the_bound()
    {
        OutlineNest nest = Lay([new(Points((5, 5), (5.4, 5.1), (5.2, 5.3)), 1, NestTurn.None)], 1);
        OutlinePlacement only = Assert.Single(nest.Placements);
        Assert.Equal((0.0, 0.0), (Math.Round(only.Lies.Least.X, 9), Math.Round(only.Lies.Least.Y, 9)));
        Assert.Equal(1, nest.Uses[0].LengthUsed / nest.Uses[0].LeastLength, 9);
    }

    [Fact]
    public void A_piece_wider_than_the_roll_is_turned_or_reported()
    {
        OutlineNest turned = Lay([new(Box(0.3, 1.5), 1, NestTurn.Quarter)], 1);
        Assert.Contains(turned.Placements[0].Degrees, new[] { 90, 270 });
        OutlineNest reported = Lay([new(Box(0.3, 1.5), 2, NestTurn.Half), new(Box(0.3, 0.5), 1, NestTurn.Half)], 1);
        Assert.Single(reported.Placements);
        Assert.Equal([new OutlineMissing(0, 0, true), new OutlineMissing(0, 1, true)], reported.Missing.ToArray());
    }

    [Fact]
    public void Offcuts_are_used_first_and_what_no_cloth_is_left_for_is_reported()
    {
        ImmutableArray<OutlinePiece> pieces = [new(Box(0.4, 0.3), 5, NestTurn.None)];
        ImmutableArray<RollStock> stock = [new("roll", M(1)), new("offcut", M(0.35), M(0.9)), new("short", M(0.65), M(0.5))];
        OutlineNest nest = OutlineNesting.Nest(pieces, stock, Settings());
        Assert.Equal([(0, 1), (1, 2), (2, 2)], nest.Uses.Select(use => (use.Stock, use.Pieces)));
        Valid(pieces, stock, nest, 0);

        OutlineNest without = OutlineNesting.Nest(pieces, stock[1..], Settings());
        Assert.Equal([new OutlineMissing(0, 4, false)], without.Missing.ToArray());
    }

    // Pieces that look alike are met in the order of their plies, whatever the order they were given in.
    [Fact]
    public void Pieces_that_look_alike_are_met_in_the_order_of_the_plies()
    {
        OutlineNest nest = Lay([new(Box(0.4, 0.3), 3, NestTurn.Half, KitOrder: 2), new(Box(0.4, 0.3), 3, NestTurn.Half, KitOrder: 1)], 0.3);
        Assert.Equal([1, 1, 1, 0, 0, 0], nest.Placements.Select(p => p.Piece));
    }

    [Fact]
    public void A_stopped_search_says_so_and_returns_a_valid_layout()
    {
        using var stop = new CancellationTokenSource();
        stop.Cancel();
        ImmutableArray<OutlinePiece> pieces = [new(Points((0, 0), (0.3, 0), (0.1, 0.2)), 9, NestTurn.Half)];
        OutlineNest nest = OutlineNesting.Nest(pieces, [new("roll", M(0.5))], Settings(0.01), null, stop.Token);
        Assert.True(nest.EndedEarly);
        Valid(pieces, [new("roll", M(0.5))], nest, 0.01);
    }

    [Fact]
    public void Five_hundred_pieces_are_laid()
    {
        ImmutableArray<OutlinePiece> pieces = [.. Enumerable.Range(0, 100).Select(i =>
            new OutlinePiece(Round(3 + (i % 4), i, _ => 1, 0.03 + (0.0004 * i), 0.05), 5, NestTurn.None, KitOrder: i))];
        ImmutableArray<RollStock> stock = [new("roll", M(1.2))];
        OutlineNest nest = OutlineNesting.Nest(pieces, stock, Settings(0.002, 0));
        Assert.Equal(500, nest.Placements.Length);
        Valid(pieces, stock, nest, 0.002);
    }

    [Fact]
    public void What_cannot_be_laid_out_is_refused()
    {
        ImmutableArray<RollStock> roll = [new("roll", M(1))];
        Assert.Throws<ArgumentException>(() => OutlineNesting.Nest([new(Points((0, 0), (2, 2), (2, 0), (0, 3)), 1, NestTurn.None)], roll, Settings()));
        Assert.Throws<ArgumentException>(() => OutlineNesting.Nest([new(Box(0.01, 0.01), 1001, NestTurn.None)], roll, Settings()));
        Assert.Throws<ArgumentOutOfRangeException>(() => OutlineNesting.Nest([new(Box(1, 1), 0, NestTurn.None)], roll, Settings()));
        Assert.Throws<ArgumentOutOfRangeException>(() => OutlineNesting.Nest([], [new("roll", Length.Zero)], Settings()));
        Assert.Throws<ArgumentOutOfRangeException>(() => OutlineNesting.Nest([], roll, Settings(gap: -0.001)));
        Assert.Throws<ArgumentOutOfRangeException>(() => OutlineNesting.Nest([], roll, Settings(steps: -1)));
        Assert.Empty(OutlineNesting.Nest([], roll, Settings()).Uses);
        Assert.Single(OutlineNesting.Nest([new(Box(1, 1), 1, NestTurn.None)], [], Settings()).Missing);
    }

    private static OutlineNest Lay(ImmutableArray<OutlinePiece> pieces, double width)
    {
        ImmutableArray<RollStock> stock = [new("roll", M(width))];
        OutlineNest nest = OutlineNesting.Nest(pieces, stock, Settings());
        Valid(pieces, stock, nest, 0);
        return nest;
    }

    private static ImmutableArray<(double Along, double Across)> CutUp(ulong seed, int count)
    {
        var boxes = new List<(double Along, double Across)> { (2, 1.2) };
        ulong state = seed;
        while (boxes.Count < count)
        {
            int largest = Enumerable.Range(0, boxes.Count).MaxBy(i => boxes[i].Along * boxes[i].Across);
            (double along, double across) = boxes[largest];
            double share = 0.3 + (0.4 * NestOrders.Next(ref state, 1000) / 1000);
            boxes.RemoveAt(largest);
            boxes.AddRange(along > across
                ? [(along * share, across), (along * (1 - share), across)]
                : [(along, across * share), (along, across * (1 - share))]);
        }

        return [.. boxes];
    }

    private sealed class Hearing(List<OutlineNest> heard) : IProgress<OutlineNest>
    {
        public void Report(OutlineNest value) => heard.Add(value);
    }
}
