using UnitsNet;

namespace Recipe.Engineering.Tests;

public class DrapingTests
{
    private static Length M(double value) => Length.FromMeters(value);

    [Theory]
    [InlineData(0)]
    [InlineData(33)]
    public void A_plane_is_laid_as_it_is(double degrees)
    {
        (double sine, double cosine) = Math.SinCos(degrees * Math.PI / 180);
        DrapeNet net = Draping.Over(TestMeshes.Plane(1, 0.6, 10), new(0.1, 0.05, 0), new(cosine, sine, 0), M(0.04));
        Assert.Empty(net.Gaps);
        Assert.All(net.Cells, cell => Assert.Equal(0, cell.Shear, 1e-9));
        foreach (DrapeNode node in net.Nodes)
        {
            Point2 flat = new(0.04 * node.I, 0.04 * node.J);
            Assert.Equal(0.1 + (cosine * flat.X) - (sine * flat.Y), node.Place.X, 1e-9);
            Assert.Equal(0.05 + (sine * flat.X) + (cosine * flat.Y), node.Place.Y, 1e-9);
        }

        Outline outline = Assert.IsType<Outline>(net.Flat);
        Assert.True(net.FlatFollowsRim);
        Assert.Equal(4, outline.Points.Length);
        Digits.Close(0.6, outline.SquareMetres);
        Assert.Equal(0, net.ShearBeyond(Angle.FromDegrees(1)).Share.DecimalFractions);
    }

    [Theory]
    [InlineData(1, 0)]
    [InlineData(1, 1)]
    [InlineData(1, -0.4)]
    public void A_cylinder_is_laid_without_shear(double x, double y)
    {
        var mesh = TestMeshes.CylinderArc(0.5, 1, Math.PI * 0.9, 240, 3);
        DrapeNet net = Draping.Over(mesh, new(0, 0, 0.5), new(x, y, 0), M(0.05));

        // The angle between chords leaves that between threads by up to (step / radius)^2 / 6, a cell that is reached round a crossing
        // past the rim by up to about (step / radius)^2: there the surface goes on without its curvature.
        const double bend = 0.1 * 0.1;
        Assert.True(net.GreatestShear.Radians < 1.5 * bend, $"{net.GreatestShear.Degrees}");
        Assert.True(net.ShearBeyond(Angle.FromRadians(0.2 * bend)).Share.DecimalFractions < 0.1);
        Assert.All(net.Cells.Where(cell => Math.Abs(cell.I) < 6 && Math.Abs(cell.J) < 6), cell => Assert.InRange(Math.Abs(cell.Shear), 0, bend / 5));
        Assert.True(net.FlatFollowsRim);

        // Chords of a step in the mean direction are shorter than their arcs by (step / radius)^2 / 24 at most.
        Outline flat = Assert.IsType<Outline>(net.Flat);
        Digits.Close(net.SurfaceArea.SquareMeters, flat.SquareMetres, 0.002);
        Digits.Close(0.5 * Math.PI * 0.9, flat.SquareMetres, 0.002);
        Digits.Close(net.SurfaceArea.SquareMeters, net.CoveredArea.SquareMeters, 0.01);
    }

    [Fact]
    public void Threads_keep_their_length()
    {
        foreach (var mesh in new[] { TestMeshes.Cap(1, 1.2, 20), TestMeshes.Saddle(1, 1.5, 25), TestMeshes.CylinderArc(0.5, 1, 2, 12) })
        {
            Point3 start = mesh.Vertices.MinBy(at => (at with { Z = 0 }).Norm);
            DrapeNet net = Draping.Over(mesh, start, new(1, 0.3, 0), M(0.05));
            var nodes = net.Nodes.ToDictionary(node => (node.I, node.J), node => node.Place);
            Assert.NotEmpty(net.Cells);
            foreach (DrapeCell cell in net.Cells)
            {
                Assert.Equal(0.05, (nodes[(cell.I + 1, cell.J)] - nodes[(cell.I, cell.J)]).Norm, 1e-8);
                Assert.Equal(0.05, (nodes[(cell.I, cell.J + 1)] - nodes[(cell.I, cell.J)]).Norm, 1e-8);
            }
        }
    }

