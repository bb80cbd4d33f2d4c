using UnitsNet;

namespace Recipe.Engineering.Tests.Shapes;

public class MeshRegionsTests
{
    private static readonly TriangleMesh Box = SurfaceMeshes.OpenBox(Length.FromMeters(0.3), Length.FromMeters(0.2), Length.FromMeters(0.1));

    [Fact]
    public void A_plane_and_a_box_cut_to_size()
    {
        // Below half the height: the floor and half of the walls.
        Digits.Close(0.06 + (0.05 * 1.0), Area(new HalfSpaceRegion(new Point3(9, 9, -0.05), new Point3(0, 0, -3))));
        Digits.Close(0.05 * 1.0, Area(new HalfSpaceRegion(new Point3(0, 0, -0.05), new Point3(0, 0, 1))));

        // A piece of the floor alone.
        TriangleMesh piece = Between(Between(Box, new Point3(1, 0, 0), -0.05, 0.05), new Point3(0, 1, 0), -0.02, 0.02);
        Digits.Close(0.1 * 0.04, MeshMeasures.Of(piece).Area.SquareMeters);
        Assert.Empty(Between(Box, new Point3(1, 0, 0), 5, 6).Triangles);
    }

    [Fact]
    public void A_zone_of_a_sphere_has_the_area_of_its_height()
    {
        // Archimedes: 2 pi R h between two planes.
        TriangleMesh bowl = SurfaceMeshes.SphericalCap(Length.FromMeters(1), Length.FromMeters(0.5), Length.FromMillimeters(0.05));
        MeshMeasures measures = MeshMeasures.Of(Between(bowl, new Point3(0, 0, 1), -0.3, -0.1));
        Digits.Close(2 * Math.PI * 0.5 * 0.2, measures.Area.SquareMeters, 1e-3);
        Assert.Equal(2, measures.Boundaries.Length);
        Assert.Equal(1, measures.Parts);
        Digits.Close(2 * Math.PI * Math.Sqrt(0.25 - 0.01), measures.Boundaries[0].Length.Meters, 1e-3);
    }

    [Fact]
    public void The_two_sides_of_a_cut_make_up_the_whole()
    {
        CsCheck.Check.Sample(
            CsCheck.Gen.Select(CsCheck.Gen.Double[-0.15, 0.15], CsCheck.Gen.Double[-1, 1], CsCheck.Gen.Double[-1, 1]),
            (at, x, y) =>
            {
                Point3 place = new(at, at / 2, -0.05);
                Point3 normal = new(x, y, 0.5);
                Digits.Close(0.16, Area(new HalfSpaceRegion(place, normal)) + Area(new HalfSpaceRegion(place, normal * -1)));
            },
            iter: 500);
    }

    [Fact]
    public void A_patch_ends_at_sharp_edges()
    {
        Digits.Close(0.06, Area(new PatchRegion(new Point3(0.01, 0.02, -0.09), Angle.FromDegrees(30))));
        Digits.Close(0.03, Area(new PatchRegion(new Point3(0.01, 0.5, -0.02), Angle.FromDegrees(30))));
        Digits.Close(0.16, Area(new PatchRegion(new Point3(0, 0, 0), Angle.FromDegrees(91))));
        Assert.Equal(4, MeshRegions.Select(Box, new PatchRegion(new Point3(0, 0, -1), Angle.FromDegrees(30))).Vertices.Length);
    }

    [Fact]
    public void A_group_is_taken_by_name_and_survives_a_cut()
    {
        TriangleMesh named = new(Box.Vertices, Box.Triangles, [new("floor", 0, 2), new("walls", 2, 8)]);
        Digits.Close(0.06, MeshMeasures.Of(MeshRegions.Select(named, new GroupRegion("floor"))).Area.SquareMeters);
        Assert.Empty(MeshRegions.Select(named, new GroupRegion("lid")).Triangles);
        TriangleMesh cut = MeshRegions.Select(named, new HalfSpaceRegion(new Point3(0, 0, -0.05), new Point3(0, 0, -1)));
        Digits.Close(0.05, MeshMeasures.Of(MeshRegions.Select(cut, new GroupRegion("walls"))).Area.SquareMeters);
    }

    [Fact]
    public void Regions_without_sense_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Area(new HalfSpaceRegion(default, default)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Area(new PatchRegion(default, Angle.FromDegrees(0))));
        Assert.Throws<ArgumentException>(() => Area(new PatchRegion(new Point3(double.NaN, 0, 0), Angle.FromDegrees(20))));
    }

    private static TriangleMesh Between(TriangleMesh mesh, Point3 axis, double from, double to) =>
        MeshRegions.Select(MeshRegions.Select(mesh, new HalfSpaceRegion(axis * from, axis)), new HalfSpaceRegion(axis * to, axis * -1));

    private static double Area(MeshRegion region) => MeshRegions.Select(Box, region) is { Triangles.IsEmpty: false } mesh ? MeshMeasures.Of(mesh).Area.SquareMeters : 0;
}
