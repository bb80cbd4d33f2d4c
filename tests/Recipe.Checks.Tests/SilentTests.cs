namespace Recipe.Checks.Tests;

/// <summary>What looks wrong and is not: trade practice about which a checker that wants to be believed says nothing. Common practice.</summary>
public class SilentTests
{
    private static readonly Tray HighShop = new() { Shop = "altitude 3000 m" };

    [Fact]
    public void A_film_straight_on_the_laminate_when_nothing_is_bonded_later() =>
        Bench.Clean(new Tray { Bag = "release-film perforated; breather; bag-film", Finish = "trim; weigh" });

    [Fact]
    public void A_peel_ply_straight_to_the_breather() => Bench.Clean(new Tray { Bag = "peel-ply; breather; bag-film", Finish = "paint colour white" });

    [Fact]
    public void A_single_ply() => Bench.Clean(new Tray { Plies = "only glass-twill-163 0/90" });

    [Fact]
    public void An_unsymmetric_stack() => Bench.Clean(new Tray { Plies = "outer carbon-twill-200 0/90; inner glass-twill-163 +/-45" });

    [Fact]
    public void Five_inches_on_a_foam_core() => Bench.Clean(new Tray
    {
        Plies = "outer glass-twill-163 0/90; core-1 core pvc-foam-75 thickness 5 mm; inner glass-twill-163 0/90",
        Vacuum = "draw 5 inHg below ambient; leak-check 5 min rise at-most 1 inHg isolated",
    });

    [Fact]
    public void Twenty_inches_at_three_thousand_metres_where_there_is_no_more() => Bench.Clean(HighShop with
    {
        Vacuum = "draw 20 inHg below ambient within 10 min; leak-check 5 min rise at-most 30 mbar isolated",
        PartLines = "use structural",
    });

    [Fact]
    public void Wax_alone_on_a_seasoned_mould() =>
        Bench.Clean(new Tray { MouldLines = "state seasoned", Release = "carnauba-wax coats 2 wait 30 min" });

    [Fact]
    public void No_release_on_a_polypropylene_sheet() => Bench.Clean(Tray.Hand with { MadeOf = "polypropylene-sheet", Release = "" });

    [Fact]
    public void A_mat_with_seven_tenths_of_resin() =>
        Bench.Clean(Tray.Hand with { Resin = "laminating-polyester", Plies = "body glass-mat-300 random", WetOut = "resin-content 70 % by weight" });

    [Fact]
    public void A_stitched_mat_with_epoxy() => Bench.Clean(Tray.Hand with { Plies = "body glass-stitched-mat-300 random" });

    [Fact]
    public void Strips_of_unidirectional_cloth_edge_to_edge() => Bench.Clean(Tray.Hand with { Plies = "outer glass-ud-200 0; inner glass-ud-200 90" });

    [Fact]
    public void A_fast_hardener_with_several_small_pots() =>
        Bench.Clean(Tray.Hand with { Resin = "fast-laminating-epoxy", WetOut = "pace 40 min/m2; pot 60 g; pot 60 g; pot 60 g" });

    [Fact]
    public void An_infusion_hardener_that_lives_for_hours() =>
        Bench.Clean(Tray.Infused with { Above = "resin lives-long like infusion-epoxy { pot-life 20 h at 20 degC in 500 g source \"data sheet\" }", Resin = "lives-long" });

    [Fact]
    public void A_knife_trim_while_the_part_is_green() =>
        Bench.Clean(Tray.Hand with { Cure = "hold 20 degC for 10 h; demould", Finish = "trim \"green, with a knife\"" });

    [Fact]
    public void An_envelope_bag_and_no_catch_pot_on_an_infusion() => Bench.Clean(Tray.Infused with { Bag = Tray.Infused.Bag + "; envelope yes" });

    [Fact]
    public void Two_felts_and_no_solid_film() => Bench.Clean(new Tray { Bag = "peel-ply; bleeder; breather; bag-film" });

    [Fact]
    public void A_styrenated_resin_under_six_tenths_of_a_bar() => Bench.Clean(new Tray
    {
        Resin = "laminating-polyester",
        Bag = "peel-ply; breather; bag-film; time 2 min",
        WetOut = "pace 15 min/m2; mixing 1 min",
        Vacuum = "draw 0.6 bar below ambient within 2 min; leak-check 5 min rise at-most 30 mbar isolated",
    });

    [Fact]
    public void A_peel_ply_left_on_as_a_cover() => Bench.Clean(new Tray { Finish = "demould; trim; step \"leave the peel ply on until it is bonded\"" });

    [Fact]
    public void A_solid_film_smaller_than_the_laminate_so_that_the_edges_breathe() =>
        Bench.Clean(new Tray { Bag = "peel-ply; release-film solid-film smaller 15 mm; bleeder; breather; bag-film" });

    [Fact]
    public void A_caul_over_carbon_with_a_film_between() =>
        Bench.Clean(new Tray { Plies = "outer carbon-twill-200 0/90", Bag = "release-film perforated; caul; breather; bag-film" });

    [Fact]
    public void A_part_without_a_target() => Bench.Clean(new Tray());
}
