using Recipe.Model;
using UnitsNet.Units;

namespace Recipe.Semantics.Tests;

/// <summary>The hatch lid of the samples with the shop it uses and the shipped book: what its author wrote, value by value.</summary>
public class HatchLidTests
{
    private static readonly RecipeModel Model = Shipped.Bind("samples/hatch-lid.recipe").Model;
    private static readonly Part Lid = Model.Parts[0];

    [Fact]
    public void The_file_holds_a_part_a_variant_and_two_builds()
    {
        Assert.Equal(["hatch-lid", "hatch-lid-no-veil"], Model.Parts.Select(p => p.Name));
        Assert.Equal([null, "hatch-lid"], Model.Parts.Select(p => p.VariantOf));
        Assert.Equal([1, 2], Model.Builds.Select(b => b.Number));
        Assert.Equal([new DateOnly(2026, 5, 6), new DateOnly(2026, 5, 14)], Model.Builds.Select(b => b.On));
        Assert.Equal(["room", "mixed", "mass", "rise", "defect"], Model.Builds[1].Lines.Select(l => l.Word));
        Assert.Equal("dry spot at the hinge, 2 mm", Model.Builds[1].Lines[4].Text);
        Assert.Empty(Model.UsedParts);
    }

    [Fact]
    public void The_shop_comes_from_the_used_file()
    {
        var shop = Model.Shop!;
        Assert.Equal(("ours", "samples/shop.recipe"), (shop.Name, shop.Where.Source.Name));
        Assert.Equal(250, shop.Altitude!.Value.Meters, 9);
        Assert.Equal((19.0, 22.0, 17.0), (C(shop.Room!.Value), C(shop.RoomHigh!.Value), C(shop.Night!.Value)));
        Assert.Equal(0.55, shop.Humidity!.Value, 12);
        Assert.Equal(1, shop.Laminators!.Value);
        Assert.Equal(15, shop.Pace!.Value.PerSquareMetre.Minutes, 9);
        Assert.Equal(30, shop.Loss!.Value.Grams, 9);
        Assert.Equal("2.5 cfm", shop.Pump!.Written);
        Assert.Equal(2.5 * 4.719474e-4, shop.Pump.Value.CubicMetersPerSecond, 1e-9); // cubic foot per minute, NIST SP 811 B.8
        Assert.Equal((20.0, 0.1, 80.0), (Math.Round(shop.PumpUltimate!.Value.Millibars, 9), Math.Round(shop.ScaleResolution!.Value.Grams, 9), C(shop.OvenLimit!.Value)));
        Assert.Equal(("EUR", UnitSystem.Metric, PaperSize.A4), (shop.Currency, shop.Units, shop.Paper));
        Assert.Equal(23, Model.Stock.Length);
        Assert.Equal(31, Model.Prices.Length);
        var tape = Model.Stock.Single(s => s.Material == "glass-tape-200");
        Assert.Equal((40.0, "40 m", "T1"), (tape.Amount!.Value.Si, tape.Written, tape.Lot));
        var point = Model.Prices.Single(p => p.Material == "glass-hard-point").Price.Value;
        Assert.Equal((1.80m, "EUR", null), (point.Amount, point.Currency, point.Unit));
    }

