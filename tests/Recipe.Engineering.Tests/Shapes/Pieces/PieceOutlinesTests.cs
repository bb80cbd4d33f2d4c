using UnitsNet;

namespace Recipe.Engineering.Tests;

public class PieceOutlinesTests
{
    private static readonly Outline Square = new([new(0, 0), new(0.4, 0), new(0.4, 0.4), new(0, 0.4)]);

    // An L of three squares of 0.2.
    private static readonly Outline Angle3 = new([new(0, 0), new(0.4, 0), new(0.4, 0.2), new(0.2, 0.2), new(0.2, 0.4), new(0, 0.4)]);

    private static Length M(double value) => Length.FromMeters(value);

    [Fact]
    public void A_trim_allowance_goes_all_round()
    {
        Digits.Close(0.44 * 0.44, PieceOutlines.WithTrim(Square, M(0.02)).SquareMetres);

        // Steiner's formula for a convex piece: area + perimeter r + pi r^2; 64 sides to the circle lose 0.2 % of the last.
        double round = PieceOutlines.WithTrim(Square, M(0.02), roundCorners: true).SquareMetres;
        Assert.InRange(round, 0.16 + (1.6 * 0.02) + (Math.PI * 0.0004 * 0.997), 0.16 + (1.6 * 0.02) + (Math.PI * 0.0004));
        Assert.Same(Square, PieceOutlines.WithTrim(Square, M(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => PieceOutlines.WithTrim(Square, M(-0.01)));
    }

    // Plane geometry: a rectangle less four squares; without squares it is the rectangle.
    [Theory]
    [InlineData(0, 4)]
    [InlineData(0.035, 12)]
    public void A_box_laid_flat_lacks_a_square_at_each_corner(double corner, int points)
    {
        var net = PieceOutlines.Cross(M(0.43), M(0.19), M(corner));
        Digits.Close((0.43 * 0.19) - (4 * corner * corner), net.SquareMetres);
        Assert.Equal(points, net.Points.Length);
        Digits.Close(0.43, net.Along);
        Digits.Close(0.19, net.Across);
    }

    [Fact]
    public void A_ply_drop_steps_inside_until_nothing_is_left()
    {
        Digits.Close(0.36 * 0.36, Assert.Single(PieceOutlines.SteppedIn(Square, M(0.02))).SquareMetres);
        Assert.Empty(PieceOutlines.SteppedIn(Square, M(0.21)));

        // Two squares joined by a bridge 0.1 wide part when each side gives 0.06.
        Outline waist = new([new(0, 0), new(0.4, 0), new(0.4, 0.15), new(0.6, 0.15), new(0.6, 0), new(1, 0), new(1, 0.4), new(0.6, 0.4), new(0.6, 0.25), new(0.4, 0.25), new(0.4, 0.4), new(0, 0.4)]);
        Assert.Equal(2, PieceOutlines.SteppedIn(waist, M(0.06)).Length);
    }

    [Fact]
    public void A_dart_takes_out_its_wedge()
    {
        Outline left = PieceOutlines.WithDart(Square, new(0.4, 0.2), new(0.2, 0.2), M(0.05));
        Digits.Close(0.16 - (0.2 * 0.05 / 2), left.SquareMetres);
        Assert.Contains(left.Points, at => (at - new Point2(0.2, 0.2)).Norm < 1e-12);
        Assert.Throws<ArgumentException>(() => PieceOutlines.WithDart(Square, new(0.4, 0.2), new(0.4, 0.2), M(0.05)));
    }

    [Fact]
    public void Notches_stand_where_the_axes_meet_the_rim()
    {
        var notches = PieceOutlines.AxisNotches(Angle3, new(0.1, 0.15));
        Assert.Equal([new(0.4, 0.15), new(0.1, 0.4), new(0, 0.15), new(0.1, 0)], notches.Select(notch => new Point2(Math.Round(notch.At.X, 12), Math.Round(notch.At.Y, 12))));
        Assert.Equal([0, 90, 180, 270], notches.Select(notch => notch.Degrees));

        // Each wedge is as wide at the rim as it is deep.
        Digits.Close(0.12 - (4 * 0.006 * 0.006 / 2), PieceOutlines.WithNotches(Angle3, notches, M(0.006)).SquareMetres);
        Assert.Throws<ArgumentException>(() => PieceOutlines.AxisNotches(Angle3, new(0.3, 0.3)));
    }

    [Fact]
    public void The_label_lies_where_there_is_most_room()
    {
        LabelPlace square = LabelPlace.In(Square);
        Assert.Equal(0.2, square.Clearance.Meters, 0.004);
        Assert.Equal(0.2, square.At.X, 0.005);

        // In the L the largest circle touches both outer sides and the inner corner: r sqrt 2 + r = 0.2 sqrt 2 ... r = 0.2 (2 - sqrt 2).
        LabelPlace angle = LabelPlace.In(Angle3);
        Assert.Equal(0.2 * (2 - Math.Sqrt(2)), angle.Clearance.Meters, 0.004);
        (Point2 tail, Point2 head) = PieceOutlines.WarpArrow(Angle3, Angle.FromDegrees(90));
        Assert.True(head.Y > tail.Y);
        Assert.Equal(tail.X, head.X, 1e-9);
        Assert.True(OutlineShapes.Contains(Angle3, tail) && OutlineShapes.Contains(Angle3, head));
    }

    [Fact]
    public void A_patch_has_the_sizes_asked_for()
    {
        Outline patch = PieceOutlines.Patch(M(0.3), M(0.2), M(0.05));
        Digits.Close(0.3, patch.Along);
        Digits.Close(0.2, patch.Across);
        Digits.Close(0.06 - ((4 - Math.PI) * 0.0025), patch.SquareMetres, 0.001);
        Digits.Close(Math.PI / 4 * 0.04, PieceOutlines.Patch(M(0.2), M(0.2), M(0.1)).SquareMetres, 0.002);
        Assert.Equal(4, PieceOutlines.Patch(M(0.3), M(0.2), M(0)).Points.Length);
        Assert.Throws<ArgumentOutOfRangeException>(() => PieceOutlines.Patch(M(0.3), M(0.2), M(0.11)));
    }

    [Fact]
    public void A_simpler_outline_stays_within_the_tolerance()
    {
        Outline circle = PieceOutlines.Patch(M(0.2), M(0.2), M(0.1));
        Outline simple = PieceOutlines.Simplified(circle, M(0.001));
        Assert.True(simple.Points.Length <= circle.Points.Length / 2);
        foreach (Point2 at in circle.Points)
        {
            Assert.True((OutlineShapes.NearestOnRim(simple, at) - at).Norm <= 0.001 + 1e-12);
        }
    }
}
