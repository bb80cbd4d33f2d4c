namespace Recipe.Planning.Tests;

/// <summary>The vacuum of a shop at its height, through the text of a recipe.</summary>
public class AltitudeTests
{
    // ISO 2533 / US Standard Atmosphere 1976 as public tables quote them, Pa and conventional inHg.
    public static TheoryData<string, double, double> Air => new()
    {
        { "0 m", 101325, 29.9213 },
        { "500 m", 95460.8, 28.1896 },
        { "1000 m", 89874.6, 26.5399 },
        { "1500 m", 84556.0, 24.9694 },
        { "2000 m", 79495.2, 23.4749 },
    };

    [Theory]
    [MemberData(nameof(Air))]
    public void AllTheVacuumThereIsIsTheAirOutside(string altitude, double pascals, double inHg)
    {
        var plan = Planned($"altitude {altitude}", "draw 50 mbar absolute");
        Assert.Equal(pascals, plan.Conditions.Ambient.Value.Pascals, 0.06);
        Assert.Equal(inHg, plan.Vacuum!.Ceiling.Value.InchesOfMercury, 1e-4);

        // A level from the one convention to the other is a sum with the air of that height.
        Assert.Equal(5000, plan.Vacuum.Absolute.Value.Pascals, 1e-6);
        Assert.Equal(pascals - 5000, plan.Vacuum.BelowAmbient.Value.Pascals, 0.06);
    }

    /// <summary>22 inHg, the least of FAA AC 43.13-1B p. 3-8, presses with 74.5006 kPa at any height, and leaves less and less air in the bag.</summary>
    [Theory]
    [MemberData(nameof(Air))]
    public void TheSameLevelBelowAmbientLeavesLessAirUpTheMountain(string altitude, double pascals, double inHg)
    {
        var vacuum = Planned($"altitude {altitude}", "draw 22 inHg below ambient").Vacuum!;
        Assert.Equal(74.5006, vacuum.BelowAmbient.Value.Kilopascals, 1e-4);
        Assert.Equal(pascals - 74500.6, vacuum.Absolute.Value.Pascals, 0.2);
        Assert.Equal(inHg - 22, vacuum.Absolute.Value.InchesOfMercury, 1e-4);
    }

    /// <summary>A published table: 12.228 psi of air at 5000 ft. Common practice: 25 inHg is all there is at 1500 m.</summary>
    [Fact]
    public void FeetCountToo()
    {
        Assert.Equal(12.228, Planned("altitude 5000 ft", "draw 20 inHg below ambient").Conditions.Ambient.Value.PoundsForcePerSquareInch, 5e-4);
        Assert.Equal(0, Planned("altitude 1500 m", "draw 25 inHg below ambient").Vacuum!.Absolute.Value.Pascals);
    }

    /// <summary>At 3000 m there are 701 mbar of air (ISO 2533): a bag at 900 mbar absolute would have to be blown up. It is no vacuum, and never a negative one.</summary>
    [Fact]
    public void MorePressureThanTheAirOutsideIsNoVacuum()
    {
        var vacuum = Planned("altitude 3000 m", "draw 900 mbar absolute").Vacuum!;
        Assert.Equal(0, vacuum.BelowAmbient.Value.Pascals);
        Assert.Equal(701.1, vacuum.Absolute.Value.Millibars, 0.1);
    }

    [Fact]
    public void WithoutAnAltitudeTheShopStandsAtTheSeaAndThatIsSaid()
    {
        var plan = Planned("", "draw 22 inHg below ambient");
        Assert.Equal(101325, plan.Conditions.Ambient.Value.Pascals, 1e-6);
        Assert.Contains("default.altitude", plan.Vacuum!.Absolute.RestsOn);
        Assert.DoesNotContain("default.altitude", plan.Vacuum.BelowAmbient.RestsOn);
    }

    /// <summary>
    /// A pump empties a bag as t = V/S ln((p0 - pu)/(p1 - pu)) (as on vacuum makers' pages), where the hose is no hindrance. Film 750 mm x 450 mm, 10 mm off the part
    /// on the mean, a hose 10 mm long and 50 mm wide and a pot of 2 L are 5.395 L; 3 m3/h; at 1500 m from 845.56 to 100 mbar over 10 mbar of its own: 6.474 s x ln(835.56/90).
    /// </summary>
    [Fact]
    public void ThePumpTakesItsTime()
    {
        var vacuum = Planned("altitude 1500 m; pump 3 m3/h ultimate 10 mbar absolute", "draw 100 mbar absolute", "inner-diameter 50 mm; length 10 mm").Vacuum!;
        var litres = (7.5 * 4.5 * 0.1) + (Math.PI / 4 * 0.5 * 0.5 * 0.1) + 2;
        Assert.Equal(5.395, litres, 0.001);
        Assert.Equal(litres * 1.2 * Math.Log(835.56 / 90), vacuum.PumpDown!.Value.Value.Seconds, 0.002);
        Assert.Equal(0, vacuum.HoseTakes!.Value.Value, 1e-3);

        // What is below its own reach is never drawn.
        var beyond = Planned("altitude 1500 m; pump 3 m3/h ultimate 10 mbar absolute", "draw 5 mbar absolute");
        Assert.Null(beyond.Vacuum!.PumpDown);
        Assert.Contains(beyond.Gaps, gap => gap.Missing == "the pump does not get to that level");
    }

