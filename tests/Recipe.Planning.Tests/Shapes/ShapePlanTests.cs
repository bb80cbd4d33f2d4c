using System.Buffers.Binary;
using System.Text;
using Recipe.Engineering;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning.Tests.Shapes;

/// <summary>Plans of parts on drawn and scanned surfaces.</summary>
public class ShapePlanTests
{
    private const string Plies = """
          plies {
            outer  glass-twill-163  0/90
            body   glass-twill-163  +/-45
            veil   carbon-veil-8    random
          }
        """;

    // Exact mensuration: the face of a cap is 2 pi R h; R 0.5 m, h 0.2 m gives 0.6283185 m2, and its rim has the radius 0.4 m.
    [Fact]
    public void A_cap_from_a_file_has_the_area_rim_and_depth_of_the_cap()
    {
        var plan = Plan("surface mesh \"cap.stl\" unit mm", File(Cap, 1000));
        Assert.Null(plan.Shape!.Trouble);
        Assert.Equal(0.6283185, plan.Geometry!.Area.SquareMeters, 0.6283185 * 5e-4);
        Assert.Equal(2 * Math.PI * 0.4, plan.Geometry.Rim.Meters, 2.6 * 5e-4);
        Assert.Equal(0.2, plan.Geometry.Depth.Meters, 1e-4);
        Assert.True(plan.Geometry.DoublyCurved);
        Assert.True(plan.Shape.IsMeasured);
    }

    [Fact]
    public void The_same_cap_is_the_same_cap_in_any_unit_and_as_a_profile()
    {
        var mm = Plan("surface mesh \"cap.stl\" unit mm", File(Cap, 1000)).Geometry!;
        var inches = Plan("surface mesh \"cap.stl\" unit in", File(Cap, 1000 / 25.4)).Geometry!;
        Assert.Equal(mm.Area.SquareMeters, inches.Area.SquareMeters, 1e-6);

        // Radius and height of a circle of radius 500 mm, from its lowest point.
        var points = Enumerable.Range(0, 60).Select(i => Math.SinCos(i * Math.Acos(0.6) / 59))
            .Select(at => FormattableString.Invariant($"point radius {500 * at.Sin:F6} mm height {300 - (500 * at.Cos):F6} mm"));
        var profile = Plan($"surface revolved {{ {string.Join("; ", points)} }}", null).Geometry!;
        Assert.Equal(0.6283185, profile.Area.SquareMeters, 0.6283185 * 5e-4);
        Assert.Equal(mm.Depth.Meters, profile.Depth.Meters, 1e-4);
    }

    // Strips of a unidirectional cloth lie edge to edge (common practice): 970 mm and 15 mm of trim on both sides are two rolls of 500 mm.
    [Fact]
    public void Strips_of_a_unidirectional_cloth_butt_in_the_drawing_as_in_the_cut_list()
    {
        const string text = """
            ud narrow-ud like glass-ud-250 {
              width 500 mm
            }

            part plank {
              surface flat 1200 mm x 970 mm
              plies {
                spine narrow-ud 0 trim 15 mm
              }
            }
            """;
        var model = Corpus.ModelOf(text, null);
        var plan = Planner.Plan(Assert.Single(model.Parts), model);
        Assert.Equal(1, Assert.Single(plan.Stack[0].Pieces).Joins);
        var pieces = PiecesToCut.Of(plan);
        Assert.Equal(2, pieces.Length);
        Assert.All(pieces, piece => Assert.Equal(0.5, piece.Outline.Across, 1e-9));
    }

    // An open box of 360 x 120 x 20 mm laid flat with 15 mm of trim: 430 x 190 mm less four squares of 35 mm. Plane geometry.
    [Fact]
    public void The_piece_of_a_box_is_drawn_as_the_cut_list_has_it_with_the_same_names()
    {
        var model = Corpus.ModelOf($"mould lid {{\n  surface box 360 mm x 120 mm x 20 mm\n  halves port starboard\n}}\npart lid {{\n  mould lid\n  trim 15 mm\n{Plies}\n}}\n", null);
        var plan = Planner.Plan(Assert.Single(model.Parts), model);
        var pieces = PiecesToCut.Of(plan);
        var cloths = pieces.Where(piece => piece.Ply is "outer" or "body").ToList();
        Assert.Equal(2, cloths.Count);
        Assert.All(cloths, piece =>
        {
            Assert.Equal(OutlineOrigin.Exact, piece.Origin);
            Assert.Equal((0.430 * 0.190) - (4 * 0.035 * 0.035), piece.Outline.SquareMetres, 1e-9);
            Assert.Equal(12, piece.Outline.Points.Length);
        });
        Assert.Equal(["A", "A*", "B", "B*"], ClothLayout.Of(plan, model, pieces, 1, offcuts: false)[0].Pieces.Select(piece => piece.Mark));
        var outer = plan.Stack.Single(line => line.Item.Name == "outer");
        Assert.Equal(outer.CutArea!.Value.Value.SquareMeters, 2 * cloths[0].Outline.SquareMetres, 1e-9);
    }

