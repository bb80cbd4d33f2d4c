using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of cores speak, and when they do not.</summary>
public class CoreTests
{
    private static Tray Sandwich(string core, string line = "", string kind = "") => new()
    {
        Above = $"core shop-core like pvc-foam-75 {{ {core}source \"data sheet\" }}\n"
            + "core shop-honeycomb { family honeycomb; density 48 kg/m3; thickness 5 mm; compressive-strength 2 MPa; heat-limit 150 degC; "
            + $"{(kind.Length > 0 ? kind + "; " : "")}source \"data sheet\" }}",
        Plies = $"outer glass-twill-163 0/90; heart core {(kind.Length > 0 ? "shop-honeycomb" : "shop-core")} thickness 5 mm {line}; inner glass-twill-163 0/90",
    };

    // The tray is 400 x 300 mm; 2 % is what a tape measure is out by. A sheet may lie either way.
    [Theory]
    [InlineData("size 400 mm x 300 mm", false)]
    [InlineData("size 300 mm x 400 mm", false)]
    [InlineData("size 408 mm x 306 mm", false)]
    [InlineData("size 410 mm x 250 mm", true)]
    [InlineData("size 350 mm x 308 mm", true)]
    [InlineData("covers 50 %", false)]
    public void A_core_is_no_larger_than_its_part(string size, bool fires) => Limits.Says(
        "core-past-edge",
        Tray.Hand with { Plies = $"outer glass-twill-163 0/90; middle core pvc-foam-75 {size} at \"centred\"; inner glass-twill-163 0/90" },
        fires);

    [Theory]
    [InlineData("cut plain; ", "", true)]
    [InlineData("cut slit; ", "", false)]
    [InlineData("", "", false)]
    [InlineData("cut plain; ", "size 350 mm x 199 mm at \"centred, edges cut to 30 degrees\"", false)]
    [InlineData("cut plain; ", "size 350 mm x 201 mm at \"centred, edges cut to 30 degrees\"", true)]
    public void Air_stays_under_a_wide_plain_sheet(string cut, string size, bool fires) => Limits.Says("air-under-core", Sandwich(cut, size), fires);

    [Fact]
    public void Flowing_resin_fills_honeycomb()
    {
        Bench.Fires("wet-honeycomb", Sandwich("", kind: "cell 3 mm"), Severity.Warning);
        Bench.Silent("wet-honeycomb", Sandwich("", kind: "resin-uptake 150 g/m2"));
        var sandwich = Sandwich("", kind: "resin-uptake 150 g/m2");
        Bench.Fires("wet-honeycomb", Tray.Infused with { Above = sandwich.Above, Plies = sandwich.Plies }, Severity.Error);
    }

    // Two plies of 163 g/m2 make a skin of a good 0.3 mm under a bag, one makes half of that.
    [Theory]
    [InlineData("cell 6 mm", "", true)]
    [InlineData("cell 5 mm", "", false)]
    [InlineData("cell 6 mm", " x2", false)]
    public void Wide_cells_print_through_a_thin_skin(string cell, string repeats, bool fires)
    {
        var sandwich = Sandwich("", kind: cell + "; resin-uptake 150 g/m2");
        Limits.Says("cell-print", sandwich with { Plies = sandwich.Plies.Replace("0/90", "0/90" + repeats, StringComparison.Ordinal) }, fires, Severity.Advice);
    }

    // The thinner skin counts, whichever side it is on: one ply of 163 g/m2 is 0.15 mm, three are 0.46 mm. A patch is no skin.
    [Theory]
    [InlineData("outer glass-twill-163 0/90 x3; {core}; inner glass-twill-163 0/90", true)]
    [InlineData("outer glass-twill-163 0/90; {core}; inner glass-twill-163 0/90 x3", true)]
    [InlineData("outer glass-twill-163 0/90 x3; {core}; inner glass-twill-163 0/90 x3", false)]
    [InlineData("outer glass-twill-163 0/90; inside glass-twill-163 0/90; {core}; inner glass-twill-163 0/90 x3", false)]
    [InlineData("outer glass-twill-163 0/90 x3; {core}; inner glass-twill-163 0/90; pad glass-twill-163 0/90 size 60 mm x 60 mm at \"under the cleat\"", true)]
    public void Cells_print_through_the_thinner_skin(string plies, bool fires)
    {
        var sandwich = Sandwich("", kind: "cell 6 mm; resin-uptake 150 g/m2");
        Limits.Says("cell-print", sandwich with { Plies = plies.Replace("{core}", "heart core shop-honeycomb thickness 5 mm", StringComparison.Ordinal) }, fires, Severity.Advice);
    }

    [Fact]
    public void A_plate_on_the_skin_keeps_cells_from_printing()
    {
        var sandwich = Sandwich("", kind: "cell 6 mm; resin-uptake 150 g/m2");
        Bench.Silent("cell-print", sandwich with { Bag = "peel-ply; release-film perforated; breather; aluminium-caul; bag-film" });
        Assert.Contains(Bench.Of(Sandwich("", kind: "resin-uptake 150 g/m2").ToString(), checks: Bench.Only("cell-print")).Report.NotChecked, n => n.Missing.Contains("width of its cells", StringComparison.Ordinal));
    }

