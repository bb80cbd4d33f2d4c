using UnitsNet;

namespace Recipe.Engineering.Tests.Shapes;

/// <summary>Measures that have a closed form.</summary>
public class MeshMeasuresTests
{
    private static readonly Point3 Up = new(0, 0, 1);

    [Fact]
    public void A_sphere_has_its_volume_area_and_curvature()
    {
        const double r = 0.25;
        MeshMeasures sphere = MeshMeasures.Of(SurfaceMeshes.OtherSide(Sphere(r, 200)));
        Assert.True(sphere.IsClosed);
        Digits.Close(4.0 / 3 * Math.PI * r * r * r, sphere.Volume!.Value.CubicMeters, 1e-3);
        Digits.Close(4 * Math.PI * r * r, sphere.Area.SquareMeters, 1e-3);
        Digits.Close(1 / r, sphere.Bends.GreatestCurvature.InverseMeters, 0.02);
        Assert.Null(sphere.SmallestInsideRadius);
        Digits.Close(r, sphere.Bends.SmallestOutsideRadius!.Value.Meters, 0.02);

        // Gauss and Bonnet: 4 pi in all, whatever the triangles are.
        Digits.Close(4 * Math.PI, sphere.Bends.AngleTakenUp.Radians, 1e-6);
        Assert.True(sphere.IsDoublyCurved);

        MeshMeasures inside = MeshMeasures.Of(Sphere(r, 200));
        Digits.Close(-sphere.Volume.Value.CubicMeters, inside.Volume!.Value.CubicMeters);
        Digits.Close(r, inside.SmallestInsideRadius!.Value.Meters, 0.02);
    }

    // The inside of a part of a cylinder that lies along X, its middle line lowest.
    private static TriangleMesh Trough(double radius, double length, double degrees)
    {
        const int parts = 60;
        Point3[] points =
        [
            .. Enumerable.Range(0, 2 * (parts + 1)).Select(k =>
            {
                (double sine, double cosine) = Math.SinCos(degrees * Math.PI / 180 * (((k % (parts + 1)) / (double)parts) - 0.5));
                return new Point3(k > parts ? length : 0, radius * sine, -radius * cosine);
            }),
        ];
        return new TriangleMesh(
            [.. points],
            [
                .. Enumerable.Range(0, parts).SelectMany(k => new MeshTriangle[]
                {
                    new(k, k + parts + 1, k + parts + 2), new(k, k + parts + 2, k + 1),
                }),
            ]);
    }

    [Theory]
    [InlineData("cylinder", 0.2)]
    [InlineData("trough", 0.2)]
    public void A_cylinder_bends_one_way(string shape, double radius)
    {
        Length tolerance = Length.FromMillimeters(0.05);
        TriangleMesh mesh = shape == "cylinder"
            ? SurfaceMeshes.Cylinder(Length.FromMeters(0.4), Length.FromMeters(0.3), tolerance)
            : Trough(0.2, 0.3, 150);
        MeshMeasures measures = MeshMeasures.Of(mesh, Up);
        Assert.Equal(Curvature.Single, measures.Bends.Kind);
        Digits.Close(radius, measures.SmallestInsideRadius!.Value.Meters, 1e-3);
        Assert.Equal(shape == "cylinder" ? 2 : 1, measures.Boundaries.Length);

        // The wall of the tube is along the pull; the trough of 150 degrees leans out by 15 at its edge, less half a facet.
        Assert.InRange(measures.Draft!.Smallest.Degrees, shape == "cylinder" ? -1e-6 : 15, shape == "cylinder" ? 1e-6 : 17);
    }

    [Fact]
    public void The_draft_of_a_frustum_is_the_slope_of_its_wall()
    {
        TriangleMesh mesh = SurfaceMeshes.Frustum(Length.FromMeters(0.6), Length.FromMeters(0.2), Length.FromMeters(0.4), Length.FromMillimeters(0.01));
        MeshMeasures measures = MeshMeasures.Of(mesh, Up * 7);

        // The wall leans 0.2 outwards on 0.4 upwards.
        Digits.Close(Math.Atan(0.5) * 180 / Math.PI, measures.Draft!.Smallest.Degrees, 1e-4);
        Assert.Equal(0, measures.Draft.Undercut.SquareMeters);
        Digits.Close(0.4, measures.Rim!.Depth.Meters);
        Digits.Close(0.6, measures.Rim.Width.Meters, 1e-3);
        Assert.Equal(Curvature.Single, measures.Bends.Kind);

        // A cone to its tip is bent one way too, though its tip takes up angle.
        Assert.Equal(Curvature.Single, MeshMeasures.Of(SurfaceMeshes.Frustum(Length.FromMeters(0.6), Length.Zero, Length.FromMeters(0.4), Length.FromMillimeters(0.1))).Bends.Kind);

        // Pulled the other way all of it looks away.
        Digits.Close(measures.Area.SquareMeters, MeshMeasures.Of(mesh, Up * -1).Draft!.FacingAway.SquareMeters);
    }