    // What the mould says comes first; a box made of numbers has sharp edges on paper, which nobody measured. A sphere of a cap bends as its radius: (150^2 + 60^2) / 120 mm.
    [Fact]
    public void The_radius_of_a_mould_is_what_it_says_else_what_was_measured()
    {
        var box = "surface box 360 mm x 120 mm x 20 mm";
        Assert.Equal((Length.FromMillimeters(6), true), EdgesOfMould.InsideRadius(Plan(box + "\n  radius 6 mm", null)));
        Assert.Equal((Angle.FromDegrees(3), true), EdgesOfMould.Draft(Plan(box + "\n  draft 3 deg", null)));
        Assert.Null(EdgesOfMould.InsideRadius(Plan(box, null)));
        Assert.Null(EdgesOfMould.Draft(Plan(box, null)));
        var cap = EdgesOfMould.InsideRadius(Plan("surface spherical-cap diameter 300 mm rise 60 mm", null))!.Value;
        Assert.False(cap.IsStated);
        Assert.Equal(217.5, cap.Radius.Millimeters, 1.0);
    }

    [Fact]
    public void A_region_keeps_a_part_of_it()
    {
        // Of the cap, what lies less than 0.1 m above its lowest point: a cap of half the height has half the area (2 pi R h).
        var plan = Plan("surface mesh \"cap.stl\" unit mm\n  region below z -100 mm", File(Cap, 1000));
        Assert.Equal(0.6283185 / 2, plan.Geometry!.Area.SquareMeters, 0.6283185 * 1e-3);
    }

    [Theory]
    [InlineData("surface mesh \"cap.stl\" unit mm\n  region above z 900 mm", ShapeTroubleKind.NothingLeft)]
    [InlineData("surface mesh \"cap.stl\" unit mm\n  region group deck", ShapeTroubleKind.NoSuchGroup)]
    [InlineData("surface mesh \"cap.stl\"", ShapeTroubleKind.Refused)]
    [InlineData("surface revolved { point radius 0 mm height 0 mm; point radius 100 mm height 50 mm; point radius 0 mm height 100 mm }", ShapeTroubleKind.Closed)]
    [InlineData("surface revolved { point radius 80 mm height 0 mm; point radius 80 mm height 0 mm }", ShapeTroubleKind.BadProfile)]
    public void What_gives_no_surface_says_why_and_leaves_a_gap(string surface, ShapeTroubleKind kind)
    {
        var plan = Plan(surface, File(Cap, 1000));
        Assert.Equal(kind, plan.Shape!.Trouble!.Kind);
        Assert.Null(plan.Shape.Model);
        Assert.Null(plan.Geometry);
        Assert.NotEmpty(plan.Gaps);
    }

    [Fact]
    public void A_file_that_is_not_there_or_is_cut_short_is_trouble_and_not_a_crash()
    {
        Assert.Equal(ShapeTroubleKind.NoFile, Plan("surface mesh \"cap.stl\" unit mm", null).Shape!.Trouble!.Kind);
        var whole = File(Cap, 1000).Bytes;
        foreach (var length in (int[])[0, 1, 83, 84, 100, whole.Length / 2, whole.Length - 1])
        {
            var plan = Plan("surface mesh \"cap.stl\" unit mm", new ShapeFile("cap.stl", whole[..length]));
            Assert.Equal(ShapeTroubleKind.Refused, plan.Shape!.Trouble!.Kind);
            Assert.NotNull(plan.Shape.Trouble.Refusal);
        }
    }

    // A pin-jointed net begun along two great circles of a sphere: on the diagonal great circle, at 45 degrees from the start, the exact net is
    // sheared by 16.113 degrees (w_uv = -sin w, integrated by us); a net of finite steps by a little more.
    [Fact]
    public void Cloth_on_a_sphere_is_sheared_as_the_continuum_says()
    {
        // A cap that ends 45 degrees from its middle: R 300 mm, rim 2 R sin 45, rise R (1 - cos 45).
        var plan = Plan("surface spherical-cap diameter 424.264 mm rise 87.868 mm", null);
        Assert.True(plan.Shape!.IsDeep);
        var straight = plan.Shape.Cloths.Single(cloth => cloth.Warp == 0);
        Assert.InRange(straight.Net.Value!.GreatestShear.Degrees, 14, 17.5);
        var askew = plan.Shape.Cloths.Single(cloth => Math.Abs(cloth.Warp) == 45);
        Assert.Equal(straight.Net.Value.GreatestShear.Degrees, askew.Net.Value!.GreatestShear.Degrees, 1.0);
        Assert.Equal(40, straight.Locking.Value.Degrees, 1e-9);
        Assert.Contains("default.locking-angle", straight.Locking.RestsOn);
    }

