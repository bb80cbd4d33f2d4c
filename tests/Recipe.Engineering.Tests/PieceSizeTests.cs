using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class PieceSizeTests
{
    private static Length Mm(double value) => Length.FromMillimeters(value);

    private static FlatPiece Plain(Length length, Length width) =>
        PieceSize.ForPly(Surfaces.FlatRectangle(length, width), Length.Zero, Length.Zero);

    [Fact]
    public void Trim_goes_outside_every_edge()
    {
        FlatPiece piece = PieceSize.ForPly(Surfaces.FlatRectangle(Mm(600), Mm(250)), Mm(15), Mm(20));
        Digits.Close(630, piece.Length.Millimeters);
        Digits.Close(280, piece.Width.Millimeters);
        Digits.Close(630 * 280, piece.Area.SquareMillimeters);
    }

    // An open box of 360 x 120 x 20 mm laid flat with 15 mm of trim on each wall: 430 x 190 mm less four squares of 35 mm.
    [Fact]
    public void A_box_is_cut_without_its_corners()
    {
        FlatPiece piece = PieceSize.ForPly(Surfaces.OpenBox(Mm(360), Mm(120), Mm(20)), Mm(15), Mm(20));
        Digits.Close(430, piece.Length.Millimeters);
        Digits.Close(190, piece.Width.Millimeters);
        Digits.Close((430 * 190) - (4 * 35 * 35), piece.Area.SquareMillimeters);
    }

    [Fact]
    public void A_tube_is_trimmed_at_its_ends_and_overlapped_round_its_girth()
    {
        FlatPiece piece = PieceSize.ForPly(Surfaces.Cylinder(Mm(100), Mm(700)), Mm(15), Mm(20));
        Digits.Close(730, piece.Length.Millimeters);
        Digits.Close((Math.PI * 100) + 20, piece.Width.Millimeters);
        Digits.Close(730 * ((Math.PI * 100) + 20), piece.Area.SquareMillimeters);
    }

    [Fact]
    public void A_cones_overlap_runs_down_its_slant()
    {
        // r 300, height 400, slant 500 mm; trimmed by 10 along the slant, overlapped by 20.
        FlatPiece piece = PieceSize.ForPly(Surfaces.Frustum(Mm(600), Mm(200), Mm(375)), Mm(10), Mm(20));
        double slant = double.Hypot(200, 375);
        Digits.Close((Math.PI * 400 * (slant + 20)) + (20 * (slant + 20)), piece.Area.SquareMillimeters);
        Assert.True(piece.Length * piece.Width > piece.Area);
    }

    [Fact]
    public void A_turned_rectangle_takes_its_projections_on_the_roll()
    {
        FlatPiece piece = Plain(Mm(600), Mm(250));
        RollFootprint bias = PieceSize.OnRoll(piece, Angle.FromDegrees(45));
        Digits.Close(850 / Math.Sqrt(2), bias.Across.Millimeters);
        Digits.Close(850 / Math.Sqrt(2), bias.Along.Millimeters);

        RollFootprint across = PieceSize.OnRoll(piece, Angle.FromDegrees(90));
        Digits.Close(600, across.Across.Millimeters);
        Digits.Close(250, across.Along.Millimeters);
    }

    [Fact]
    public void The_rectangle_of_a_turned_piece_agrees_with_its_corners()
    {
        Gen.Select(Gen.Double[10, 3000], Gen.Double[10, 3000], Gen.Double[-360, 360]).Sample(
            (length, width, degrees) =>
            {
                RollFootprint roll = PieceSize.OnRoll(
                    Plain(Mm(length), Mm(width)), Angle.FromDegrees(degrees));
                (double sine, double cosine) = Math.SinCos(Math.PI * degrees / 180);
                double[] xs = [0, length * cosine, -width * sine, (length * cosine) - (width * sine)];
                double[] ys = [0, length * sine, width * cosine, (length * sine) + (width * cosine)];
                Digits.Close(xs.Max() - xs.Min(), roll.Along.Millimeters);
                Digits.Close(ys.Max() - ys.Min(), roll.Across.Millimeters);
            },
            iter: 1000);
    }

    [Fact]
    public void A_round_piece_takes_the_same_room_at_every_angle()
    {
        FlatPiece disc = PieceSize.ForPly(Surfaces.FlatDisc(Mm(300)), Mm(15), Length.Zero);
        Assert.True(disc.IsOval);
        foreach (double degrees in new double[] { 0, 30, 45, -60, 90 })
        {
            Digits.Close(330, PieceSize.OnRoll(disc, Angle.FromDegrees(degrees)).Across.Millimeters);
        }
    }

    [Fact]
    public void Strips_make_up_the_width_with_an_overlap_at_each_joint()
    {
        FlatPiece piece = Plain(Mm(2000), Mm(2400));
        StripPlan plan = PieceSize.Strips(piece, Angle.Zero, Mm(1000), Mm(20));

        // Two strips cover at most 1980 mm; three cover 2400 mm at (2400 + 40)/3 each.
        Assert.Equal(3, plan.Strips);
        Digits.Close(2440.0 / 3, plan.StripWidth.Millimeters);
        Digits.Close(6000, plan.RollLength.Millimeters);
        Digits.Close(2 * 20 * 2000, plan.OverlapArea.SquareMillimeters);
        Assert.Equal(1, PieceSize.Strips(piece, Angle.Zero, Mm(2400), Mm(20)).Strips);
        Assert.Equal(2, PieceSize.Strips(piece, Angle.Zero, Mm(1200), Length.Zero).Strips);
    }

    [Fact]
    public void Strips_always_fit_and_one_fewer_never_would()
    {
        Gen.Select(Gen.Double[50, 5000], Gen.Double[0, 40], Gen.Double[100, 1500], Gen.Double[0, 90]).Sample(
            (width, overlap, roll, degrees) =>
            {
                FlatPiece piece = Plain(Mm(800), Mm(width));
                Angle angle = Angle.FromDegrees(degrees);
                StripPlan plan = PieceSize.Strips(piece, angle, Mm(roll), Mm(overlap));
                double across = PieceSize.OnRoll(piece, angle).Across.Millimeters;
                double covered = (plan.Strips * plan.StripWidth.Millimeters) - ((plan.Strips - 1) * overlap);
                double fewer = ((plan.Strips - 1) * roll) - ((plan.Strips - 2) * overlap);
                return plan.StripWidth.Millimeters <= roll * (1 + 1e-8)
                    && Digits.IsClose(across, covered)
                    && (plan.Strips == 1 || fewer < across * (1 + 1e-8));
            },
            iter: 1000);
    }

    [Fact]
    public void Impossible_allowances_are_refused()
    {
        FlatPiece piece = Plain(Mm(600), Mm(250));
        Assert.Throws<ArgumentOutOfRangeException>(() => PieceSize.Strips(piece, Angle.Zero, Mm(20), Mm(20)));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => PieceSize.ForPly(Surfaces.FlatDisc(Mm(100)), Mm(-1), Length.Zero));
    }
}
