using System.Globalization;
using System.Text;
using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests.Shapes;

public class MeshMendingTests
{
    private const string Cube = "v 0 0 0\nv 1 0 0\nv 1 1 0\nv 0 1 0\nv 0 0 1\nv 1 0 1\nv 1 1 1\nv 0 1 1\n";

    private static readonly string[] Sides = ["1 4 3 2", "5 6 7 8", "1 2 6 5", "2 3 7 6", "3 4 8 7", "4 1 5 8"];

    [Fact]
    public void A_cube_has_the_volume_and_area_of_a_cube()
    {
        MeshReading reading = Read(Cube + Faces(Sides));
        MeshMeasures measures = MeshMeasures.Of(reading.Mesh!);
        Assert.Empty(reading.Repairs);
        Assert.True(measures.IsClosed);
        Assert.Empty(measures.Boundaries);
        Digits.Close(1, measures.Volume!.Value.CubicMeters);
        Digits.Close(6, measures.Area.SquareMeters);
        Assert.Equal(Curvature.Faceted, measures.Bends.Kind);
        Digits.Close(12, measures.Bends.SharpOutside.Meters);
        Assert.Null(measures.SmallestInsideRadius);
    }

    [Fact]
    public void Turned_faces_are_turned_back_and_counted()
    {
        Gen.Bool.Array[6].Sample(
            turned =>
            {
                MeshReading reading = Read(Cube + Faces([.. Sides.Select((side, i) => turned[i] ? string.Join(' ', side.Split(' ').Reverse()) : side)]));
                Digits.Close(1, MeshMeasures.Of(reading.Mesh!).Volume!.Value.CubicMeters);
                Assert.Equal(2 * turned.Count(turn => turn), Count(reading, MeshRepairKind.TrianglesTurned));
            },
            iter: 64);
    }

    [Fact]
    public void An_open_surface_keeps_the_side_of_most_of_it()
    {
        MeshReading reading = Read("v 0 0 0\nv 1 0 0\nv 1 1 0\nv 0 1 0\nv 2 0 0\nv 2 1 0\nf 4 3 2 1\nf 2 5 6\nf 6 3 2\nf 2 5 6\nv 3 0 0\nf 5 7 6\n");

        // Two look down, three up; one of those is there twice.
        Assert.Equal(2, Count(reading, MeshRepairKind.TrianglesTurned));
        Assert.Equal(1, Count(reading, MeshRepairKind.DuplicatesDropped));
        Digits.Close(2.5, MeshMeasures.Of(reading.Mesh!, new Point3(0, 0, 1)).Area.SquareMeters);
        Assert.Equal(0, MeshMeasures.Of(reading.Mesh!, new Point3(0, 0, 1)).Draft!.FacingAway.SquareMeters);
    }

    [Fact]
    public void A_hollow_stays_a_hollow_and_two_bodies_are_two()
    {
        string Second(double size, double at, bool inward) => string.Concat(Cube.Split('\n', StringSplitOptions.RemoveEmptyEntries)
            .Select(line => "v " + string.Join(' ', line.Split(' ')[1..].Select(word => ((double.Parse(word, CultureInfo.InvariantCulture) * size) + at).ToString("R", CultureInfo.InvariantCulture))) + "\n"))
            + Faces([.. Sides.Select(side => string.Join(' ', (inward ? side.Split(' ').Reverse() : side.Split(' ')).Select(word => int.Parse(word) + 8)))]);
        Digits.Close(1 - 0.125, Volume(Cube + Second(0.5, 0.25, true) + Faces(Sides)));
        Digits.Close(1 + 0.125, Volume(Cube + Second(0.5, 3, true) + Faces(Sides)));
        Digits.Close(1 + 0.125, Volume(Cube + Second(0.5, 3, false) + Faces(Sides)));
    }

    [Fact]
    public void Gaps_within_reach_are_closed_and_wider_ones_left()
    {
        // The lid has corners of its own, a little above the walls.
        string WithLid(double gap) => string.Create(
            CultureInfo.InvariantCulture,
            $"{Cube}v 0 0 {1 + gap}\nv 1 0 {1 + gap}\nv 1 1 {1 + gap}\nv 0 1 {1 + gap}\n{Faces(["9 10 11 12", .. Sides.Where((_, i) => i != 1)])}");
        MeshReading closed = Read(WithLid(1e-4));
        Assert.Equal(4, Count(closed, MeshRepairKind.GapsClosed));
        Assert.True(MeshMeasures.Of(closed.Mesh!).IsClosed);
        Assert.Equal(4, Count(Read(WithLid(1e-7)), MeshRepairKind.PointsWelded));

        MeshReading open = Read(WithLid(1e-2));
        Assert.Equal(8, Count(open, MeshRepairKind.OpenEdgesLeft));
        Assert.Equal(2, MeshMeasures.Of(open.Mesh!).Boundaries.Length);
        Assert.Equal(0, Count(open, MeshRepairKind.GapsClosed));
    }

    [Fact]
    public void A_triangle_without_area_goes_and_leaves_no_slit()
    {
        // One side of the lid has a point in its middle on one face only; a flat triangle fills the slit.
        string[] others = [.. Sides.Where((_, i) => i is not 1)];
        MeshReading reading = Read(Cube + "v 0.5 0 1\n" + Faces([.. others, "5 9 6", "5 7 8"]) + "f 9 6 7\nf 5 9 7\n");
        Assert.True(MeshMeasures.Of(reading.Mesh!).IsClosed);
        Assert.Equal(1, Count(reading, MeshRepairKind.ZeroAreaDropped));
        Digits.Close(1, MeshMeasures.Of(reading.Mesh!).Volume!.Value.CubicMeters);
        Digits.Close(6, MeshMeasures.Of(reading.Mesh!).Area.SquareMeters);
    }

    [Fact]
    public void Edges_of_three_faces_and_bands_with_half_a_twist_are_told_and_left()
    {
        MeshReading fins = Read("v 0 0 0\nv 1 0 0\nv 0 1 0\nv 0 -1 0\nv 0 0 1\nf 1 2 3\nf 2 1 4\nf 1 2 5\n");
        Assert.Equal(1, Count(fins, MeshRepairKind.NonManifoldEdgesLeft));
        Assert.Equal(1, MeshMeasures.Of(fins.Mesh!).NonManifoldEdges);

        // Moebius band of five triangles (each with the next two points).
        StringBuilder band = new();
        for (int i = 0; i < 5; i++)
        {
            (double sine, double cosine) = Math.SinCos(2 * Math.PI * i / 5);
            band.Append(CultureInfo.InvariantCulture, $"v {cosine:R} {sine:R} {(i % 2) * 0.5:R}\n");
        }

        MeshReading twisted = Read(band + "f 1 2 3\nf 2 3 4\nf 3 4 5\nf 4 5 1\nf 5 1 2\n");
        Assert.Equal(1, Count(twisted, MeshRepairKind.OpposedEdgesLeft));
        Assert.Null(MeshMeasures.Of(twisted.Mesh!).Volume);
    }

    private static double Volume(string obj) => MeshMeasures.Of(Read(obj).Mesh!).Volume!.Value.CubicMeters;

    private static int Count(MeshReading reading, MeshRepairKind kind) => reading.Repairs.SingleOrDefault(repair => repair.Kind == kind)?.Count ?? 0;

    private static string Faces(string[] sides) => string.Concat(sides.Select(side => $"f {side}\n"));

    private static MeshReading Read(string obj) => MeshReading.Read(Encoding.ASCII.GetBytes(obj), "a.obj", Length.FromMeters(1));
}