    [Fact]
    public void Nobody_looks_at_cloth_that_is_hardly_sheared()
    {
        var plan = Plan("surface spherical-cap diameter 300 mm rise 20 mm", null);
        Assert.False(plan.Shape!.IsDeep);
        Assert.Empty(plan.Shape.Cloths);
        Assert.DoesNotContain(plan.Assumptions, assumption => assumption.Key == "default.locking-angle");

        // And rightly so: half the angle of the cap is 15.2 degrees, where the exact net is sheared by less than at 30 degrees (7.5).
        Assert.InRange(plan.Shape.Drape(0)!.GreatestShear.Degrees, 0.1, 7.5);
    }

    [Fact]
    public void Pieces_have_the_area_of_the_surface_plus_the_trim()
    {
        var plan = Plan("surface mesh \"cap.stl\" unit mm", File(Cap, 1000), "trim 15 mm");
        var pieces = PiecesToCut.Of(plan);
        Assert.Equal(["outer", "body", "veil"], pieces.Select(piece => piece.Ply));
        Assert.Equal([OutlineOrigin.Draped, OutlineOrigin.Draped, OutlineOrigin.Flattened], pieces.Select(piece => piece.Origin));
        foreach (var piece in pieces)
        {
            // Cloth in shear covers less than it does flat, and a flattened cap keeps its area within its distortion.
            var net = piece.Outline.SquareMetres - (0.015 * 2 * Math.PI * 0.4);
            Assert.InRange(net / 0.6283185, 0.97, 1.12);
            Assert.Equal(piece.Ply == "veil", piece.Warp is null);
        }

        Assert.Equal(4, pieces[0].Notches.Length);
    }

    // On a hemisphere the exact net is sheared by more than 40 degrees before it comes to the rim (w_uv = -sin w), once in each quarter.
    [Fact]
    public void Darts_are_slits_from_the_rim_of_a_piece_that_wants_them()
    {
        const string bowl = "surface spherical-cap diameter 300 mm rise 145 mm";
        var whole = Assert.Single(PiecesToCut.Of(Plan(bowl, null, "trim 10 mm", "plies { outer glass-twill-163 0/90 }")));
        var slit = Assert.Single(PiecesToCut.Of(Plan(bowl, null, "trim 10 mm", "plies { outer glass-twill-163 0/90 darts }")));
        var depths = Plan(bowl, null).Shape!.Drape(0)!.Darts(Angle.FromDegrees(40)).Darts;
        Assert.Equal(4, depths.Length);

        // A wedge 2 mm wide at the net's rim is a triangle, and a little more where it runs on through the trim.
        var wedges = depths.Sum(dart => dart.Depth.Meters * 0.002 / 2);
        Assert.InRange(whole.Outline.SquareMetres - slit.Outline.SquareMetres, wedges, 6 * wedges);
    }

    [Fact]
    public void A_surface_that_faces_along_x_is_laid_along_y()
    {
        // The cap stood on its edge: what was z is x.
        var cap = Cap;
        var turned = new TriangleMesh([.. cap.Vertices.Select(at => new Point3(at.Z, at.X, at.Y))], cap.Triangles);
        var shape = Plan("surface mesh \"cap.stl\" unit mm", File(turned, 1000)).Shape!;
        Assert.Equal(new Point3(0, 1, 0), shape.Along);
        Assert.Equal(0.63, shape.Drape(0)!.CoveredArea.SquareMeters, 0.01);
    }

    [Fact]
    public void Pieces_of_plain_shapes_are_exact()
    {
        var flat = Assert.Single(PiecesToCut.Of(Plan("surface flat 300 mm x 200 mm", null, "trim 10 mm", "plies { outer glass-twill-163 0/90 }")));
        Assert.Equal(0.32 * 0.22, flat.Outline.SquareMetres, 1e-9);
        Assert.Equal(OutlineOrigin.Exact, flat.Origin);
        var disc = Assert.Single(PiecesToCut.Of(Plan("surface disc diameter 200 mm", null, "trim 10 mm", "plies { outer glass-twill-163 0/90 }")));
        Assert.Equal(Math.PI * 0.0121, disc.Outline.SquareMetres, 0.04 * 1e-2);
        var patch = PiecesToCut.Of(Plan("surface flat 300 mm x 200 mm", null, "trim 10 mm", "plies { outer glass-twill-163 0/90; hinge patch glass-twill-163 +/-45 size 60 mm x 40 mm }"))[1];
        Assert.Equal(0.06 * 0.04, patch.Outline.SquareMetres, 1e-9);

        // Askew on the roll: the box round a rectangle turned by 45 degrees.
        Assert.Equal(0.1 / Math.Sqrt(2), patch.Outline.Along, 1e-9);
    }

