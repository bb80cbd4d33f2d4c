using Recipe.Model;
using UnitsNet;

namespace Recipe.Semantics.Tests;

/// <summary>Surfaces that were drawn or scanned, what is kept of them, and the cloth on them.</summary>
public class ShapeTests
{
    [Fact]
    public void A_file_is_found_beside_the_text_that_names_it_and_has_the_unit_that_is_said()
    {
        var file = new ShapeFile("moulds/lid.stl", new byte[] { 1 });
        var asked = new List<(string, string)>();
        var tree = Given.Tree("mould lid { surface mesh \"lid.stl\" unit in laid-on back }", "moulds/lid.recipe");
        var bound = Binder.Bind(tree, Given.Book, new UseScope((_, _) => null, (from, path) =>
        {
            asked.Add((from, path));
            return file;
        }));
        Assert.Empty(bound.Findings);
        var shape = Assert.IsType<MeshShape>(bound.Model.Moulds["lid"].Surface!.Value);
        Assert.Equal([("moulds/lid.recipe", "lid.stl")], asked.Distinct());
        Assert.Same(file, shape.File);

        // NIST SP 811: an inch is 25.4 mm.
        Assert.Equal(0.0254, shape.Unit!.Value.Meters, 1e-15);
        Assert.True(shape.LaidOnBack);
    }

    [Fact]
    public void A_text_that_stands_alone_has_no_files_of_shapes()
    {
        var shape = Assert.IsType<MeshShape>(Surface("surface mesh \"lid.stl\""));
        Assert.Null(shape.File);
        Assert.Null(shape.Unit);
        Assert.Equal("lid.stl", shape.Written);
    }

    [Fact]
    public void A_profile_keeps_its_points_in_order()
    {
        var shape = Assert.IsType<RevolvedShape>(Surface("surface revolved arc 180 deg { point radius 0 mm height -30 mm; point radius 80 mm height 0 mm }"));
        Assert.Equal([(0, -30), (80, 0)], shape.Profile.Select(p => ((int)p.Out.Millimeters, (int)p.Height.Millimeters)));
        Assert.Equal(180, shape.Arc.Degrees, 1e-9);
        Assert.Equal(360, Assert.IsType<RevolvedShape>(Surface("surface revolved { point radius 0 mm height 0 mm; point radius 80 mm height 0 mm }")).Arc.Degrees, 1e-9);
    }

    [Fact]
    public void A_section_is_drawn_along_a_path()
    {
        var shape = Assert.IsType<SweptShape>(Surface(
            "surface swept { section across -20 mm height 0 mm; section across 20 mm height 0 mm; path along 0 mm height 0 mm; path along 900 mm height 40 mm }"));
        Assert.Equal([-20, 20], shape.Section.Select(p => (int)Math.Round(p.Out.Millimeters)));
        Assert.Equal([0, 900], shape.Path.Select(p => (int)Math.Round(p.Out.Millimeters)));
    }

    [Theory]
    [InlineData("surface revolved", "surface revolved")]
    [InlineData("surface revolved { point radius 80 mm height 0 mm }", "surface revolved")]
    [InlineData("surface swept { section across 0 mm height 0 mm; section across 9 mm height 0 mm }", "surface swept")]
    public void A_profile_of_fewer_than_two_points_is_said(string line, string what)
    {
        var finding = Given.Single($"mould lid {{ {line} }}");
        Assert.Equal("missing-value", finding.Descriptor.Name);
        Assert.Contains(what, finding.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void A_block_behind_a_surface_that_takes_none_is_said() =>
        Assert.NotEmpty(Given.Codes("mould lid { surface disc diameter 200 mm { point radius 80 mm height 0 mm } }"));

    [Fact]
    public void Regions_are_kept_in_order()
    {
        var regions = Given.Sound(
            """
            mould lid {
              surface mesh "lid.stl" unit mm
              region above z -10 mm
              region below x 20 mm
              region between y -5 mm to 5 mm
              region group deck
              region patch at-x 1 mm at-y 2 mm at-z -3 mm edge 25 deg
            }
            """).Model.Moulds["lid"].Regions;
        Assert.Equal(5, regions.Length);
        Assert.Equal(Planes(ShapeDirection.Z, -10, null), Planes(regions[0]));
        Assert.Equal(Planes(ShapeDirection.X, null, 20), Planes(regions[1]));
        Assert.Equal(Planes(ShapeDirection.Y, -5, 5), Planes(regions[2]));
        Assert.Equal("deck", Assert.IsType<GroupOfShape>(regions[3]).Name);
        var patch = Assert.IsType<PatchOfShape>(regions[4]);
        Assert.Equal((1, 2, -3, 25), ((int)patch.X.Millimeters, (int)patch.Y.Millimeters, (int)Math.Round(patch.Z.Millimeters), (int)Math.Round(patch.Edge!.Value.Degrees)));
    }

    [Fact]
    public void The_pull_has_a_sense_and_the_cloth_a_start()
    {
        var bound = Given.Sound("mould lid { surface mesh \"lid.stl\" unit mm; pull minus-z }\npart lid { mould lid; drape at-x 10 mm at-y -4 mm along y step 5 mm; region above z 0 mm }");
        Assert.Equal(ShapeDirection.MinusZ, bound.Model.Moulds["lid"].Pull!.Value);
        var part = Assert.Single(bound.Model.Parts);
        var drape = part.Drape!;
        Assert.Equal((10.0, -4.0), (Math.Round(drape.X!.Value.Millimeters, 9), Math.Round(drape.Y!.Value.Millimeters, 9)));
        Assert.Null(drape.Z);
        Assert.Equal(ShapeDirection.Y, drape.Along);
        Assert.Equal(5, drape.Step!.Value.Millimeters, 1e-9);
        Assert.Single(part.Regions);
    }

    [Fact]
    public void An_offcut_is_counted_as_its_area()
    {
        var line = Assert.Single(Given.Sound("fabric my-cloth { areal-weight 200 g/m2 }\nstock { my-cloth offcut 600 mm x 400 mm lot \"G7\" }").Model.Stock);
        Assert.Equal(0.24, line.Amount!.Value.Si, 1e-12);
        Assert.Equal((600.0, 400.0), (Math.Round(line.Offcut!.Value.Along.Millimeters, 9), Math.Round(line.Offcut.Value.Across.Millimeters, 9)));
    }

    private static (ShapeDirection, double?, double?) Planes(ShapeDirection axis, double? from, double? to) => (axis, from, to);

    private static (ShapeDirection, double?, double?) Planes(ShapeRegion region)
    {
        var planes = Assert.IsType<BetweenPlanes>(region);
        return (planes.Axis, Mm(planes.From), Mm(planes.To));
    }

    private static double? Mm(Length? length) => length is { } known ? Math.Round(known.Millimeters, 9) : null;

    private static SurfaceShape Surface(string line) => Given.Sound($"mould lid {{ {line} }}").Model.Moulds["lid"].Surface!.Value;
}
