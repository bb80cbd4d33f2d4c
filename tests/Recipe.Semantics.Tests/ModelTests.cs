using Recipe.Model;
using UnitsNet.Units;

namespace Recipe.Semantics.Tests;

/// <summary>One recipe of the invented shop, read whole.</summary>
public class ModelTests
{
    private static readonly Part Lid = Given.Sound(Invented.Lid).Model.Parts.Single();

    [Fact]
    public void The_mould_is_found_with_its_surface_and_release()
    {
        var mould = Lid.Mould;
        Assert.NotNull(mould);
        var cap = Assert.IsType<SphericalCapShape>(mould.Surface!.Value);
        Assert.Equal(300, cap.Diameter.Millimeters, 9);
        Assert.Equal(40, cap.Rise.Millimeters, 9);
        Assert.Equal("spherical-cap diameter 300 mm rise 40 mm", mould.Surface.Written);
        Assert.Equal(MouldState.Seasoned, mould.State!.Value);
        Assert.Equal("epoxy-glass-tooling", mould.MadeOf!.Name);
        Assert.Equal(["carnauba-wax", "pva-film"], mould.Release.Select(r => r.Agent.Name));
        Assert.Equal(4, mould.Release[0].Coats!.Value);
        Assert.Equal(Basis.Stated, mould.Release[0].Coats!.Basis);
        Assert.Equal(30, mould.Release[0].Wait!.Value.Minutes, 9);
        Assert.Equal(Basis.Book, mould.Release[0].Wait!.Basis);
        Assert.Equal(60, mould.Release[1].Dry!.Value.Minutes, 9);
    }

    [Fact]
    public void A_mould_without_a_heat_limit_has_that_of_its_material()
    {
        Assert.Equal(70, Lid.Mould!.HeatLimit!.Value.DegreesCelsius, 6);
        Assert.Equal(Basis.Book, Lid.Mould.HeatLimit.Basis);
    }

    [Fact]
    public void Figures_keep_what_was_written_and_where()
    {
        Assert.Equal(140, Lid.TargetMass!.Value.Grams, 9);
        Assert.Equal("140 g", Lid.TargetMass.Written);
        Assert.Equal(10, Lid.TargetTolerance!.Value.Grams, 9);
        Assert.Equal("10 g", Lid.TargetTolerance.Written);
        Assert.Equal("140 g", Lid.TargetMass.Where!.Value.Text);
        Assert.Equal("10 g", Lid.TargetTolerance!.Where!.Value.Text);
        Assert.Equal("20 mm", Lid.Overlap!.Written);
        Assert.Equal("lap", Lid.Overlap.Where!.Value.Text);
    }

    [Fact]
    public void A_patch_lies_on_the_ply_it_names_and_the_rest_keeps_its_order()
    {
        Assert.Equal(["outer", "veil", "body", "hinge", "stiff", "inner", "boss"], Lid.Stack.Select(s => s.Name));
        var hinge = Assert.IsType<PlyItem>(Lid.Stack[3]);
        Assert.True(hinge.IsPatch);
        Assert.Equal(2, hinge.Count);
        Assert.Equal("body", hinge.After);
        Assert.Equal("30 mm from rim", hinge.At);
        Assert.Equal(60, hinge.SizeLength!.Value.Millimeters, 9);
        Assert.Equal(40, hinge.SizeWidth!.Value.Millimeters, 9);
        Assert.Equal(5, Assert.IsType<CoreItem>(Lid.Stack[4]).Thickness!.Value.Millimeters, 9);
        Assert.Equal(4, Assert.IsType<InsertItem>(Lid.Stack[6]).Count);
    }

    [Fact]
    public void Plies_have_their_own_allowances_or_those_of_the_part()
    {
        var body = Assert.IsType<PlyItem>(Lid.Stack[2]);
        Assert.Equal(15, body.Overlap!.Value.Millimeters, 9);
        Assert.Equal("15 mm", body.Overlap.Written);
        Assert.Equal(15, body.Trim!.Value.Millimeters, 9);
        Assert.Equal(new Orientation(OrientationKind.Pair, 45, -45), body.Orientation!.Value);
        Assert.Equal(20, Assert.IsType<PlyItem>(Lid.Stack[0]).Overlap!.Value.Millimeters, 9);
        Assert.Equal(Orientation.Random, Assert.IsType<PlyItem>(Lid.Stack[1]).Orientation!.Value);
    }

