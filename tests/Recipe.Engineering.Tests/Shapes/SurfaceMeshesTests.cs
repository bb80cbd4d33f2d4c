using UnitsNet;

namespace Recipe.Engineering.Tests.Shapes;

/// <summary>Areas of meshes against closed forms; that of the half ellipsoid is by quadrature, printed to 0.1 mm2.</summary>
public class SurfaceMeshesTests
{
    public static TheoryData<string, double> Areas => new()
    {
        { "cap", 2 * Math.PI * 0.5 * 0.2 },
        { "hemisphere", 2 * Math.PI * 0.25 },
        { "frustum", Math.PI * 0.4 * Math.Sqrt(0.04 + 0.16) },
        { "paraboloid", Math.PI / 6 * (Math.Pow(2, 1.5) - 1) },
        { "half ellipsoid", 0.2285021 },
        { "cylinder", Math.PI * 0.4 * 0.7 },
        { "disc", Math.PI * 0.04 },
    };

    [Theory]
    [MemberData(nameof(Areas))]
    public void Areas_converge_with_the_square_of_the_spacing(string shape, double exact)
    {
        // Spacing goes with the root of the tolerance: a quarter of it halves the spacing and leaves a quarter of the error.
        double Error(double tolerance) => (exact - MeshMeasures.Of(Make(shape, M(tolerance))).Area.SquareMeters) / exact;
        (double coarse, double fine, double finest) = (Error(4e-4), Error(1e-4), Error(1e-5));
        Assert.InRange(coarse, 0, 5e-3);
        Assert.InRange(coarse / fine, 3, 5.5);
        Assert.InRange(finest, 0, 1.5e-4);
    }

    [Theory]
    [MemberData(nameof(Areas))]
    public void The_cloth_side_looks_up_or_inwards_and_the_rim_is_at_the_top(string shape, double exact)
    {
        TriangleMesh mesh = Make(shape, M(1e-4));
        MeshMeasures measures = MeshMeasures.Of(mesh, new Point3(0, 0, 1));
        Assert.Equal(0, measures.Most.Z, 12);
        Assert.Equal(0, measures.Draft!.FacingAway.SquareMeters);
        Assert.Equal(0, measures.Draft.Shadowed!.Value.SquareMeters);
        Assert.Equal(1, measures.Parts);
        Assert.Equal(0, measures.OpposedEdges);
        Assert.True(measures.Area.SquareMeters <= exact * (1 + 1e-6));
    }

    [Fact]
    public void Plane_faces_are_exact()
    {
        Digits.Close(0.06, MeshMeasures.Of(SurfaceMeshes.FlatRectangle(M(0.3), M(0.2))).Area.SquareMeters);
        MeshMeasures box = MeshMeasures.Of(SurfaceMeshes.OpenBox(M(0.3), M(0.2), M(0.1)), new Point3(0, 0, 1));
        Digits.Close(0.06 + 0.1, box.Area.SquareMeters);
        Digits.Close(1, box.Rim!.Normal.Z);
        Digits.Close(0.1, box.Rim.Depth.Meters);
        Digits.Close(0.2, box.Rim.Width.Meters);
        Digits.Close(1.0, box.Boundaries.Single().Length.Meters);
        Assert.Equal(0, box.SmallestInsideRadius!.Value.Meters);
        Assert.Equal(Curvature.Faceted, box.Bends.Kind);
        Assert.Equal(0, box.Draft!.Smallest.Degrees, 9);
    }

    [Fact]
    public void A_section_swept_round_a_mitre_is_exact()
    {
        // A channel 0.1 wide with walls 0.05 high goes 1 along X and then 1 along Y: its mitred faces are trapezia, and the inside and
        // the outside of the bend make up for each other, so each face has the length of the path.
        Point2[] section = [new(-0.05, 0.05), new(-0.05, 0), new(0.05, 0), new(0.05, 0.05)];
        Point3[] path = [new(0, 0, 0), new(1, 0, 0), new(1, 1, 0)];
        MeshMeasures swept = MeshMeasures.Of(SurfaceMeshes.Swept([.. section], [.. path]), new Point3(0, 0, 1));
        Digits.Close(2 * 0.2, swept.Area.SquareMeters);
        Assert.Equal(0, swept.Draft!.FacingAway.SquareMeters);
        Digits.Close(1.05, swept.Most.X);
        Assert.Throws<ArgumentException>(() => SurfaceMeshes.Swept([.. section], [new(0, 0, 0), new(0.04, 0, 0), new(0.04, 0.04, 0)]));
        Assert.Throws<ArgumentException>(() => SurfaceMeshes.Swept([.. section], [new(0, 0, 0), new(1, 0, 0), new(0, 0, 0)]));
    }

    [Fact]
    public void Part_of_a_turn_is_part_of_the_area()
    {
        Point2[] profile = [new(0.1, -0.4), new(0.3, 0)];
        MeshMeasures third = MeshMeasures.Of(SurfaceMeshes.Revolved([.. profile], Angle.FromDegrees(120), M(1e-6)));
        Digits.Close(Math.PI * 0.4 * Math.Sqrt(0.2) / 3, third.Area.SquareMeters, 1e-4);
    }

    [Fact]
    public void Sizes_and_tolerances_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => SurfaceMeshes.SphericalCap(M(1), M(0), M(1e-3)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SurfaceMeshes.SphericalCap(M(1), M(0.5), M(1e-9)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SurfaceMeshes.Disc(M(1), M(-1)));
        Assert.Throws<ArgumentException>(() => SurfaceMeshes.Revolved([new Point2(1, 0)], Angle.FromDegrees(360), M(1e-3)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SurfaceMeshes.Revolved([new Point2(1, 0), new Point2(-1, 0)], Angle.FromDegrees(360), M(1e-3)));
        Assert.Throws<ArgumentOutOfRangeException>(() => SurfaceMeshes.Revolved([new Point2(1, 0), new Point2(2, 0)], Angle.FromDegrees(361), M(1e-3)));
    }

    private static Length M(double metres) => Length.FromMeters(metres);

    private static TriangleMesh Make(string shape, Length tolerance) => shape switch
    {
        "cap" => SurfaceMeshes.SphericalCap(M(0.8), M(0.2), tolerance),
        "hemisphere" => SurfaceMeshes.SphericalCap(M(1), M(0.5), tolerance),
        "frustum" => SurfaceMeshes.Frustum(M(0.6), M(0.2), M(0.4), tolerance),
        "paraboloid" => SurfaceMeshes.Paraboloid(M(1), M(0.25), tolerance),
        "half ellipsoid" => SurfaceMeshes.HalfEllipsoid(M(0.6), M(0.4), M(0.08), tolerance),
        "cylinder" => SurfaceMeshes.Cylinder(M(0.4), M(0.7), tolerance),
        "disc" => SurfaceMeshes.Disc(M(0.4), tolerance),
        _ => throw new ArgumentException(shape, nameof(shape)),
    };
}
