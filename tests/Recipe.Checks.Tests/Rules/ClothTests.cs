using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of cloth and of what it is laid with speak, and when they do not.</summary>
public class ClothTests
{
    private const string Metals = "insert plate { mass 5 g; stuff aluminium; source \"weighed\" }\ninsert steel-one { mass 5 g; stuff steel; source \"weighed\" }";

    private const string Aramid = """
        fibre shop-aramid { density 1.44 g/cm3; source "data sheet" }
        fabric shop-cloth like glass-twill-163 { fibre shop-aramid; source "data sheet" }
        """;

    [Theory]
    [InlineData("polyester", "slow-laminating-epoxy", true)]
    [InlineData("epoxy", "slow-laminating-epoxy", false)]
    [InlineData("any", "slow-laminating-epoxy", false)]
    [InlineData("epoxy", "laminating-polyester", true)]
    [InlineData("polyester", "laminating-polyester", false)]
    public void The_finish_on_the_fibre_suits_the_resin(string sizing, string resin, bool fires) => Limits.Says(
        "wrong-sizing",
        Tray.Hand with { Above = $"fabric sized like glass-twill-163 {{ sizing {sizing}; source \"data sheet\" }}", Plies = "outer sized 0/90", Resin = resin },
        fires);

    [Theory]
    [InlineData("outer shop-cloth 0/90; inner glass-twill-163 0/90", "abrade 240 grit", "", true)]
    [InlineData("outer shop-cloth 0/90; inner glass-twill-163 0/90", "wash", "", false)]
    [InlineData("outer glass-twill-163 0/90; inner shop-cloth 0/90", "abrade 240 grit", "", false)]
    [InlineData("outer glass-twill-163 0/90; inner shop-cloth 0/90", "abrade 240 grit", "mandrel yes", true)]
    public void Aramid_is_not_sanded(string plies, string finish, string mould, bool fires) => Limits.Says(
        "aramid-sanded", Tray.Hand with { Above = Aramid, Plies = plies, Finish = finish, MouldLines = mould }, fires, Severity.Advice);

    // Common practice: aluminium and plain steel against carbon are eaten; stainless steel and titanium are not.
    [Theory]
    [InlineData("aluminium", "carbon-twill-200", true)]
    [InlineData("steel", "carbon-twill-200", true)]
    [InlineData("stainless", "carbon-twill-200", false)]
    [InlineData("titanium", "carbon-twill-200", false)]
    [InlineData("aluminium", "glass-twill-163", false)]
    public void Carbon_eats_light_metal(string stuff, string cloth, bool fires) => Limits.Says(
        "carbon-on-metal",
        Tray.Hand with { Above = $"insert plate {{ mass 5 g; stuff {stuff}; source \"weighed\" }}", Plies = $"a {cloth} 0/90; b insert plate at \"under the hinge\"; c {cloth} 0/90" },
        fires);

    // What lies side by side is parted from the carbon together, and what lies beyond a core does not touch.
    [Theory]
    [InlineData("a carbon-twill-200 0/90; b insert plate at \"fore\"; c insert plate at \"aft\"; d carbon-twill-200 0/90")]
    [InlineData("a carbon-twill-200 0/90; b insert plate at \"fore\"; c carbon-twill-200 0/90; d insert plate at \"aft\"; e carbon-twill-200 0/90")]
    [InlineData("a carbon-twill-200 0/90; b insert plate at \"fore\"; x core pvc-foam-75; c insert plate at \"aft\"; d carbon-twill-200 0/90")]
    [InlineData("a glass-twill-163 0/90; b insert plate at \"fore\"; c insert steel-one at \"aft\"; d carbon-twill-200 0/90")]
    public void Glass_around_each_metal_settles_it(string plies) => Bench.Settles(
        "carbon-on-metal",
        (Tray.Hand with { Above = Metals, Plies = plies }).ToString());

    [Theory]
    [InlineData("a carbon-twill-200 0/90; b core pvc-foam-75; c insert plate at \"aft\"; d core pvc-foam-75; e carbon-twill-200 0/90")]
    [InlineData("a glass-twill-163 0/90; b insert plate at \"aft\"; c core pvc-foam-75; e carbon-twill-200 0/90")]
    public void A_core_between_parts_them(string plies) => Bench.Silent("carbon-on-metal", Tray.Hand with { Above = Metals, Plies = plies });

    [Fact]
    public void No_glass_is_offered_where_lines_say_what_they_lie_on() => Assert.Empty(Bench.Fires(
        "carbon-on-metal",
        Tray.Hand with { Above = Metals, Plies = "a carbon-twill-200 0/90; b insert plate at \"aft\"; c carbon-twill-200 0/90 after b" },
        Severity.Warning).Fixes);

    [Theory]
    [InlineData("401 g/m2", "radius 29 mm", true)]
    [InlineData("401 g/m2", "radius 30 mm", false)]
    [InlineData("400 g/m2", "radius 8 mm", false)]
    [InlineData("301 g/m2; weave plain", "radius 29 mm", true)]
    [InlineData("300 g/m2; weave plain", "radius 8 mm", false)]
    public void Heavy_cloth_wants_a_radius(string weight, string radius, bool fires) => Limits.Says(
        "cloth-too-stiff",
        Tray.Hand with
        {
            Above = $"fabric shop-cloth like glass-twill-163 {{ areal-weight {weight}; width 120 cm; source \"weighed\" }}",
            Surface = "spherical-cap diameter 300 mm rise 60 mm",
            MouldLines = radius,
            Plies = "outer shop-cloth 0/90",
        },
        fires);