    [Fact]
    public void The_mould_is_read()
    {
        var mould = Lid.Mould!;
        var cap = Assert.IsType<SphericalCapShape>(mould.Surface!.Value);
        Assert.Equal((300.0, 40.0), (Math.Round(cap.Diameter.Millimeters, 9), Math.Round(cap.Rise.Millimeters, 9)));
        Assert.Equal(75, mould.Flange!.Value.Millimeters, 9);
        Assert.Equal(("epoxy-glass-tooling", true), (mould.MadeOf!.Name, mould.MadeOf.FromBook));
        Assert.Equal((70.0, Basis.Stated, "post-cured at 80 degC, 2026-01"), (C(mould.HeatLimit!.Value), mould.HeatLimit.Basis, mould.HeatLimit.Source));
        Assert.Equal((60.0, Basis.Assumed), (C(mould.MadeOf.HeatLimit!.Value), mould.MadeOf.HeatLimit.Basis));
        Assert.Equal((8.0, 3.0, 6), (Math.Round(mould.InsideRadius!.Value.Millimeters, 9), Math.Round(mould.Draft!.Value.Degrees, 9), mould.Pulls!.Value));
        Assert.Equal(MouldState.Seasoned, mould.State!.Value);
        Assert.Equal(["carnauba-wax", "pva-film"], mould.Release.Select(r => r.Agent.Name));
        Assert.Equal([5, 3], mould.Release.Select(r => r.Coats!.Value));
        Assert.Equal([60.0, 45.0], mould.Release.Select(r => Math.Round(r.Dry!.Value.Minutes, 9)));
        Assert.Equal([ReleaseKind.Wax, ReleaseKind.LiquidFilm], mould.Release.Select(r => r.Agent.Kind!.Value));
        Assert.False(mould.IsPattern || mould.IsMandrel || mould.StaysInPart);
    }

    [Fact]
    public void The_head_of_the_part_is_read()
    {
        Assert.Equal("Kayak hatch lid", Lid.Label);
        Assert.Equal((Process.Bagged, Basis.Stated, "bagged"), (Lid.Process.Value, Lid.Process.Basis, Lid.Process.Written));
        Assert.Equal("0 degrees runs along the hinge line", Lid.Axis);
        Assert.Equal((126.0, 9.0, 4), (Math.Round(Lid.TargetMass!.Value.Grams, 9), Math.Round(Lid.TargetTolerance!.Value.Grams, 9), Lid.Quantity));
        Assert.Equal((15.0, 20.0, 45.0), (Math.Round(Lid.Trim!.Value.Millimeters, 9), Math.Round(Lid.Overlap!.Value.Millimeters, 9), C(Lid.Service!.Value)));
        Assert.Equal(PartUse.Cosmetic, Lid.Use!.Value);
        var coat = Assert.Single(Lid.Coats);
        Assert.Equal(("epoxy-surface-coat", ResinRole.SurfaceCoat, 300.0), (coat.Material.Name, coat.Material.Role, Math.Round(coat.ArealWeight!.Value.GramsPerSquareMeter, 9)));
        Assert.Equal("mould", Lid.MouldWhere!.Value.Source.Slice(Lid.MouldWhere.Value.Source.LineSpan(Lid.MouldWhere.Value.Start.Line)).Trim().Split(' ')[0]);
        Assert.Null(Lid.Surface);
        Assert.Null(Lid.Infusion);
        Assert.Null(Lid.Join);
    }

    [Fact]
    public void The_resin_of_the_book_is_whole()
    {
        var resin = Lid.Resin!;
        Assert.Equal(("slow-laminating-epoxy", Chemistry.Epoxy, null), (resin.Name, resin.Chemistry, resin.Hardener));
        Assert.Equal((new MixRatio(100, 30, MixBasis.Weight), Basis.Book), (resin.Mix!.Value, resin.Mix.Basis));
        Assert.Equal((1130.0, Basis.Assumed), (Math.Round(resin.ResinDensity!.Value.KilogramsPerCubicMeter, 6), resin.ResinDensity.Basis));
        Assert.Equal((0.6, 25.0), (Math.Round(resin.Viscosity!.Value.PascalSeconds, 9), C(resin.ViscosityAt!.Value)));
        Assert.Equal("60 min at 23 degC in 100 g", resin.PotLife!.Written);
        Assert.Equal((150.0, 23.0, null), (Math.Round(resin.FilmLife!.Value.Time.Minutes, 9), C(resin.FilmLife.Value.At), resin.FilmLife.Value.In));
        Assert.Equal((150.0, 450.0), (Math.Round(resin.LargestPot!.Value.Grams, 9), Math.Round(resin.HeatOfReaction!.Value.JoulesPerKilogram / 1000, 9)));
        Assert.Equal((45.0, 20.0, 24.0), (C(resin.GlassTransition!.Value.Tg), C(resin.GlassTransition.Value.After!.Value.At), Math.Round(resin.GlassTransition.Value.After!.Value.For.Hours, 9)));
        Assert.Equal(("kamal-sourour", Basis.Assumed), (resin.Kinetics!.Model, resin.Kinetics.Basis));
        Assert.Equal(7.24e5 / 60, resin.Kinetics.Constants["a1"], 6); // 1/min in 1/s
        Assert.Equal((6014.0, 1.0, 2.0), (resin.Kinetics.Constants["e1-over-r"], resin.Kinetics.Constants["m"], resin.Kinetics.Constants["n"]));
    }

