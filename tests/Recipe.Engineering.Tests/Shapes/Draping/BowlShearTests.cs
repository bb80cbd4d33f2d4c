using UnitsNet;

namespace Recipe.Engineering.Tests.Shapes;

public class BowlShearTests
{
    // A net on the same bowl never shears more, and in a bowl that is gentle not much less: half of the bound lies along the diagonal.
    [Theory]
    [InlineData(0.3, 0.02)]
    [InlineData(0.3, 0.04)]
    [InlineData(0.3, 0.07)]
    public void A_net_stays_within_the_bound(double diameter, double depth)
    {
        foreach (bool isSphere in (bool[])[true, false])
        {
            (Length rim, Length deep) = (Length.FromMeters(diameter), Length.FromMeters(depth));
            Angle bound = isSphere ? BowlShear.OfSphericalCap(rim, deep) : BowlShear.OfParaboloid(rim, deep);
            TriangleMesh mesh = isSphere
                ? SurfaceMeshes.SphericalCap(rim, deep, Length.FromMillimeters(0.05))
                : SurfaceMeshes.Paraboloid(rim, deep, Length.FromMillimeters(0.05));
            DrapeNet net = Draping.Over(mesh, new Point3(0, 0, -depth), new Point3(1, 0, 0), Length.FromMeters(diameter / 60));
            Assert.InRange(net.GreatestShear.Degrees, bound.Degrees * 0.3, bound.Degrees * 1.02);
        }
    }

    // A hemisphere's normals fill half the unit sphere: a quarter of 2 pi.
    [Fact]
    public void A_hemisphere_has_a_rim_that_stands_upright() =>
        Digits.Close(BowlShear.OfUprightRim.Radians, BowlShear.OfSphericalCap(Length.FromMeters(1), Length.FromMeters(0.5)).Radians);

    [Fact]
    public void A_bowl_has_a_size() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => BowlShear.OfSphericalCap(Length.Zero, Length.FromMeters(0.1)));
}
