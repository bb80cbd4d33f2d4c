using UnitsNet;
using Xunit.Abstractions;

namespace Recipe.Engineering.Tests.Shapes;

/// <summary>Meshes of others against figures that another program worked out from the same files.</summary>
public class OpenMeshTests(ITestOutputHelper output)
{
    [Fact]
    public void The_bunny_has_its_area_volume_and_box()
    {
        if (OpenMeshes.Bunny(output) is not { } bytes)
        {
            return;
        }

        MeshReading reading = MeshReading.Read(bytes, "bunny.obj", Length.FromMeters(1));
        MeshMeasures measures = MeshMeasures.Of(reading.Mesh!, new Point3(0, 0, 1));
        Say("bunny", reading, measures);
        Assert.Equal((1839, 3674), (reading.Mesh!.Vertices.Length, reading.Mesh.Triangles.Length));
        Assert.True(measures.IsClosed);
        Digits.AsPrinted("218.689", measures.Area.SquareMeters);
        Digits.AsPrinted("194.288", measures.Volume!.Value.CubicMeters);
        Assert.Equal("-4.958 -0.003 -3.730 4.949 9.655 3.811", FormattableString.Invariant(
            $"{measures.Least.X:F3} {measures.Least.Y:F3} {measures.Least.Z:F3} {measures.Most.X:F3} {measures.Most.Y:F3} {measures.Most.Z:F3}"));
        Assert.True(measures.IsDoublyCurved);
    }

    [Fact]
    public void The_sample_in_words_has_its_area_and_volume()
    {
        if (OpenMeshes.Gmsh("doc/gmsh/tutorial/t13_data.stl", output) is not { } bytes)
        {
            return;
        }

        MeshReading reading = MeshReading.Read(bytes, "t13_data.stl", Length.FromMeters(1));
        MeshMeasures measures = MeshMeasures.Of(reading.Mesh!);
        Say("t13_data", reading, measures);
        Assert.Equal((MeshFormat.StlAscii, 1580), (reading.Format, reading.Mesh!.Triangles.Length));
        Assert.True(measures.IsClosed);
        Digits.AsPrinted("48896.4", measures.Area.SquareMeters);
        Digits.AsPrinted("67815.8", measures.Volume!.Value.CubicMeters);
    }

    [Theory]
    [InlineData("doc/gmsh/demos/api/object.stl", 710, true)]
    [InlineData("doc/gmsh/demos/api/terrain_stl_data.stl", 3498, false)]
    [InlineData("doc/gmsh/demos/api/surface1.stl", 80, false)]
    [InlineData("doc/gmsh/demos/api/surface2.stl", 86, false)]
    [InlineData("converters/stl_to_cartesian/lever.stl", 774, true)]
    [InlineData("doc/gmsh/demos/simple_geo/sphere-surf.stl", 648, true)]
    public void Samples_have_their_triangles_and_are_open_or_closed(string path, int triangles, bool isClosed)
    {
        if (OpenMeshes.Gmsh(path, output) is not { } bytes)
        {
            return;
        }

        MeshReading reading = MeshReading.Read(bytes, path, Length.FromMillimeters(1));
        MeshMeasures measures = MeshMeasures.Of(reading.Mesh!, new Point3(0, 0, 1));
        Say(path, reading, measures);
        Assert.Equal(triangles, reading.Mesh!.Triangles.Length);
        Assert.Equal(isClosed, measures.IsClosed);
        Assert.Equal(isClosed, measures.Volume is not null);
        Assert.Equal(isClosed, measures.Boundaries.IsEmpty);
        Assert.Equal(0, measures.NonManifoldEdges);
    }

    private void Say(string name, MeshReading reading, MeshMeasures measures) => output.WriteLine(FormattableString.Invariant(
        $"{name}: area {measures.Area.SquareMeters:G9}, volume {measures.Volume?.CubicMeters:G9}, open edges {measures.OpenEdges}, parts {measures.Parts}, inside radius {measures.SmallestInsideRadius?.Meters:G4}, repairs {string.Join(", ", reading.Repairs.Select(repair => $"{repair.Kind} {repair.Count}"))}"));
}