    [Fact]
    public void The_bag_takes_the_default_of_a_class_and_says_so()
    {
        var bag = Lid.Bag!;
        Assert.Equal(["nylon-peel-ply", "pin-prick-film", "breather-300", "nylon-bag-film"], bag.Layers.Select(l => l.Material.Name));
        Assert.Equal([true, true, false, true], bag.Layers.Select(l => l.ChosenByDefault));
        Assert.Equal(2, bag.Layers[2].Count);
        Assert.Equal(Perforation.PinPrick, bag.Layers[1].Perforation!.Value);
        Assert.Equal("sealant-12", bag.SealantTape!.Material.Name);
        Assert.True(bag.SealantTape.ChosenByDefault);
        Assert.Equal("flange, far side", Assert.Single(bag.Ports).At);
        Assert.Equal(15, bag.Time!.Value.Minutes, 9);
    }

    [Fact]
    public void Wet_out_vacuum_cure_and_finish_are_read()
    {
        Assert.Equal(18, Lid.WetOut!.Room!.Value.DegreesCelsius, 6);
        Assert.Equal("18 degC", Lid.WetOut.Room.Written);
        Assert.Equal(22, Lid.WetOut.RoomHigh!.Value.DegreesCelsius, 6);
        Assert.Equal(new Content(ContentBasis.ResinByWeight, 0.45), Lid.WetOut.Content!.Value);
        Assert.Equal("45 % by weight", Lid.WetOut.Content.Written);
        Assert.Equal([100.0, 80.0], Lid.WetOut.PotMasses.Select(p => Math.Round(p.Value.Grams, 9)));
        Assert.Equal(new TimeOnly(9, 0), Lid.WetOut.Start!.Value);

        Assert.Equal(25, Lid.Vacuum!.Draw!.Value.Value.As(PressureUnit.InchOfMercury), 3);
        Assert.Equal(VacuumConvention.BelowAmbient, Lid.Vacuum.Draw.Value.Convention);
        Assert.Equal("25 inHg below ambient", Lid.Vacuum.Draw.Written);
        Assert.Equal(10, Lid.Vacuum.Within!.Value.Minutes, 9);
        Assert.Equal(30, Lid.Vacuum.LeakCheck!.RiseAtMost!.Value.Millibars, 9);
        Assert.True(Lid.Vacuum.LeakCheck.Isolated);
        Assert.Equal("after gel", Lid.Vacuum.Off);

        Assert.Equal(
            [CureAction.Hold, CureAction.Ramp, CureAction.Hold, CureAction.Cool, CureAction.Vent],
            Lid.Cure!.Steps.Select(s => s.Action));
        Assert.True(Lid.Cure.Steps[0].UnderVacuum);
        Assert.Equal(0.5, Lid.Cure.Steps[1].Rate!.Value.DegreesCelsiusPerMinute, 9);
        Assert.Equal(Basis.Assumed, Lid.Cure.Steps[2].Duration!.Basis);
        Assert.Equal("not tried yet", Lid.Cure.Steps[2].Duration!.Source);
        Assert.Equal(Basis.Stated, Lid.Cure.Steps[0].Duration!.Basis);

        Assert.Equal(["trim", "abrade", "inspect"], Lid.Finish.Select(f => f.Verb));
        Assert.Equal(["", "80 grit", "no dry spot over 5 mm"], Lid.Finish.Select(f => f.Text));
    }

    [Fact]
    public void The_process_is_computed_from_the_blocks()
    {
        Assert.Equal(Process.Bagged, Lid.Process.Value);
        Assert.Equal(Basis.Stated, Lid.Process.Basis);
        Assert.Equal("bag", Lid.Process.Where!.Value.Text);
        var bare = Given.Sound("part plate { title \"Plate\" }").Model.Parts.Single();
        Assert.Equal(Process.Hand, bare.Process.Value);
        Assert.Equal(Basis.Assumed, bare.Process.Basis);
        var said = Given.Sound("part plate {\n  process prepreg\n  bag { peel-ply }\n}").Model.Parts.Single();
        Assert.Equal(Process.Prepreg, said.Process.Value);
        Assert.Equal(Process.Infused, Given.Sound("part plate {\n  infuse { path 300 mm }\n  bag { peel-ply }\n}").Model.Parts.Single().Process.Value);
    }

    [Fact]
    public void Waivers_keep_their_reason_and_day()
    {
        var waiver = Assert.Single(Lid.Waivers);
        Assert.Equal("RC6004", waiver.Code);
        Assert.Equal("small bag, gauge on the far side", waiver.Because);
        Assert.Equal(new DateOnly(2027, 1, 1), waiver.Until);
    }