    [Fact]
    public void The_stack_lies_in_laying_order()
    {
        Assert.Equal(["outer", "veil", "body", "back", "hinge", "inner"], Lid.Stack.Select(s => s.Name));
        Assert.Equal(
            ["glass-plain-80", "carbon-veil-8", "glass-twill-280", "glass-twill-280", "glass-tape-200", "glass-plain-105"],
            Lid.Stack.Select(s => Assert.IsType<PlyItem>(s).Material.Name));
        Assert.Equal(["0/90", "random", "+/-45", "0/90", "0/90", "0/90"], Lid.Stack.Select(s => ((PlyItem)s).Orientation!.Value.ToString()));
        var body = (PlyItem)Lid.Stack[2];
        Assert.Equal((15.0, "15 mm", "lap"), (Math.Round(body.Overlap!.Value.Millimeters, 9), body.Overlap.Written, body.Overlap.Where!.Value.Text));
        Assert.Equal((280.0, "defines this generic entry; your data sheet wins"), (Math.Round(body.Material.ArealWeight!.Value.GramsPerSquareMeter, 9), body.Material.ArealWeight.Source));
        Assert.Equal((new Content(ContentBasis.ResinByWeight, 0.42), Basis.Assumed), (body.Material.BaggedContent!.Value, body.Material.BaggedContent.Basis));
        Assert.Equal((new Content(ContentBasis.ResinByWeight, 0.5), Basis.Book), (body.Material.HandContent!.Value, body.Material.HandContent.Basis));
        Assert.Equal(("e-glass", 2550.0), (body.Material.Fibre!.Name, Math.Round(body.Material.Fibre.Density!.Value.KilogramsPerCubicMeter, 6)));
        var hinge = (PlyItem)Lid.Stack[4];
        Assert.Equal((true, 2, "back", "30 mm from rim"), (hinge.IsPatch, hinge.Count, hinge.After, hinge.At));
        Assert.Equal((60.0, 40.0), (Math.Round(hinge.SizeLength!.Value.Millimeters, 9), Math.Round(hinge.SizeWidth!.Value.Millimeters, 9)));
    }

    [Fact]
    public void Wet_out_and_bag_are_read()
    {
        var wet = Lid.WetOut!;
        Assert.Equal((20.0, 20.0, null), (C(wet.Room!.Value), C(wet.ResinTemperature!.Value), wet.RoomHigh));
        Assert.Equal((new Content(ContentBasis.ResinByWeight, 0.45), 3.0, 0.1, new TimeOnly(9, 0)), (wet.Content!.Value, Math.Round(wet.Mixing!.Value.Minutes, 9), Math.Round(wet.Spare!.Value, 9), wet.Start!.Value));
        Assert.Equal((null, null), (wet.Pace, wet.Loss));
        var bag = Lid.Bag!;
        Assert.Equal(["polyester-peel-ply", "pin-prick-film", "breather-150", "nylon-bag-film"], bag.Layers.Select(l => l.Material.Name));
        Assert.Equal([LayerClass.PeelPly, LayerClass.ReleaseFilm, LayerClass.Breather, LayerClass.BagFilm], bag.Layers.Select(l => l.Class));
        Assert.Equal([true, true, false, true], bag.Layers.Select(l => l.ChosenByDefault));
        Assert.Equal(Perforation.PinPrick, bag.Layers[1].Perforation!.Value);
        Assert.Equal(("general-sealant-tape", true), (bag.SealantTape!.Material.Name, bag.SealantTape.ChosenByDefault));
        Assert.Equal(("vacuum-port", "on the flange, on a tail of breather"), (bag.Ports[0].Material.Name, bag.Ports[0].At));
        Assert.Equal(("pvc-hose", "catch-pot-2l", "on the flange, opposite the port"), (bag.Hose!.Material.Name, bag.CatchPot!.Material.Name, bag.GaugeAt));
        Assert.Equal((4, 25.0, false), (bag.Pleats!.Value, Math.Round(bag.Time!.Value.Minutes, 9), bag.IsEnvelope));
    }