    [Theory]
    [InlineData("41 % by weight", true)]
    [InlineData("42 % by weight", false)]
    [InlineData("50 % by weight", false)]
    public void Hands_get_cloth_no_drier_than_two_fifths(string content, bool fires) =>
        Limits.Says("drier-than-hands", Tray.Hand with { WetOut = "resin-content " + content }, fires);

    [Fact]
    public void A_bag_gets_it_drier() => Bench.Silent("drier-than-hands", new Tray { WetOut = "resin-content 38 % by weight" });

    [Theory]
    [InlineData("221 g/m2", "use cosmetic", "", true)]
    [InlineData("220 g/m2", "use cosmetic", "", false)]
    [InlineData("300 g/m2", "", "", false)]
    [InlineData("300 g/m2", "use cosmetic", "paint colour white", false)]
    public void A_heavy_weave_shows_pinholes(string weight, string use, string finish, bool fires) => Limits.Says(
        "pinholes-expected",
        new Tray
        {
            Above = $"fabric shop-cloth like glass-twill-163 {{ areal-weight {weight}; source \"weighed\" }}",
            Plies = "a shop-cloth 0/90; b glass-twill-163 0/90",
            PartLines = use,
            Finish = finish,
        },
        fires,
        Severity.Advice);

    [Theory]
    [InlineData("drill \"4 mm for the hinge bolts\"", "a glass-twill-163 0/90 x2", true)]
    [InlineData("drill \"4 mm for the hinge bolts\"", "a glass-twill-163 0/90 x12", false)]
    [InlineData("drill \"3 mm vent\"", "a glass-twill-163 0/90 x2", false)]
    [InlineData("drill \"4 mm for the hinge bolts\"", "a glass-twill-163 0/90 x2; pad patch glass-twill-163 0/90 size 60 mm x 60 mm at \"under the hinge\"", false)]
    public void A_bolt_wants_a_pad_in_thin_laminate(string finish, string plies, bool fires) =>
        Limits.Says("bare-hole", Tray.Hand with { Finish = finish, Plies = plies }, fires);

    [Theory]
    [InlineData("shop-cloth", "humidity 61 %", true)]
    [InlineData("shop-cloth", "humidity 60 %", false)]
    [InlineData("glass-twill-163", "humidity 80 %", false)]
    public void Aramid_is_laid_in_dry_air(string cloth, string air, bool fires) =>
        Limits.Says("damp-fibre", Tray.Hand with { Above = Aramid, Plies = $"outer {cloth} 0/90", WetOut = air }, fires, Severity.Advice);

    // 200 g/m2 of glass, 2.55 g/cm3: 0.078 mm of fibre; with 36 to 55 % of resin at 1.15 g/cm3 between 0.176 and 0.291 mm.
    [Theory]
    [InlineData("0.11 mm", true)]
    [InlineData("0.12 mm", false)]
    [InlineData("0.25 mm", false)]
    [InlineData("0.38 mm", false)]
    [InlineData("0.40 mm", true)]
    public void A_thickness_goes_with_its_weight(string thickness, bool fires) => Limits.Says(
        "thickness-disagrees",
        Tray.Hand with { Above = $"fabric shop-cloth like glass-twill-163 {{ areal-weight 200 g/m2; thickness {thickness}; source \"weighed\" }}", Plies = "outer shop-cloth 0/90" },
        fires);

    [Theory]
    [InlineData("14 g/m2", true)]
    [InlineData("15 g/m2", false)]
    [InlineData("1200 g/m2", false)]
    [InlineData("1201 g/m2", true)]
    [InlineData("5.8 oz/yd2", false)]
    public void Woven_cloth_comes_in_certain_weights(string weight, bool fires) => Limits.Says(
        "odd-cloth-weight",
        Tray.Hand with { Above = $"fabric shop-cloth like glass-twill-163 {{ areal-weight {weight}; source \"weighed\" }}", Plies = "outer shop-cloth 0/90" },
        fires);

    [Theory]
    [InlineData("1210 mm", true)]
    [InlineData("1190 mm", false)]
    public void A_piece_is_not_three_times_as_long_as_the_part(string length, bool fires) => Limits.Says(
        "size-slip",
        Tray.Hand with { Plies = $"outer glass-twill-163 0/90; pad patch glass-twill-163 0/90 size {length} x 60 mm at \"under the hinge\"" },
        fires);

    [Theory]
    [InlineData("thick-cloth 0/90 x13", true)]
    [InlineData("thick-cloth 0/90 x12", false)]
    [InlineData("glass-plain-25 0/90 x20", false)]
    public void A_dozen_wet_plies_go_under_one_bag(string plies, bool fires) => Limits.Says(
        "too-many-plies-wet",
        new Tray { Above = "fabric thick-cloth like glass-twill-163 { areal-weight 290 g/m2; source \"weighed\" }", Surface = "flat 200 mm x 150 mm", Plies = "a " + plies },
        fires,
        Severity.Advice);

    [Theory]
    [InlineData("use structural", "a carbon-veil-8 random x6", true)]
    [InlineData("use cosmetic", "a carbon-veil-8 random x6", false)]
    [InlineData("use structural", "a carbon-veil-8 random; b glass-twill-163 0/90", false)]
    public void A_veil_carries_nothing(string use, string plies, bool fires) =>
        Limits.Says("veil-for-strength", new Tray { PartLines = use, Plies = plies }, fires);
}
