using UnitsNet;

namespace Recipe.Engineering.Tests;

public class OutlineStripsTests
{
    private static readonly Outline Wide = new([new(0, 0), new(2, 0), new(2, 2.5), new(0, 2.5)]);

    private static Length M(double value) => Length.FromMeters(value);

    [Fact]
    public void A_wide_piece_is_cut_into_strips_that_lap()
    {
        // Roll 1 m, lap 0.05: 0 to 1, 0.95 to 1.95, 1.9 to 2.5.
        OutlineStrips strips = OutlineStrips.Cut(Wide, M(1), M(0.05), M(0.3), 0);
        Assert.Equal([2.0, 2.0, 1.2], strips.Strips.Select(strip => Math.Round(strip.Outline.SquareMetres, 9)));
        Assert.Equal([0.975, 1.925], strips.Joins.Select(join => Math.Round(join, 9)));
    }

    [Fact]
    public void The_joins_of_the_next_ply_are_staggered()
    {
        OutlineStrips strips = OutlineStrips.Cut(Wide, M(1), M(0.05), M(0.3), 1);
        Assert.Equal([0.675, 1.625], strips.Joins.Select(join => Math.Round(join, 9)));
        Assert.All(strips.Strips, strip => Assert.True(strip.Outline.Across <= 1 + 1e-9));
        Digits.Close(5 + (2 * 2 * 0.05), strips.Strips.Sum(strip => strip.Outline.SquareMetres));
    }

    // Four strips of 1 m that lap 50 mm make 3.85 m; the sum of the steps comes to a hair less. Fifteen steps of 30 mm are one strip of
    // 500 mm less its lap of 50 mm; the product comes to a hair less.
    [Fact]
    public void Rounding_makes_no_strip_of_the_lap_alone()
    {
        Outline four = new([new(0, 0), new(2, 0), new(2, 3.85), new(0, 3.85)]);
        Assert.Equal(3, OutlineStrips.Cut(four, M(1), M(0.05), M(0.1), 0).Joins.Length);
        Outline three = new([new(0, 0), new(2, 0), new(2, 1.3), new(0, 1.3)]);
        Assert.Equal([0.475, 0.925], OutlineStrips.Cut(three, M(0.5), M(0.05), M(0.03), 15).Joins.Select(join => Math.Round(join, 9)));
    }

    [Fact]
    public void A_piece_that_fits_the_roll_has_no_join()
    {
        OutlineStrips strips = OutlineStrips.Cut(Wide, M(2.5), M(0.05), M(0.3), 3);
        Assert.Same(Wide, Assert.Single(strips.Strips).Outline);
        Assert.Empty(strips.Joins);
    }

    [Fact]
    public void A_strip_across_a_bay_comes_in_two_pieces()
    {
        Outline bay = new([new(0, 0), new(3, 0), new(3, 2), new(2, 2), new(2, 1), new(1, 1), new(1, 2), new(0, 2)]);
        OutlineStrips strips = OutlineStrips.Cut(bay, M(1), M(0), M(0), 0);
        Assert.Equal([0, 1, 1], strips.Strips.Select(strip => strip.Index));
        Digits.Close(bay.SquareMetres, strips.Strips.Sum(strip => strip.Outline.SquareMetres));
    }

    [Fact]
    public void Impossible_strips_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => OutlineStrips.Cut(Wide, M(0), M(0), M(0), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => OutlineStrips.Cut(Wide, M(1), M(1), M(0), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => OutlineStrips.Cut(Wide, M(1), M(0), M(0), -1));
        Assert.Throws<ArgumentOutOfRangeException>(() => OutlineStrips.Cut(Wide, M(1e-6), M(0), M(0), 0));
    }
}
