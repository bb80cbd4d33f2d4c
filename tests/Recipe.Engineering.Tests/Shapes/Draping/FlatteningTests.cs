using UnitsNet;

namespace Recipe.Engineering.Tests;

public class FlatteningTests
{
    [Fact]
    public void An_arc_of_a_cylinder_is_its_rectangle()
    {
        FlatPattern flat = Flattening.Of(TestMeshes.CylinderArc(0.5, 1, 2, 80, 10));
        Exact(flat);
        Outline outline = Assert.Single(flat.Outlines);

        // Facets are chords: 2 R n sin(arc / 2 n); the arc itself is 1 to (arc / n)^2 / 24.
        Digits.Close(2 * 0.5 * 80 * Math.Sin(1.0 / 80), Math.Min(outline.Across, outline.Along));
        Digits.Close(1, outline.SquareMetres, 1e-4);
    }

    [Fact]
    public void A_tube_is_cut_along_its_shortest_seam()
    {
        var tube = TestMeshes.Grid(200, 8, (u, v) => new(Math.Cos(2 * Math.PI * u), Math.Sin(2 * Math.PI * u), v), closed: true);
        FlatPattern flat = Flattening.Of(tube);
        Exact(flat);
        var seam = Assert.Single(Assert.Single(flat.Parts).Seams);
        Digits.Close(1, seam.Zip(seam.Skip(1), (a, b) => (b - a).Norm).Sum());
        Digits.Close(2 * Math.PI, flat.Outlines[0].Along, 1e-4);
        Digits.Close(1, flat.Outlines[0].Across);
    }

    [Fact]
    public void A_frustum_is_its_ring_sector()
    {
        // r1 0.3, r2 0.1, height 0.4: lateral area pi (r1 + r2) s = 0.5619852.
        var frustum = TestMeshes.Grid(400, 6, (u, v) => Round(u, 0.3 - (0.2 * v), 0.4 * v), closed: true);
        FlatPattern flat = Flattening.Of(frustum);
        Exact(flat);
        Assert.Equal(0.5619852, flat.FlatArea.SquareMeters, 0.5619852 * 1e-4);

        // All corners of the outer rim lie s r1 / (r1 - r2) from the apex of the sector, but for the facets.
        double slant = Math.Sqrt(0.04 + 0.16);
        var part = flat.Parts[0];
        Assert.Equal(0.5619852, part.Outline.SquareMetres, 0.5619852 * 1e-4);
        double reach = slant * 0.3 / 0.2;
        double half = Math.PI * 0.3 / reach;
        Assert.Equal(2 * reach * Math.Sin(Math.Min(half, Math.PI / 2)), Math.Max(part.Outline.Along, part.Outline.Across), 0.002);
    }

    [Fact]
    public void A_cone_is_cut_from_its_tip()
    {
        List<Point3> points = [new(0, 0, 0.4)];
        points.AddRange(Enumerable.Range(0, 360).Select(k => Round(k / 360.0, 0.3, 0)));
        var cone = new TriangleMesh([.. points], [.. Enumerable.Range(0, 360).Select(k => new MeshTriangle(0, 1 + k, 1 + ((k + 1) % 360)))]);
        FlatPattern flat = Flattening.Of(cone);
        Exact(flat);
        Digits.Close(Math.PI * 0.3 * 0.5, flat.FlatArea.SquareMeters, 1e-4);
        var part = Assert.Single(flat.Parts);
        Digits.Close(0.5, part.Seams[0].Zip(part.Seams[0].Skip(1), (a, b) => (b - a).Norm).Sum());
        Point2 tip = part.Corners[part.Places.IndexOf(points[0])];
        foreach ((Point2 at, Point3 place) in part.Corners.Zip(part.Places))
        {
            Assert.Equal(place == points[0] ? 0 : 0.5, (at - tip).Norm, 1e-9);
        }
    }

    [Fact]
    public void An_open_box_unfolds_along_its_creases()
    {
        FlatPattern flat = Flattening.Of(OpenBox(1, 0.8, 0.25, 4));
        Exact(flat);
        Outline cross = Assert.Single(flat.Outlines);
        Digits.Close(0.8 + (2 * 0.25 * 1.8), cross.SquareMetres);
        Assert.Equal(12, cross.Points.Length);
        Assert.Equal(4, flat.Parts[0].Seams.Length);
        Digits.Close(1.5, cross.Along);
        Digits.Close(1.3, cross.Across);
    }

    [Fact]
    public void A_sheet_with_a_hole_is_left_whole()
    {
        var plane = TestMeshes.Plane(2, 1, 20);
        var mesh = new TriangleMesh(plane.Vertices, [.. plane.Triangles.Where(t => !new[] { t.A, t.B, t.C }.All(v => plane.Vertices[v].Norm < 0.25))]);
        FlatPattern flat = Flattening.Of(mesh);
        Exact(flat);
        Assert.Empty(flat.Parts[0].Seams);
        Assert.Single(flat.Parts[0].Holes);
        Digits.Close(2, flat.Outlines[0].SquareMetres);
    }

