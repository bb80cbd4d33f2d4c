using Recipe.Text.Findings;

namespace Recipe.Checks.Tests;

/// <summary>When the checks of how plies lie speak, and when they do not.</summary>
public class PlyListTests
{
    private const string Axis = "axis \"0 degrees runs along the long side\"";

    private const string Carbon = """
        fibre shop-carbon {
          density 1.78 g/cm3; modulus 230 GPa; transverse-modulus 15 GPa; shear-modulus 20 GPa; poisson 0.2
          expansion -0.5 ppm/K; transverse-expansion 10 ppm/K; source "data sheet"
        }
        ud shop-ud { fibre shop-carbon; areal-weight 200 g/m2; width 60 cm; pace 5 min/m2; source "data sheet" }
        resin shop-epoxy like slow-laminating-epoxy { density cured 1.15 g/cm3; modulus 3 GPa; poisson 0.35; expansion 60 ppm/K; source "data sheet" }
        """;

    private static readonly Tray Strips = Tray.Hand with { PartLines = Axis };

    private static readonly Tray Warmed = Strips with
    {
        Above = Carbon,
        Resin = "shop-epoxy",
        Cure = "hold 20 degC for 24 h; ramp 10 degC/h to 50 degC; hold 50 degC for 16 h; cool to 30 degC; demould",
    };

    // Jones, Mechanics of Composite Materials: a stack that is the same from both sides does not bend when it cools.
    [Theory]
    [InlineData("a shop-ud 0; b shop-ud 90", true)]
    [InlineData("a shop-ud 0; b shop-ud 90; c shop-ud 0", false)]
    [InlineData("a shop-ud 0; b shop-ud 90; c shop-ud 90; d shop-ud 0", false)]
    [InlineData("a shop-ud 0; b shop-ud 90 x2; c shop-ud 0", false)]
    [InlineData("a shop-ud 0 x2; b shop-ud 90; c shop-ud 0", true)]
    [InlineData("a shop-ud 0", false)]
    public void A_flat_part_bows_where_its_list_differs_from_side_to_side(string plies, bool fires) =>
        Limits.Says("unsymmetric-flat", Warmed with { Plies = plies }, fires);

    [Fact]
    public void A_stack_cured_in_the_room_or_on_a_shell_does_not_bow()
    {
        const string plies = "a shop-ud 0; b shop-ud 90";
        Bench.Silent("unsymmetric-flat", Warmed with { Plies = plies, Cure = "hold 20 degC for 48 h; demould" });
        Bench.Silent("unsymmetric-flat", Warmed with { Plies = plies, Surface = "spherical-cap diameter 300 mm rise 60 mm" });
    }

    [Theory]
    [InlineData("a glass-ud-200 30; b glass-ud-200 30", true)]
    [InlineData("a glass-ud-200 30; b glass-ud-200 -30", false)]
    [InlineData("a glass-ud-200 0; b glass-ud-200 90", false)]
    [InlineData("a glass-twill-163 +/-45", false)]
    [InlineData("a glass-ud-200 45; b glass-ud-200 -45; c patch glass-ud-200 45 size 60 mm x 60 mm at \"under the hinge\"", false)]
    public void Fibre_at_an_angle_wants_its_mirror_image(string plies, bool fires) =>
        Limits.Says("unbalanced-angles", Strips with { Plies = plies }, fires, Severity.Advice);

    [Fact]
    public void Of_two_halves_one_is_the_mirror_image() =>
        Bench.Silent("unbalanced-angles", Strips with { Plies = "a glass-ud-200 30", MouldLines = "halves left right", Join = "manner wet-in-wet; overlap 20 mm; within 40 min" });

    [Theory]
    [InlineData("a glass-ud-200 0", true)]
    [InlineData("a glass-ud-200 0; b glass-ud-200 90", false)]
    [InlineData("a glass-ud-200 30; b glass-ud-200 -60", true)]
    [InlineData("a glass-twill-163 0/90; b glass-twill-163 +/-45", false)]
    [InlineData("a glass-mat-300 random", false)]
    public void Fibre_one_way_wants_an_axis(string plies, bool fires) =>
        Limits.Says("angle-without-axis", Tray.Hand with { Plies = plies, Resin = "laminating-polyester" }, fires);

    [Fact]
    public void Round_parts_and_tubes_have_their_axis()
    {
        var tray = Tray.Hand with { Plies = "a glass-ud-200 0" };
        Bench.Silent("angle-without-axis", tray with { Surface = "disc diameter 200 mm" });
        Bench.Silent("angle-without-axis", tray with { Surface = "cylinder diameter 60 mm length 300 mm" });
        Bench.Silent("angle-without-axis", tray with { PartLines = Axis });
    }