    // Of the foams that carry load, the one as thick as the honeycomb was to be.
    [Fact]
    public void Foam_of_the_nearest_thickness_is_offered_for_honeycomb()
    {
        var more = "core thick-foam { family pvc-foam; density 80 kg/m3; thickness 20 mm; compressive-strength 1.4 MPa; heat-limit 80 degC; source \"data sheet\" }\n"
            + "core near-foam { family pvc-foam; density 80 kg/m3; thickness 5 mm; compressive-strength 1.4 MPa; heat-limit 80 degC; source \"data sheet\" }\n"
            + "core soft-foam { family soft-foam; density 30 kg/m3; thickness 5 mm; compressive-strength 0.2 MPa; heat-limit 80 degC; source \"data sheet\" }\n";
        var sandwich = Sandwich("", kind: "cell 3 mm");
        var fix = Assert.Single(Bench.Fires("wet-honeycomb", sandwich with { Above = more + sandwich.Above }, Severity.Warning).Fixes);
        Assert.Contains("near-foam", fix.Title, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("chamfer 61 deg", true)]
    [InlineData("chamfer 60 deg", false)]
    [InlineData("", false)]
    public void The_edge_of_a_core_is_cut_aslant(string chamfer, bool fires) =>
        Limits.Says("square-core-edge", Sandwich("", "size 300 mm x 200 mm at \"centred\" " + chamfer), fires);

    [Theory]
    [InlineData("heat-stabilised no; ", 61, true)]
    [InlineData("heat-stabilised no; ", 60, false)]
    [InlineData("heat-stabilised yes; ", 65, false)]
    [InlineData("", 65, false)]
    public void Foam_is_warmed_before_it_is_shut_in(string stabilised, int hottest, bool fires) => Limits.Says(
        "core-outgases",
        Sandwich(stabilised) with { Cure = FormattableString.Invariant($"hold 20 degC for 24 h; ramp 10 degC/h to {hottest} degC; hold {hottest} degC for 6 h; cool to 30 degC; demould") },
        fires,
        Severity.Advice);

    [Theory]
    [InlineData("family balsa; moisture 13 %; ", "", true)]
    [InlineData("family balsa; moisture 12 %; ", "", false)]
    [InlineData("family balsa; ", "store-humidity 66 %", true)]
    [InlineData("family balsa; ", "store-humidity 65 %", false)]
    [InlineData("moisture 20 %; ", "store-humidity 80 %", false)]
    public void Wood_is_dried_before_it_is_shut_in(string core, string shop, bool fires) => Limits.Says("damp-core", Sandwich(core) with { Shop = shop }, fires);

    [Theory]
    [InlineData("gap 1.1 mm", true)]
    [InlineData("gap 1 mm", false)]
    [InlineData("", false)]
    public void Pieces_of_a_core_fit_in_an_infusion(string gap, bool fires)
    {
        var sandwich = Sandwich("", $"size 190 mm x 290 mm x2 at \"side by side, edges cut to 30 degrees\" {gap}");
        Limits.Says("open-core-joints", Tray.Infused with { Above = sandwich.Above, Plies = sandwich.Plies }, fires);
        Bench.Silent("open-core-joints", sandwich);
    }

    [Theory]
    [InlineData("drill \"6 mm for the cleat bolts\"", "", Severity.Error)]
    [InlineData("drill \"6 mm for the cleat bolts\"", "size 300 mm x 200 mm at \"centred, edges cut to 30 degrees\"", Severity.Warning)]
    [InlineData("drill \"6 mm for the cleat bolts, in the solid rim\"", "", null)]
    [InlineData("drill \"3 mm drain\"", "", null)]
    public void A_bolt_through_a_core_wants_a_hard_point(string finish, string size, Severity? severity) =>
        Limits.Says("drilled-core", Sandwich("", size) with { Finish = finish }, severity is not null, severity ?? Severity.Error);

    // The shop's own block before one of the book.
    [Fact]
    public void A_hard_point_of_the_shop_is_offered_first()
    {
        var sandwich = Sandwich("") with { Finish = "drill \"6 mm for the cleat bolts\"" };
        var own = sandwich with { Above = "insert z-pad { mass 10 g; stuff glass; source \"offcuts\" }\ninsert a-pad { mass 10 g; stuff oak; source \"offcuts\" }\n" + sandwich.Above };
        Assert.Contains("z-pad", Assert.Single(Bench.Fires("drilled-core", own, Severity.Error).Fixes).Title, StringComparison.Ordinal);
    }

    [Fact]
    public void A_hard_point_carries_the_bolt() =>
        Bench.Silent("drilled-core", new Tray { Plies = "a glass-twill-163 0/90; b core pvc-foam-75; c insert m5-nut at \"under the cleat\"; d glass-twill-163 0/90", Finish = "drill \"6 mm for the bolt\"" });

    // AC 43.13-1B chapter 3: exposed core is sealed.
    [Theory]
    [InlineData("trim", "", true)]
    [InlineData("trim; seal edges", "", false)]
    [InlineData("wash", "", false)]
    [InlineData("trim", "size 300 mm x 200 mm at \"centred, edges cut to 30 degrees\"", false)]
    public void A_cut_edge_of_a_core_is_sealed(string finish, string size, bool fires) =>
        Limits.Says("open-core-edge", Sandwich("", size) with { Finish = finish }, fires);
}