    [Fact]
    public void A_bowl_beyond_its_equator_is_undercut_by_the_zone_above()
    {
        // R 0.5, depth 0.8: the zone from the equator to the rim is 0.3 high, 2 pi R 0.3. Under it lies what is farther from the axis
        // than the rim's radius 0.4 below the equator: a zone of the same height by symmetry, hidden by the zone above.
        TriangleMesh bowl = SurfaceMeshes.SphericalCap(Length.FromMeters(0.8), Length.FromMeters(0.8), Length.FromMillimeters(0.05));
        MeshDraft draft = MeshMeasures.Of(bowl, Up).Draft!;
        Digits.Close(2 * Math.PI * 0.5 * 0.3, draft.FacingAway.SquareMeters, 0.03);
        Digits.Close(2 * Math.PI * 0.5 * 0.3, draft.Shadowed!.Value.SquareMeters, 0.03);
        Digits.Close(-Math.Asin(0.6) * 180 / Math.PI, draft.Smallest.Degrees, 0.03);
        Digits.Close(2 * 2 * Math.PI * 0.5 * 0.3, draft.Undercut.SquareMeters, 0.03);
    }

    [Theory]
    [InlineData(0.010, 12)]
    [InlineData(0.003, 6)]
    public void The_fillet_of_a_pan_is_its_smallest_inside_radius(double fillet, int faces)
    {
        List<Point2> profile = [default, new(0.2 - fillet, 0)];
        for (int i = 1; i <= faces; i++)
        {
            (double sine, double cosine) = Math.SinCos(Math.PI / 2 * i / faces);
            profile.Add(new Point2(0.2 - fillet + (fillet * sine), fillet * (1 - cosine)));
        }

        profile.Add(new Point2(0.2, 0.1));
        TriangleMesh pan = SurfaceMeshes.Revolved([.. profile], Angle.FromDegrees(360), Length.FromMillimeters(0.01));
        MeshMeasures measures = MeshMeasures.Of(pan);
        Digits.Close(fillet, measures.SmallestInsideRadius!.Value.Meters, 0.03);
        Assert.InRange(measures.Bends.SmallestInsideAt!.Value.Z, 0, fillet);
        Assert.Equal(0, measures.Bends.SharpInside.Meters);

        // From the other side the same bend stands out.
        MeshMeasures plug = MeshMeasures.Of(SurfaceMeshes.OtherSide(pan));
        Assert.Null(plug.SmallestInsideRadius);
        Digits.Close(fillet, plug.Bends.SmallestOutsideRadius!.Value.Meters, 0.03);

        // Without the fillet the corner is sharp all round.
        MeshMeasures sharp = MeshMeasures.Of(SurfaceMeshes.Revolved([default, new(0.2, 0), new(0.2, 0.1)], Angle.FromDegrees(360), Length.FromMillimeters(0.01)));
        Assert.Equal(0, sharp.SmallestInsideRadius!.Value.Meters);
        Digits.Close(2 * Math.PI * 0.2, sharp.Bends.SharpInside.Meters, 1e-3);
    }

    [Fact]
    public void Flat_is_flat_and_a_shallow_dish_is_not()
    {
        MeshMeasures disc = MeshMeasures.Of(SurfaceMeshes.Disc(Length.FromMeters(0.5), Length.FromMillimeters(0.1)));
        Assert.True(disc.IsFlat);
        Assert.Null(disc.SmallestInsideRadius);
        Digits.Close(Math.PI * 0.5, disc.Boundaries.Single().Length.Meters, 1e-3);
        Assert.True(MeshMeasures.Of(SurfaceMeshes.SphericalCap(Length.FromMeters(0.5), Length.FromMeters(0.02), Length.FromMillimeters(0.1))).IsDoublyCurved);
    }

    [Fact]
    public void A_measure_of_nothing_or_along_nothing_is_refused()
    {
        Assert.Throws<ArgumentException>(() => MeshMeasures.Of(new TriangleMesh([], [])));
        Assert.Throws<ArgumentException>(() => MeshMeasures.Of(Sphere(1, 10), new Point3(0, 0, 0)));
        Assert.Throws<ArgumentException>(() => MeshMeasures.Of(Sphere(1, 10), new Point3(double.NaN, 0, 0)));
    }

    private static TriangleMesh Sphere(double radius, int rings) => SurfaceMeshes.Revolved(
        [
            .. Enumerable.Range(0, rings + 1).Select(i => i == 0 ? new Point2(0, -radius) : i == rings ? new Point2(0, radius)
                : new Point2(radius * Math.Sin(Math.PI * i / rings), -radius * Math.Cos(Math.PI * i / rings))),
        ],
        Angle.FromDegrees(360),
        Length.FromMeters(radius * 1e-4));
}
