using System.Collections.Immutable;
using CsCheck;

namespace Recipe.Engineering.Tests.Exploring;

/// <summary>
/// The front against its definition (every pair compared, in random sets) and against published test problems whose front is known in closed form;
/// the problems and their fronts are from memory of the works named.
/// </summary>
public sealed class ParetoTests
{
    private static readonly Gen<ParetoPoint[]> Sets =
        from count in Gen.Int[1, 5]
        from steps in Gen.OneOf(Gen.Const(3), Gen.Const(20), Gen.Const(1_000_000))
        from rows in Gen.Int[0, steps].Array[count].Array[0, 250]
        select rows.Select((row, i) => new ParetoPoint(i, [.. row.Select(value => (double)value)])).ToArray();

    [Fact]
    public void It_is_what_the_definition_says() => Sets.Sample(points => Assert.Equal(ByDefinition(points).Select(p => p.Index), ParetoFront.Of(points).Select(p => p.Index)), iter: 2_000);

    [Fact]
    public void A_stream_gives_the_same_whatever_its_order() => Gen.Select(Sets, Gen.Int).Sample(
        (points, seed) =>
        {
            // Enough points that the archive settles several times on the way.
            var many = Enumerable.Range(0, 12).SelectMany(round => points.Select(p => p with { Index = p.Index + (round * 1000) })).ToArray();
            var expected = ParetoFront.Of(many).Select(p => p.Index);
            var shuffled = many.ToArray();
            new Random(seed).Shuffle(shuffled);
            var archive = new ParetoArchive();
            foreach (var point in shuffled)
            {
                archive.Add(point);
            }

            Assert.Equal(expected, archive.Front().Select(p => p.Index));
        },
        iter: 200);

    [Fact]
    public void The_archive_dominates_what_its_front_dominates() => Gen.Select(Sets.Where(set => set.Length > 0), Gen.Int[0, 1_000_000]).Sample(
        (points, pick) =>
        {
            var archive = new ParetoArchive();
            foreach (var point in points)
            {
                archive.Add(point);
            }

            var values = points[pick % points.Length].Values;
            Assert.Equal(points.Any(p => Dominates(p, values)), archive.Dominates(values.AsSpan()));
        },
        iter: 300);

    // Schaffer, Multiple objective optimization with vector evaluated genetic algorithms (1985), problem 1: f1 = x^2, f2 = (x - 2)^2; the front is 0 <= x <= 2.
    [Fact]
    public void Schaffers_first_problem_has_the_front_from_0_to_2()
    {
        var xs = Enumerable.Range(-400, 1001).Select(i => i / 100.0).ToArray();
        var front = ParetoFront.Of([.. xs.Select((x, i) => new ParetoPoint(i, [x * x, (x - 2) * (x - 2)]))]);
        Assert.Equal(xs.Where(x => x is >= 0 and <= 2), front.Select(point => xs[point.Index]));
    }

    // Binh and Korn, MOBES: a multiobjective evolution strategy for constrained optimization problems (1997): f1 = 4 x^2 + 4 y^2, f2 = (x - 5)^2 + (y - 5)^2
    // for 0 <= x <= 5, 0 <= y <= 3, with (x - 5)^2 + y^2 <= 25 and (x - 8)^2 + (y + 3)^2 >= 7.7. The front is y = x up to 3, then y = 3 on to x = 5.
    [Fact]
    public void Binh_and_Korns_problem_has_the_front_along_the_diagonal_and_the_edge()
    {
        const int steps = 20;
        var grid = Enumerable.Range(0, (5 * steps) + 1).SelectMany(i => Enumerable.Range(0, (3 * steps) + 1).Select(j => (X: i / (double)steps, Y: j / (double)steps)))
            .Where(p => Squared(p.X - 5) + Squared(p.Y) <= 25 && Squared(p.X - 8) + Squared(p.Y + 3) >= 7.7).ToArray();
        var front = ParetoFront.Of([.. grid.Select((p, i) => new ParetoPoint(i, [Math.Round((4 * Squared(p.X)) + (4 * Squared(p.Y)), 9), Math.Round(Squared(p.X - 5) + Squared(p.Y - 5), 9)]))])
            .Select(point => grid[point.Index]).ToHashSet();

        // On the grid a point just off the line may slip between two of its neighbours, one step away and no more.
        Assert.All(front, p => Assert.True(p.X <= 3 ? Math.Abs(p.X - p.Y) <= (1.0 / steps) + 1e-9 : p.Y >= 3 - (1.0 / steps) - 1e-9, $"{p}"));
        Assert.All(grid.Where(p => p.X == p.Y && p.X <= 3), p => Assert.Contains(p, front));
        Assert.All(grid.Where(p => p.X > 3 && p.Y == 3), p => Assert.Contains(p, front));
    }

