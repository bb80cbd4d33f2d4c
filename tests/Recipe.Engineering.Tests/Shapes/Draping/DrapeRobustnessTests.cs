using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

/// <summary>Whatever the mesh, the work is bounded and nothing but the documented refusals is thrown.</summary>
public class DrapeRobustnessTests
{
    private static readonly Gen<Point3> Point = Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1], Gen.Double[-1, 1], (x, y, z) => new Point3(x, y, z));

    [Fact]
    public void Rough_ground_is_draped_with_its_gaps_told()
    {
        int draped = 0;
        Gen.Select(Gen.Double[-0.4, 0.4].Array[121], Gen.Double[0.08, 0.7], Point).Sample(
            (heights, step, way) =>
            {
                int next = 0;
                var mesh = TestMeshes.Grid(10, 10, (u, v) => new(u - 0.5, v - 0.5, heights[next++]));
                if (Hold(mesh, mesh.Vertices[60], way with { Z = 0 }, step))
                {
                    Interlocked.Increment(ref draped);
                }
            },
            iter: 12);
        Assert.True(draped > 6, $"only {draped} of 12 were draped");
    }

    [Fact]
    public void A_heap_of_triangles_is_draped_or_refused() =>
        Gen.Select(Point.Array[4, 14], Gen.Int[0, 13].Array[60], Gen.Double[0.2, 2], Point).Sample(
            (points, corners, step, way) =>
            {
                MeshTriangle[] triangles = [.. corners.Chunk(3).Select(t => new MeshTriangle(t[0] % points.Length, t[1] % points.Length, t[2] % points.Length))];
                Hold(new TriangleMesh([.. points], [.. triangles]), points[0], way, step);
            },
            iter: 20);

    [Fact]
    public void A_closed_ball_is_covered_until_the_cloth_meets_itself()
    {
        DrapeNet net = Draping.Over(Ball(), new(0, 0, 1), new(1, 0, 0), Length.FromMeters(0.08));
        Assert.True(net.Nodes.Length < 20_000);
        Assert.False(net.FlatFollowsRim);
        Assert.True(net.CoveredArea < net.SurfaceArea * 1.1);
        Assert.True(net.GreatestShear.Degrees > 50);
    }

    [Fact]
    public void A_deep_open_box_locks_or_gapes_at_its_corners()
    {
        DrapeNet net = Draping.Over(FlatteningTests.OpenBox(1, 0.8, 0.4, 8), new(0.03, 0.02, 0), new(1, 0, 0), Length.FromMeters(0.05));
        var nodes = net.Nodes.ToDictionary(node => (node.I, node.J), node => node.Place);
        Assert.All(
            net.Cells.Where(cell => nodes[(cell.I, cell.J)].Z == 0 && nodes[(cell.I + 1, cell.J + 1)].Z == 0),
            cell => Assert.Equal(0, cell.Shear, 1e-6));
        Assert.True(net.GreatestShear.Degrees > 30 || net.Gaps.Length > 0);
    }

    internal static TriangleMesh Ball()
    {
        // An octahedron with each face divided, pressed on to the sphere.
        List<Point3> points = [];
        List<MeshTriangle> triangles = [];
        Dictionary<(int, int, int), int> numbers = [];
        const int parts = 12;
        foreach ((int x, int y, int z) in from x in new[] { 1, -1 } from y in new[] { 1, -1 } from z in new[] { 1, -1 } select (x, y, z))
        {
            int At(int i, int j)
            {
                (int, int, int) key = (x * i, y * j, z * (parts - i - j));
                if (!numbers.TryGetValue(key, out int number))
                {
                    numbers.Add(key, number = points.Count);
                    points.Add(new Point3(key.Item1, key.Item2, key.Item3).Unit());
                }

                return number;
            }

            for (int i = 0; i < parts; i++)
            {
                for (int j = 0; i + j < parts; j++)
                {
                    Add(At(i, j), At(i + 1, j), At(i, j + 1));
                    if (i + j < parts - 1)
                    {
                        Add(At(i + 1, j), At(i + 1, j + 1), At(i, j + 1));
                    }
                }
            }

            void Add(int a, int b, int c) => triangles.Add(x * y * z > 0 ? new(a, b, c) : new(a, c, b));
        }

        return new TriangleMesh([.. points], [.. triangles]);
    }

    // Whether it was draped, and not refused.
    private static bool Hold(TriangleMesh mesh, Point3 start, Point3 way, double step)
    {
        bool isDraped = false;
        try
        {
            DrapeNet net = Draping.Over(mesh, start, way, Length.FromMeters(step));
            Assert.All(net.Nodes, node => Assert.True(node.Place.IsFinite));
            Assert.All(net.Cells, cell => Assert.InRange(cell.Shear, -Math.PI / 2, Math.PI / 2));
            Assert.True(net.Nodes.Length <= (4 * net.SurfaceArea.SquareMeters / (step * step)) + (40 * Math.Sqrt(net.SurfaceArea.SquareMeters) / step) + 10_001);
            Assert.NotNull(net.Darts(Angle.FromDegrees(40)));
            isDraped = true;
        }
        catch (ArgumentException)
        {
            // A start or direction that this mesh does not take.
        }

        try
        {
            FlatPattern flat = Flattening.Of(mesh);
            Assert.All(flat.Parts.SelectMany(part => part.Corners), at => Assert.True(at.IsFinite));
        }
        catch (ArgumentException)
        {
            // A part without a rim.
        }

        return isDraped;
    }
}