    [Fact]
    public void Vacuum_cure_and_finish_are_read()
    {
        var vacuum = Lid.Vacuum!;
        Assert.Equal(VacuumConvention.BelowAmbient, vacuum.Draw!.Value.Convention);
        Assert.Equal(25 * 3386.389, vacuum.Draw.Value.Value.Pascals, 0.1); // inch of mercury, conventional, NIST SP 811 B.8
        Assert.Equal((10.0, 3.0, 30.0, "after gel"), (Math.Round(vacuum.Within!.Value.Minutes, 9), Math.Round(vacuum.Settle!.Value.Minutes, 9), Math.Round(vacuum.Hold!.Value.Hours, 9), vacuum.Off));
        Assert.Equal((5.0, 30.0, true), (Math.Round(vacuum.LeakCheck!.Duration!.Value.Minutes, 9), Math.Round(vacuum.LeakCheck.RiseAtMost!.Value.Millibars, 9), vacuum.LeakCheck.Isolated));
        var cure = Lid.Cure!;
        Assert.Equal(
            [CureAction.Hold, CureAction.Ramp, CureAction.Hold, CureAction.Cool, CureAction.Vent, CureAction.Debag, CureAction.Demould],
            cure.Steps.Select(s => s.Action));
        Assert.Equal([true, true, true, false, false, false, false], cure.Steps.Select(s => s.UnderVacuum));
        Assert.Equal((0.3, 50.0), (Math.Round(cure.Steps[1].Rate!.Value.DegreesCelsiusPerMinute, 9), C(cure.Steps[1].Temperature!.Value)));
        Assert.Equal((30.0, 1.0), (C(cure.Steps[3].Temperature!.Value), Math.Round(cure.Steps[3].Rate!.Value.DegreesCelsiusPerMinute, 9)));
        Assert.Equal((2, "warm-air box with its own over-temperature cut-out"), (cure.Thermocouples!.Value, cure.Oven));
        Assert.Equal(["wash", "step", "trim", "weigh", "inspect", "seal", "abrade", "prime", "paint"], Lid.Finish.Select(f => f.Verb));
        Assert.Equal(("edges", "240 grit", "", "colour white"), (Lid.Finish[5].Text, Lid.Finish[6].Text, Lid.Finish[7].Text, Lid.Finish[8].Text));
    }

    [Fact]
    public void The_variant_differs_in_title_target_and_veil_only()
    {
        var bare = Model.Parts[1];
        Assert.Equal(("Kayak hatch lid, no veil", 122.0), (bare.Label, Math.Round(bare.TargetMass!.Value.Grams, 9)));
        Assert.Equal(["outer", "body", "back", "hinge", "inner"], bare.Stack.Select(s => s.Name));
        Assert.Equal(Lid.Stack.Where(s => s.Name != "veil"), bare.Stack);
        Assert.Equal((Lid.Axis, Lid.Resin, Lid.Mould, Lid.Quantity), (bare.Axis, bare.Resin, bare.Mould, bare.Quantity));
        Assert.Equal(Lid.Vacuum, bare.Vacuum);
        Assert.Equal(Lid.Cure!.Steps.AsEnumerable(), bare.Cure!.Steps);
        Assert.Equal(Lid.Finish.AsEnumerable(), bare.Finish);
    }

    private static double C(UnitsNet.Temperature temperature) => Math.Round(temperature.As(TemperatureUnit.DegreeCelsius), 9);
}