    // Zitzler, Deb and Thiele, Comparison of multiobjective evolutionary algorithms (2000), ZDT1: the front is f2 = 1 - sqrt(f1) with g = 1; here with three variables.
    [Fact]
    public void ZDT1_has_the_front_where_g_is_1()
    {
        var axis = Enumerable.Range(0, 21).Select(i => i / 20.0).ToArray();
        var points = axis.SelectMany(x1 => axis.SelectMany(x2 => axis.Select(x3 => (X1: x1, G: 1 + (9 * (x2 + x3) / 2))))).ToArray();
        var front = ParetoFront.Of([.. points.Select((p, i) => new ParetoPoint(i, [p.X1, p.G * (1 - Math.Sqrt(p.X1 / p.G))]))]);
        Assert.Equal(axis, front.Select(point => point.Values[0]));
        Assert.All(front, point => Assert.Equal(1 - Math.Sqrt(point.Values[0]), point.Values[1], 12));
    }

    // DTLZ1 and its kin have as their front a plane on which no point dominates another (Deb, Thiele, Laumanns and Zitzler, 2002): f1 + f2 + f3 = 0.5.
    [Fact]
    public void A_plane_in_three_values_is_all_front_and_nothing_above_it_is()
    {
        var plane = Enumerable.Range(0, 101).SelectMany(i => Enumerable.Range(0, 101 - i).Select(j => (A: i / 200.0, B: j / 200.0, C: (100 - i - j) / 200.0))).ToArray();
        ParetoPoint[] points = [.. plane.Select((p, i) => new ParetoPoint(i, [p.A, p.B, p.C])), .. plane.Select((p, i) => new ParetoPoint(100_000 + i, [p.A * 1.01, p.B, p.C + 0.001]))];
        Assert.Equal(Enumerable.Range(0, plane.Length).Select(i => (long)i), ParetoFront.Of(points).Select(p => p.Index));
    }

    // A 0-1 knapsack of two aims: most worth, least weight, every subset tried. Weights and worths of powers of two make the front known: with
    // weight = worth of every thing, no subset dominates another of another weight, and subsets are told apart by their weight.
    [Fact]
    public void A_knapsack_where_worth_is_weight_is_all_front()
    {
        ParetoPoint[] sets = [.. Enumerable.Range(0, 1 << 12).Select(set => new ParetoPoint(set, [set, -set]))];
        Assert.Equal(sets.Length, ParetoFront.Of(sets).Length);
        ParetoPoint[] worse = [.. sets, .. sets.Skip(1).Select(p => new ParetoPoint(p.Index + 10_000, [p.Values[0] + 0.5, p.Values[1] + 0.5]))];
        Assert.Equal(sets.Select(p => p.Index), ParetoFront.Of(worse).Select(p => p.Index));
    }

    [Fact]
    public void Equal_points_all_stay()
    {
        ParetoPoint[] points = [new(7, [1, 2]), new(3, [1, 2]), new(5, [2, 1]), new(9, [2, 2])];
        Assert.Equal([3, 5, 7], ParetoFront.Of(points).Select(p => p.Index));
    }

    [Fact]
    public void What_cannot_be_compared_is_refused()
    {
        Assert.Throws<ArgumentException>(() => ParetoFront.Of([new(0, [1]), new(1, [1, 2])]));
        Assert.Throws<ArgumentException>(() => ParetoFront.Of([new(0, [double.NaN])]));
        Assert.Throws<ArgumentException>(() => ParetoFront.Of([new(0, [])]));
        Assert.Throws<ArgumentException>(() => ParetoFront.Of([default]));
        Assert.Throws<ArgumentException>(() => Dominance.Dominates([1, 2], [1]));
        Assert.Empty(ParetoFront.Of([]));
    }

    [Fact]
    public void Snapping_keeps_order_and_sign_and_ten_digits() => Gen.Select(Gen.Double[-1e12, 1e12], Gen.Double[-1e12, 1e12]).Sample(
        (a, b) =>
        {
            Assert.True(a > b || Dominance.Snap(a) <= Dominance.Snap(b));
            Assert.Equal(-Dominance.Snap(a), Dominance.Snap(-a));
            Assert.Equal(Dominance.Snap(a), Dominance.Snap(Dominance.Snap(a)));
            Assert.InRange(Math.Abs(Dominance.Snap(a) - a), 0, Math.Abs(a) * 1e-10);
        });

    [Fact]
    public void Sums_in_another_order_snap_to_one_value() => Assert.Equal(Dominance.Snap(0.1 + 0.2 + 0.3), Dominance.Snap(0.3 + 0.2 + 0.1));

    private static IEnumerable<ParetoPoint> ByDefinition(ParetoPoint[] points) => points.Where(point => !points.Any(other => Dominates(other, point.Values)));

    // In words of its own: nowhere more, and not the same.
    private static bool Dominates(ParetoPoint one, ImmutableArray<double> other) => one.Values.Zip(other).All(pair => pair.First <= pair.Second) && !one.Values.SequenceEqual(other);

    private static double Squared(double x) => x * x;
}