    [Theory]
    [InlineData("hidden carbon-veil-8 30", true)]
    [InlineData("hidden carbon-veil-8 random", false)]
    [InlineData("hidden glass-twill-163 30", false)]
    public void A_veil_has_no_direction(string ply, bool fires) =>
        Limits.Says("angle-on-random", new Tray { Plies = "outer glass-twill-163 0/90; " + ply, PartLines = Axis }, fires, Severity.Advice);

    [Theory]
    [InlineData("glass-twill-163 90/0", true)]
    [InlineData("glass-twill-163 90", true)]
    [InlineData("glass-twill-163 +/-45", false)]
    [InlineData("warp-cloth 90/0", false)]
    public void A_balanced_weave_is_the_same_along_and_across(string ply, bool fires) => Limits.Says(
        "same-weave-turned",
        Tray.Hand with
        {
            Above = "fabric warp-cloth like glass-twill-163 { warp-share 60 %; source \"data sheet\" }",
            Plies = $"outer glass-twill-163 0/90; heart {ply.Split(' ')[0]} 0/90; back {ply}",
        },
        fires,
        Severity.Advice);

    [Fact]
    public void The_face_ply_may_lie_as_it_looks_best() =>
        Bench.Silent("same-weave-turned", Tray.Hand with { Plies = "face glass-twill-163 90/0; back glass-twill-163 0/90" });

    // Common practice: half an inch at the least.
    [Theory]
    [InlineData("overlap 12 mm", "", Severity.Warning)]
    [InlineData("overlap 13 mm", "", null)]
    [InlineData("overlap 1/2 in", "", null)]
    [InlineData("overlap 5 mm", "use cosmetic", Severity.Advice)]
    public void Pieces_of_woven_cloth_overlap_by_half_an_inch(string overlap, string use, Severity? severity) => Limits.Says(
        "short-join-overlap",
        Tray.Hand with { PartLines = use, Plies = $"outer glass-twill-163 0/90 {overlap} join-lines 1; inner glass-twill-163 0/90" },
        severity is not null,
        severity ?? Severity.Warning);

    [Fact]
    public void Whole_pieces_and_strips_edge_to_edge_need_no_overlap()
    {
        Bench.Silent("short-join-overlap", Tray.Hand with { PartLines = "overlap 0 mm" });
        Bench.Silent("short-join-overlap", Strips with { Plies = "a glass-ud-200 0 overlap 0 mm join-lines 1" });
    }

    [Theory]
    [InlineData("stagger 24 mm", true)]
    [InlineData("stagger 25 mm", false)]
    [InlineData("stagger 1 in", false)]
    public void Join_lines_are_staggered_by_an_inch(string stagger, bool fires) => Limits.Says(
        "joins-stacked",
        Tray.Hand with { PartLines = stagger, Plies = "a glass-twill-163 0/90 join-lines 1 overlap 20 mm; b glass-twill-163 0/90 join-lines 1 overlap 20 mm" },
        fires);

    [Fact]
    public void One_joined_ply_has_nothing_to_stagger() =>
        Bench.Silent("joins-stacked", Tray.Hand with { PartLines = "stagger 1 mm", Plies = "a glass-twill-163 0/90 join-lines 1 overlap 20 mm; b glass-twill-163 0/90" });

    [Theory]
    [InlineData("step 5.9 mm", "", Severity.Warning)]
    [InlineData("step 6 mm", "", null)]
    [InlineData("step 1/4 in", "", null)]
    [InlineData("step 0 mm", "", null)]
    [InlineData("step 3 mm", "use cosmetic", Severity.Advice)]
    public void A_ply_ends_six_millimetres_inside_the_one_below(string step, string use, Severity? severity) => Limits.Says(
        "steep-drop",
        Tray.Hand with { PartLines = use, Plies = $"outer glass-twill-163 0/90; inner glass-twill-163 0/90 {step}" },
        severity is not null,
        severity ?? Severity.Warning);

    // Twenty thicknesses of cloth of 800 g/m2, which cures to more than half a millimetre, are more than 10 mm.
    [Theory]
    [InlineData("use structural", true)]
    [InlineData("", false)]
    public void Thick_cloth_that_carries_load_ends_slower(string use, bool fires) => Limits.Says(
        "steep-drop",
        Tray.Hand with
        {
            Above = "fabric thick-cloth like glass-twill-163 { areal-weight 800 g/m2; source \"weighed\" }",
            PartLines = use,
            Plies = "outer thick-cloth 0/90; inner thick-cloth 0/90 step 8 mm",
        },
        fires);

    [Theory]
    [InlineData("trim 9 mm", "trim", true)]
    [InlineData("trim 10 mm", "trim", false)]
    [InlineData("trim 3/8 in", "trim", false)]
    [InlineData("trim 0 mm", "wash", false)]
    [InlineData("", "trim", false)]
    public void A_trimmed_part_runs_ten_millimetres_past_its_line(string trim, string finish, bool fires) =>
        Limits.Says("no-trim-allowance", Tray.Hand with { PartLines = trim, Finish = finish }, fires);
}
