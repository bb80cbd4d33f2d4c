using UnitsNet;

namespace Recipe.Engineering.Tests;

public class DartTests
{
    private static readonly DrapeNet Hemisphere =
        Draping.Over(TestMeshes.Cap(1, Math.PI / 2, 24), new(0, 0, 1), new(1, 0, 0), Length.FromMeters(0.05));

    [Fact]
    public void A_hemisphere_locks_on_its_four_diagonals()
    {
        DartAdvice advice = Hemisphere.Darts(Angle.FromDegrees(40));
        Assert.Equal([-135.0, -45, 45, 135], advice.Darts.Select(dart => Math.Round(dart.Direction.Degrees / 15) * 15).Order());
        foreach (Dart dart in advice.Darts)
        {
            // From the rim, where z = 0, to where the shear on the diagonal passes the limit: about 76 degrees from the pole.
            Assert.Equal(0, Assert.NotNull(dart.MouthPlace).Z, 0.01);
            Point3 tip = Assert.NotNull(dart.TipPlace);
            Assert.InRange(Math.Acos(tip.Z) * 180 / Math.PI, 70, 82);
            Assert.Equal(Math.Abs(dart.Tip.X), Math.Abs(dart.Tip.Y), 0.06);
            Digits.Close((dart.Mouth - dart.Tip).Norm, dart.Depth.Meters);
        }

        // The darts take the shear under what it was.
        Assert.True(Assert.NotNull(advice.RemainingShear) < Hemisphere.GreatestShear - Angle.FromDegrees(5));
        Assert.Equal(advice.RemainingShear <= Angle.FromDegrees(40), advice.StaysWithin);
    }

    [Fact]
    public void The_share_beyond_an_angle_falls_with_the_angle()
    {
        ShearShare low = Hemisphere.ShearBeyond(Angle.FromDegrees(20));
        ShearShare high = Hemisphere.ShearBeyond(Angle.FromDegrees(40));
        Assert.InRange(low.Share.DecimalFractions, high.Share.DecimalFractions + 0.05, 0.9);
        Assert.All(high.Cells, cell => Assert.True(Math.Abs(cell.Shear) > 40 * Math.PI / 180));
        Assert.Empty(Hemisphere.ShearBeyond(Angle.FromDegrees(89)).Cells);
        Digits.Close(1, Hemisphere.ShearBeyond(Angle.Zero).Share.DecimalFractions, 1e-3);
    }

    [Fact]
    public void What_does_not_lock_needs_no_dart()
    {
        DartAdvice advice = Hemisphere.Darts(Angle.FromDegrees(60));
        Assert.Empty(advice.Darts);
        Assert.Null(advice.RemainingShear);
        Assert.True(advice.StaysWithin);
        Assert.Throws<ArgumentOutOfRangeException>(() => Hemisphere.Darts(Angle.FromDegrees(91)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Hemisphere.ShearBeyond(Angle.FromDegrees(-1)));
    }

    [Fact]
    public void Cloth_and_surface_correspond()
    {
        Point3 place = Assert.NotNull(Hemisphere.PlaceOf(new Point2(0.33, -0.41)));
        Point2 flat = Assert.NotNull(Hemisphere.FlatOf(place));
        Assert.Equal(0.33, flat.X, 1e-6);
        Assert.Equal(-0.41, flat.Y, 1e-6);
        Assert.Null(Hemisphere.PlaceOf(new Point2(50, 0)));
        Assert.Null(Hemisphere.FlatOf(new Point3(0, 0, -5)));
    }
}