    [Fact]
    public void Halves_are_mirror_images_and_offcuts_go_first()
    {
        const string text = """
            mould lid {
              surface spherical-cap diameter 300 mm rise 60 mm
              halves left right
            }
            part lid {
              mould lid
              plies { outer glass-twill-163 +/-45 }
            }
            stock { glass-twill-163 offcut 500 mm x 480 mm lot "G7" }
            """;
        var model = Corpus.ModelOf(text, null);
        var plan = Planner.Plan(Assert.Single(model.Parts), model);
        var layout = Assert.Single(ClothLayout.Of(plan, model, PiecesToCut.Of(plan), 1, offcuts: true));
        Assert.Equal([1, 1], layout.Pieces.Select(piece => piece.Count));
        Assert.Equal(layout.Pieces[0].Outline.SquareMetres, layout.Pieces[1].Outline.SquareMetres, 1e-12);
        Assert.Equal(2, layout.Stock.Length);
        var nest = layout.Lay(1, 1_000_000);
        Assert.Empty(nest.Missing);
        Assert.Equal(0, nest.Placements.Single(place => place.Stock == 0).Stock);
        Assert.Equal(1, nest.Uses.Single(use => use.Stock == 1).Pieces);
        Assert.Single(ClothLayout.Of(plan, model, PiecesToCut.Of(plan), 1, offcuts: false)[0].Stock);
    }

    [Fact]
    public void A_start_and_a_direction_turn_the_cloth()
    {
        const string surface = "surface half-ellipsoid 300 mm x 200 mm x 60 mm";
        var middle = Plan(surface, null).Shape!.Drape(0)!;
        var turned = Plan(surface, null, "drape along y").Shape!.Drape(0)!;
        Assert.True(middle.Flat!.Along > middle.Flat.Across);
        Assert.True(turned.Flat!.Along < turned.Flat.Across);
        var moved = Plan(surface, null, "drape at-x 60 mm at-y 0 mm").Shape!;
        Assert.Equal(0.06, moved.Start.X, 2e-3);
        Assert.True(moved.Drape(0)!.GreatestShear > middle.GreatestShear);
    }

    private static TriangleMesh Cap => SurfaceMeshes.SphericalCap(Length.FromMeters(0.8), Length.FromMeters(0.2), Length.FromMillimeters(0.05));

    // The triangles of a surface are kept; where its region line stands is not: a line typed above it moves it.
    [Fact]
    public void What_is_kept_of_a_surface_says_nothing_of_the_text_it_was_in()
    {
        foreach (var (above, line) in (ReadOnlySpan<(string, int)>)[("", 2), ("# one\n  # two\n  ", 4), ("", 2)])
        {
            var region = Plan($"{above}surface spherical-cap diameter 310 mm rise 41 mm\n  region above z 50 mm", null).Shape!.Trouble!.Region!;
            Assert.Equal((line, "above z 50 mm"), (region.Where.Start.Line, region.Written));
            Assert.Equal("above z 5 cm", Plan($"{above}surface spherical-cap diameter 310 mm rise 41 mm\n  region above z 5 cm", null).Shape!.Trouble!.Region!.Written);
        }
    }

    private static ShapeFile File(TriangleMesh mesh, double perMetre)
    {
        var bytes = new byte[84 + (50 * mesh.Triangles.Length)];
        Encoding.ASCII.GetBytes("cap").CopyTo(bytes, 0);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(80), mesh.Triangles.Length);
        for (var i = 0; i < mesh.Triangles.Length; i++)
        {
            var at = 84 + (50 * i) + 12;
            var triangle = mesh.Triangles[i];
            foreach (var corner in (int[])[triangle.A, triangle.B, triangle.C])
            {
                var place = mesh.Vertices[corner] * perMetre;
                foreach (var coordinate in (double[])[place.X, place.Y, place.Z])
                {
                    BinaryPrimitives.WriteSingleLittleEndian(bytes.AsSpan(at), (float)coordinate);
                    at += 4;
                }
            }
        }

        return new ShapeFile("cap.stl", bytes);
    }

    private static Plan Plan(string surface, ShapeFile? file, string more = "", string plies = Plies)
    {
        var model = Corpus.ModelOf($"mould lid {{\n  {surface}\n}}\npart lid {{\n  mould lid\n  {more}\n{plies}\n}}\n", file);
        return Planner.Plan(Assert.Single(model.Parts), model);
    }
}