    [Fact]
    public void A_resin_line_is_whole()
    {
        var resin = Lid.Resin!;
        Assert.Equal(new MixRatio(100, 30, MixBasis.Weight), resin.Mix!.Value);
        Assert.Equal(1130, resin.ResinDensity!.Value.KilogramsPerCubicMeter, 6);
        Assert.Equal(980, resin.HardenerDensity!.Value.KilogramsPerCubicMeter, 6);
        var pot = resin.PotLife!;
        Assert.Equal(60, pot.Value.Time.Minutes, 9);
        Assert.Equal(23, pot.Value.At.DegreesCelsius, 6);
        Assert.Equal(100, pot.Value.In!.Value.Grams, 9);
        Assert.Equal("60 min at 23 degC in 100 g", pot.Written);
        Assert.Equal(Basis.Book, pot.Basis);
        Assert.Equal(24, resin.GlassTransition!.Value.After!.Value.For.Hours, 9);
        Assert.Equal(16, resin.PostCure!.Value.For.Hours, 9);
    }

    [Fact]
    public void Two_percent_of_resin_is_a_ratio_of_100_to_2()
    {
        var coat = Assert.Single(Lid.Coats);
        Assert.Equal(new MixRatio(100, 2, MixBasis.Weight), coat.Material.Mix!.Value);
        Assert.Equal(500, coat.ArealWeight!.Value.GramsPerSquareMeter, 9);
        var mix = Given.Sound("resin a { mix 20 % of mix by weight }").Model.Materials["a"];
        Assert.Equal(25, Assert.IsType<ResinSystem>(mix).Mix!.Value.Hardener, 9);
    }

    [Fact]
    public void A_hardener_replaces_the_lines_of_its_resin()
    {
        var part = Given.Sound("part a { resin two-speed-epoxy with fast }").Model.Parts.Single();
        Assert.Equal("fast", part.Resin!.Hardener);
        Assert.Equal(20, part.Resin.PotLife!.Value.Time.Minutes, 9);
        Assert.Equal(Chemistry.Epoxy, part.Resin.Chemistry);
        Assert.Equal(["fast", "slow"], part.Resin.Hardeners.Select(h => h.Hardener));
        Assert.Equal(40, part.Resin.Hardeners[1].PotLife!.Value.Time.Minutes, 9);
        Assert.Equal(["missing-value"], Given.Codes("part a { resin two-speed-epoxy }"));
        Assert.Equal(["unknown-name"], Given.Codes("part a { resin two-speed-epoxy with fasst }"));
    }

    [Fact]
    public void A_source_stands_for_the_lines_of_its_block_that_have_none()
    {
        var cloth = Assert.IsType<Reinforcement>(Given.Sound(
            """
            fabric my-cloth {
              source assumed "held in the hand"
              areal-weight 200 g/m2
              width 1 m   source "tape measure"
            }
            """).Model.Materials["my-cloth"]);
        Assert.Equal(Basis.Assumed, cloth.ArealWeight!.Basis);
        Assert.Equal("held in the hand", cloth.ArealWeight.Source);
        Assert.Equal(Basis.Stated, cloth.Width!.Basis);
        Assert.Equal("tape measure", cloth.Width.Source);
    }

    [Fact]
    public void A_source_on_the_first_line_of_a_block_stands_for_the_block()
    {
        var model = Given.Sound(
            """
            resin a source assumed "heard of" {
              mix 100:30 by weight
              pot-life 40 min at 23 degC   source "data sheet"
            }
            part p {
              wet-out source "yesterday" {
                room 20 degC
              }
            }
            """).Model;
        var resin = (ResinSystem)model.Materials["a"];
        Assert.Equal((Basis.Assumed, "heard of"), (resin.Mix!.Basis, resin.Mix.Source));
        Assert.Equal((Basis.Stated, "data sheet"), (resin.PotLife!.Basis, resin.PotLife.Source));
        Assert.Equal("yesterday", model.Parts[0].WetOut!.Room!.Source);
    }

    [Fact]
    public void A_mould_that_stays_in_the_part_and_an_axis_are_read()
    {
        var model = Given.Sound("mould hull { stays-in-part yes }\npart patch {\n  mould hull\n  axis \"along the keel\"\n}").Model;
        Assert.True(model.Parts[0].Mould!.StaysInPart);
        Assert.Equal("along the keel", model.Parts[0].Axis);
        Assert.False(Lid.Mould!.StaysInPart);
        Assert.Null(Lid.Axis);
    }