    /// <summary>
    /// Vacuum handbooks: a hose passes 135 d^4/l times the mean pressure, in L/s, cm and mbar, of air at 20 degC (from memory), and what passes it is what the
    /// pump takes. 20 m3/h at 30 mbar over 1 mbar of its own through 3 m of 8 mm: 0.0922 (900 - p^2) = 5.556 (p - 1), so that p = 13.1 mbar at the pump, which moves 67.2 mbar L/s and not
    /// the 161.1 that it would without a hose.
    /// </summary>
    [Fact]
    public void TheHoseTakesItsPartOfThePump()
    {
        var vacuum = Planned("pump 20 m3/h ultimate 1 mbar absolute", "draw 30 mbar absolute; leak-check 5 min rise at-most 30 mbar").Vacuum!;
        var (half, pump) = (135 * Math.Pow(0.8, 4) / 300 / 2, 20 / 3.6);
        var inlet = (Math.Sqrt((pump * pump) + (4 * half * ((half * 900) + pump))) - pump) / (2 * half);
        Assert.Equal(13.1, inlet, 0.05);
        var moved = pump * (inlet - 1);
        Assert.Equal(67.2, moved, 0.1);
        Assert.Equal(1 - (moved / (pump * 29)), vacuum.HoseTakes!.Value.Value, 0.002);

        var leak = vacuum.LeakOfAir!.Value.Value.LitersPerSecond * 1013.25;
        Assert.Equal(moved / leak, vacuum.PumpMargin!.Value.Value, 0.003 * moved / leak);
        Assert.Contains("default.hose-length", vacuum.PumpMargin!.Value.RestsOn);

        // The pump that is said to be enough is just that, and without a hose it would be smaller.
        var needed = vacuum.PumpNeeded!.Value.Value.CubicMetersPerHour;
        Assert.True(needed > 5 * leak / 29 * 3.6);
        var with = Planned(FormattableString.Invariant($"pump {needed:R} m3/h ultimate 1 mbar absolute"), "draw 30 mbar absolute; leak-check 5 min rise at-most 30 mbar").Vacuum!;
        Assert.Equal(5, with.PumpMargin!.Value.Value, 1e-6);

        // A bigger pump does not help beyond what the hose passes to any: 135 d^4/l p^2/2.
        var huge = Planned("pump 2000 m3/h ultimate 0 mbar absolute", "draw 30 mbar absolute; leak-check 5 s rise at-most 30 mbar").Vacuum!;
        Assert.Equal(half * 900 / (huge.LeakOfAir!.Value.Value.LitersPerSecond * 1013.25), huge.PumpMargin!.Value.Value, 0.02);
        Assert.Null(huge.PumpNeeded);
    }

    [Theory]
    [InlineData("", "default.hose-length")]
    [InlineData("length 2 m", null)]
    public void AHoseThatIsNotWrittenDownIsAssumed(string hose, string? assumed)
    {
        var vacuum = Planned("pump 20 m3/h ultimate 1 mbar absolute", "draw 30 mbar absolute; leak-check 5 min rise at-most 30 mbar", $"inner-diameter 8 mm; {hose}").Vacuum!;
        Assert.Equal(assumed is not null, vacuum.PumpMargin!.Value.RestsOn.Contains("default.hose-length"));
        Assert.Equal(assumed is not null, vacuum.HoseTakes!.Value.RestsOn.Contains("default.hose-length"));
        Assert.DoesNotContain("default.hose-bore", vacuum.PumpMargin!.Value.RestsOn);
    }

    private static Plan Planned(string shop, string draw, string hose = "inner-diameter 8 mm") => Corpus.PlanOf($$"""
        shop ours { {{shop}} }
        hose our-hose { {{hose}} }
        mould plate {
          surface flat 600 mm x 300 mm
        }
        part panel {
          mould plate
          process bagged
          resin slow-laminating-epoxy
          plies { only glass-twill-163 0/90 }
          bag { peel-ply; breather; bag-film; sealant-tape; our-hose; catch-pot }
          vacuum { {{draw}} }
        }
        """);
}