    [Fact]
    public void On_a_saddle_the_cloth_shears_the_other_way_by_the_curvature_enclosed()
    {
        // z = c x y: K = -c^2 / (1 + c^2 (x^2 + y^2))^2. Shear = integral of K over the block of threads (J. N. Hazzidakis, 1879).
        const double twist = 1.2;
        DrapeNet net = Draping.Over(TestMeshes.Saddle(1, twist, 60), new(0, 0, 0), new(1, 0, 0), M(0.02));
        var nodes = net.Nodes.ToDictionary(node => (node.I, node.J), node => node.Place);
        var cells = net.Cells.ToDictionary(cell => (cell.I, cell.J));
        foreach ((int i, int j) in new[] { (8, 8), (18, 6), (18, 18) })
        {
            double sum = 0;
            for (int k = 0; k <= i; k++)
            {
                for (int l = 0; l <= j; l++)
                {
                    Point3 at = nodes[(k, l)];
                    double curvature = -twist * twist / Math.Pow(1 + (twist * twist * ((at.X * at.X) + (at.Y * at.Y))), 2);
                    sum += curvature * cells[(k, l)].SquareMetres * (k == i ? 0.5 : 1) * (l == j ? 0.5 : 1);
                }
            }

            Assert.True(sum < 0);
            Assert.Equal(sum, cells[(i, j)].Shear, 0.05 * Math.Abs(sum));
        }
    }

    [Fact]
    public void A_turned_surface_gives_the_same_net()
    {
        var mesh = TestMeshes.Saddle(1, 0.9, 20);
        Point3 Turn(Point3 at) => new((0.36 * at.X) + (0.48 * at.Y) - (0.8 * at.Z) + 5, (-0.8 * at.X) + (0.6 * at.Y) - 2, (0.48 * at.X) + (0.64 * at.Y) + (0.6 * at.Z));
        DrapeNet one = Draping.Over(mesh, new(0.03, 0.02, 0.9 * 0.0006), new(1, 0.2, 0), M(0.06));
        DrapeNet two = Draping.Over(TestMeshes.Turned(mesh, Turn), Turn(new(0.03, 0.02, 0.9 * 0.0006)), Turn(new(1, 0.2, 0)) - Turn(default), M(0.06));
        Assert.Equal(one.Cells.Length, two.Cells.Length);
        foreach ((DrapeCell a, DrapeCell b) in one.Cells.Zip(two.Cells))
        {
            Assert.Equal((a.I, a.J), (b.I, b.J));
            Assert.Equal(a.Shear, b.Shear, 1e-6);
        }
    }

    [Fact]
    public void A_mirrored_surface_gives_the_mirrored_net()
    {
        var mesh = TestMeshes.Saddle(1, 0.9, 20);
        static Point3 Mirror(Point3 at) => at with { Y = -at.Y };
        DrapeNet one = Draping.Over(mesh, new(0.03, 0.02, 0), new(1, 0.2, 0), M(0.06));
        DrapeNet two = Draping.Over(TestMeshes.Turned(mesh, Mirror, mirror: true), new(0.03, -0.02, 0), new(1, -0.2, 0), M(0.06));
        var other = two.Cells.ToDictionary(cell => (cell.I, cell.J), cell => cell.Shear);
        Assert.Equal(one.Cells.Length, other.Count);
        Assert.All(one.Cells, cell => Assert.Equal(-cell.Shear, other[(cell.I, -1 - cell.J)], 1e-6));
        Digits.Close(one.Flat!.SquareMetres, two.Flat!.SquareMetres, 1e-6);
    }

    [Fact]
    public void The_same_call_gives_the_same_net()
    {
        var mesh = TestMeshes.Cap(1, 1, 12);
        DrapeNet one = Draping.Over(mesh, new(0.1, 0, 1), new(1, 1, 0), M(0.07));
        DrapeNet two = Draping.Over(mesh, new(0.1, 0, 1), new(1, 1, 0), M(0.07));
        Assert.True(one.Nodes.SequenceEqual(two.Nodes));
        Assert.True(one.Cells.SequenceEqual(two.Cells));
    }

    [Fact]
    public void An_angle_of_a_sheet_is_reached_round_its_corner()
    {
        var plane = TestMeshes.Plane(2, 2, 20);
        var mesh = new TriangleMesh(plane.Vertices, [.. plane.Triangles.Where(t => Middle(plane, t) is not { X: > 0, Y: > 0 })]);
        DrapeNet net = Draping.Over(mesh, new(-0.53, 0.72, 0), new(1, 0, 0), M(0.09));
        Assert.True(net.FlatFollowsRim);
        Digits.Close(3, net.Flat!.SquareMetres, 1e-6);
        Digits.Close(3, net.CoveredArea.SquareMeters, 0.02);
        Assert.All(net.Cells, cell => Assert.Equal(0, cell.Shear, 1e-7));
    }