    [Fact]
    public void Shop_stock_prices_and_builds_are_read()
    {
        var model = Given.Sound(
            """
            shop ours {
              altitude 250 m
              room 18 to 22 degC
              pump 2.5 cfm   ultimate 20 mbar absolute
              scale 0.1 g
              oven limit 80 degC
              currency EUR
              units both
              paper letter
            }
            stock {
              glass-twill-163         12 m2    lot "G7"   received 2026-01-10
              slow-laminating-epoxy   2.4 kg   lot "E31"  opened 2026-02-01   expires 2027-02-01
              m5-nut                  200
            }
            prices {
              glass-twill-163         6.40 EUR/m2   on 2026-04-01
              m5-nut                  0.12 EUR
            }
            part hatch-lid { title "Lid" }
            build hatch-lid no 3 on 2026-05-14 {
              room 18 degC
              mass 148 g
              defect "dry spot at the hinge"
              hands two
            }
            """).Model;
        var shop = model.Shop!;
        Assert.Equal(250, shop.Altitude!.Value.Meters, 9);
        Assert.Equal(2.5, shop.Pump!.Value.CubicFeetPerMinute, 6);
        Assert.Equal(20, shop.PumpUltimate!.Value.Millibars, 9);
        Assert.Equal(80, shop.OvenLimit!.Value.DegreesCelsius, 6);
        Assert.Equal((UnitSystem.Both, PaperSize.Letter, "EUR"), (shop.Units, shop.Paper, shop.Currency));
        Assert.Equal([12.0, 2.4, 200.0], model.Stock.Select(s => s.Amount!.Value.Si));
        Assert.Equal("2.4 kg", model.Stock[1].Written);
        Assert.Equal(new DateOnly(2027, 2, 1), model.Stock[1].Expires);
        Assert.Equal(6.40m, model.Prices[0].Price.Value.Amount);
        Assert.Equal("m2", model.Prices[0].Price.Value.Unit!.Symbol);
        Assert.Equal(new DateOnly(2026, 4, 1), model.Prices[0].Price.Value.On);
        Assert.Null(model.Prices[1].Price.Value.Unit);
        var build = Assert.Single(model.Builds);
        Assert.Equal((3, new DateOnly(2026, 5, 14)), (build.Number, build.On));
        Assert.Equal(["room", "mass", "defect", "hands"], build.Lines.Select(l => l.Word));
        Assert.Equal(["18 degC", "148 g", "dry spot at the hinge", "two"], build.Lines.Select(l => l.Text));
    }

    [Theory]
    [InlineData("flat 400 mm x 300 mm", typeof(FlatShape))]
    [InlineData("disc diameter 200 mm", typeof(DiscShape))]
    [InlineData("cylinder diameter 6 in length 3 ft 4 in", typeof(CylinderShape))]
    [InlineData("cone diameter 120 mm to 0 mm length 200 mm", typeof(ConeShape))]
    [InlineData("cone diameter 12 in to 40 mm length 200 mm", typeof(ConeShape))]
    [InlineData("half-ellipsoid 400 mm x 200 mm x 60 mm", typeof(HalfEllipsoidShape))]
    [InlineData("paraboloid diameter 400 mm rise 60 mm", typeof(ParaboloidShape))]
    [InlineData("box 200 mm x 120 mm x 60 mm", typeof(BoxShape))]
    [InlineData("area 0.42 m2 length 900 mm width 500 mm depth 80 mm", typeof(GivenAreaShape))]
    public void Every_shape_is_read(string surface, Type shape)
    {
        var mould = Given.Sound($"mould m {{\n  surface {surface}\n}}").Model.Moulds["m"];
        Assert.IsType(shape, mould.Surface!.Value);
        Assert.Equal(surface, mould.Surface.Written);
    }

    [Fact]
    public void A_cone_has_both_diameters()
    {
        var cone = Assert.IsType<ConeShape>(Given.Sound("mould m { surface cone diameter 120 mm to 0 mm length 200 mm }").Model.Moulds["m"].Surface!.Value);
        Assert.Equal((120.0, 0.0, 200.0), (Math.Round(cone.BaseDiameter.Millimeters, 9), cone.TopDiameter.Millimeters, Math.Round(cone.Length.Millimeters, 9)));
    }

    /// <summary>Offices of the United States print on letter (ANSI/ASME Y14.1, size A), all others on A4 (ISO 216); a shop that says which is believed.</summary>
    [Theory]
    [InlineData("units us", PaperSize.Letter)]
    [InlineData("units us; paper a4", PaperSize.A4)]
    [InlineData("units metric", PaperSize.A4)]
    [InlineData("units both", PaperSize.A4)]
    [InlineData("scale 0.1 g", PaperSize.A4)]
    [InlineData("paper letter", PaperSize.Letter)]
    public void Paper_follows_the_units_until_it_is_named(string lines, PaperSize paper) =>
        Assert.Equal(paper, Given.Sound($"shop a {{\n  {lines}\n}}").Model.Shop!.Paper);
}