    [Theory]
    [InlineData(0.15)]
    [InlineData(0.3)]
    [InlineData(0.6)]
    public void A_cap_is_stretched_no_less_than_any_map_must_be(double angle)
    {
        // J. Milnor, A problem in cartography, American Mathematical Monthly 76 (1969) 1101: over a cap of this angle from its pole, the
        // greatest scale of any map is at least angle / sin(angle) times the least (from memory).
        FlatPattern flat = Flattening.Of(TestMeshes.Cap(1, angle, 10));
        double ratio = angle / Math.Sin(angle);
        double greatest = flat.GreatestEdgeChange.DecimalFractions;
        Assert.InRange(greatest, 0.9 * (ratio - 1) / (ratio + 1), 1.2 * (ratio - 1));
        Assert.InRange(flat.MeanEdgeChange.DecimalFractions, 0, greatest / 2);
        Assert.Equal(0, flat.FoldOvers);
        Assert.InRange(flat.AreaChange.DecimalFractions, -0.1 * (ratio - 1), 0.1 * (ratio - 1));

        // A cap of height h has the area 2 pi R h.
        Digits.Close(2 * Math.PI * (1 - Math.Cos(angle)), flat.SurfaceArea.SquareMeters, 0.01);
        Digits.Close(flat.FlatArea.SquareMeters, flat.Outlines[0].SquareMetres);
    }

    [Fact]
    public void Parts_are_laid_one_by_one()
    {
        var one = TestMeshes.Plane(1, 1, 3);
        var two = TestMeshes.CylinderArc(1, 1, 1, 12);
        int shift = one.Vertices.Length;
        var both = new TriangleMesh([.. one.Vertices, .. two.Vertices], [.. one.Triangles, .. two.Triangles.Select(t => new MeshTriangle(t.A + shift, t.B + shift, t.C + shift))]);
        FlatPattern flat = Flattening.Of(both);
        Exact(flat);
        Assert.Equal(2, flat.Outlines.Length);
    }

    [Fact]
    public void A_closed_surface_is_refused()
    {
        Assert.Throws<ArgumentException>(() => Flattening.Of(DrapeRobustnessTests.Ball()));
        Assert.Throws<ArgumentException>(() => Flattening.Of(new TriangleMesh([], [])));
    }

    /// <summary>Floor in the plane z = 0 with four walls standing up, cloth on the inside.</summary>
    internal static TriangleMesh OpenBox(double x, double y, double height, int parts)
    {
        List<Point3> points = [];
        List<MeshTriangle> triangles = [];
        Dictionary<(int, int, int), int> numbers = [];
        (Point3 a, Point3 b, Point3 c, Point3 d) = (new(-x / 2, -y / 2, 0), new(x / 2, -y / 2, 0), new(x / 2, y / 2, 0), new(-x / 2, y / 2, 0));
        Point3 up = new(0, 0, height);
        Face(a, b - a, d - a);
        Face(a + up, b - a, up * -1);
        Face(b + up, c - b, up * -1);
        Face(c + up, d - c, up * -1);
        Face(d + up, a - d, up * -1);
        return new TriangleMesh([.. points], [.. triangles]);

        void Face(Point3 corner, Point3 u, Point3 v)
        {
            for (int k = 0; k < parts * parts; k++)
            {
                (int i, int j) = (k % parts, k / parts);
                (int p, int q, int r, int s) = (At(i, j), At(i + 1, j), At(i + 1, j + 1), At(i, j + 1));
                triangles.Add(new(p, q, r));
                triangles.Add(new(p, r, s));
            }

            int At(int i, int j)
            {
                Point3 at = corner + (u * (i / (double)parts)) + (v * (j / (double)parts));
                var key = ((int)Math.Round(at.X * 1e6), (int)Math.Round(at.Y * 1e6), (int)Math.Round(at.Z * 1e6));
                if (!numbers.TryGetValue(key, out int number))
                {
                    numbers.Add(key, number = points.Count);
                    points.Add(at);
                }

                return number;
            }
        }
    }

    private static Point3 Round(double turn, double radius, double height) =>
        new(radius * Math.Cos(2 * Math.PI * turn), radius * Math.Sin(2 * Math.PI * turn), height);

    private static void Exact(FlatPattern flat)
    {
        Assert.Equal(0, flat.AreaChange.DecimalFractions, 1e-9);
        Assert.Equal(0, flat.GreatestEdgeChange.DecimalFractions, 1e-7);
        Assert.Equal(0, flat.FoldOvers);
        Assert.All(flat.Parts, part => Assert.False(part.Overlaps));
    }
}