    [Fact]
    public void A_hole_in_a_sheet_is_a_hole_in_the_cloth()
    {
        var plane = TestMeshes.Plane(2, 2, 20);
        var mesh = new TriangleMesh(plane.Vertices, [.. plane.Triangles.Where(t => Middle(plane, t) is not { X: > 0.2 and < 0.6, Y: > -0.2 and < 0.2 })]);
        DrapeNet net = Draping.Over(mesh, new(-0.53, 0, 0), new(1, 0.1, 0), M(0.06));
        Assert.True(net.FlatFollowsRim);
        Digits.Close(4, net.Flat!.SquareMetres, 1e-6);
        Digits.Close(0.16, Assert.Single(net.FlatHoles).SquareMetres, 1e-6);
    }

    [Fact]
    public void Round_a_tube_the_cloth_stops_where_it_meets_itself()
    {
        var tube = TestMeshes.Grid(48, 10, (u, v) => new(0.2 * Math.Cos(2 * Math.PI * u), 0.2 * Math.Sin(2 * Math.PI * u), v), closed: true);
        DrapeNet net = Draping.Over(tube, new(0.2, 0, 0.5), new(0, 0, 1), M(0.03));
        Assert.False(net.FlatFollowsRim);
        Digits.Close(net.SurfaceArea.SquareMeters, net.CoveredArea.SquareMeters, 0.08);
        Assert.InRange(net.Flat!.Across, 0.9 * 0.4 * Math.PI, (0.4 * Math.PI) + 0.12);
    }

    [Fact]
    public void Over_the_crease_of_a_box_the_threads_go_on_straight()
    {
        // A floor with one wall standing up: developable, so nothing shears and the flat is the unfolded rectangle.
        var mesh = TestMeshes.Grid(30, 10, (u, v) => u <= 0.5 ? new(2 * u, v, 0) : new(1, v, (2 * u) - 1));
        DrapeNet net = Draping.Over(mesh, new(0.512, 0.45, 0), new(1, 0, 0), M(0.05));
        Assert.True(net.FlatFollowsRim);
        Digits.Close(2, net.Flat!.SquareMetres, 0.03);
        Assert.All(net.Cells, cell => Assert.Equal(0, cell.Shear, 1e-6));
    }

    [Fact]
    public void A_step_larger_than_the_surface_still_gives_its_outline()
    {
        var mesh = new TriangleMesh([new(0, 0, 0), new(0.01, 0, 0), new(0, 0.02, 0)], [new(0, 1, 2)]);
        DrapeNet net = Draping.Over(mesh, new(0.002, 0.002, 0), new(1, 0, 0), M(0.5));
        Digits.Close(1e-4, net.Flat!.SquareMetres, 1e-6);
    }

    [Fact]
    public void What_cannot_be_draped_is_refused()
    {
        var mesh = TestMeshes.Plane(1, 1, 4);
        Assert.Throws<ArgumentOutOfRangeException>(() => Draping.Over(mesh, default, new(1, 0, 0), M(0)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Draping.Over(mesh, default, new(1, 0, 0), M(-0.1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Draping.Over(mesh, default, new(1, 0, 0), M(1e-5)));
        Assert.Throws<ArgumentOutOfRangeException>(() => Draping.Over(mesh, new(0, 0, 0.2), new(1, 0, 0), M(0.1)));
        Assert.Throws<ArgumentException>(() => Draping.Over(mesh, default, new(0, 0, 1), M(0.1)));
        Assert.Throws<ArgumentException>(() => Draping.Over(mesh, default, default, M(0.1)));
        Assert.Throws<ArgumentException>(() => Draping.Over(mesh, new(double.NaN, 0, 0), new(1, 0, 0), M(0.1)));
        var line = new TriangleMesh([new(0, 0, 0), new(1, 0, 0), new(2, 0, 0)], [new(0, 1, 2)]);
        Assert.Throws<ArgumentException>(() => Draping.Over(line, default, new(1, 0, 0), M(0.1)));
    }

    private static Point3 Middle(TriangleMesh mesh, MeshTriangle t) => (mesh.Vertices[t.A] + mesh.Vertices[t.B] + mesh.Vertices[t.C]) * (1.0 / 3);
}
