namespace Recipe.Planning.Tests;

/// <summary>From the lines of a recipe to the time that the resin takes.</summary>
public class InfusionFlowTests
{
    // Darcy's law as in Rudd, Long, Kendall and Mangin, Liquid Moulding Technologies 1997 (from memory): porosity 0.5, 0.3 Pa s, 1e-10 m2, 95 kPa,
    // 0.5 m give 1973.684 s from a line (computed). The resin keeps its viscosity for a year or so.
    private const string Printed = """
        fabric plain-stack {
          fibre          e-glass
          areal-weight   600 g/m2
          width          100 cm
          permeability   1e-10 m2   source "the worked case"
        }

        resin patient-epoxy like infusion-epoxy {
          viscosity  300 mPa.s at 22 degC
          pot-life   9000 h at 22 degC in 100 g
          gel-time   9000 h at 22 degC
        }

        """;

    [Fact]
    public void ALineFillsInThePrintedTime()
    {
        var flow = Corpus.PlanOf(Printed + Part("patient-epoxy", "path 0.5 m", "feed-line length 300 mm diameter 8 mm")).Flow!;
        Assert.True(flow.FromALine);
        Assert.Equal(95000, flow.Drive.Value.Pascals, 1e-6);
        Assert.Equal(0.5, flow.Porosity.Value, 1e-9);
        Assert.Equal(1973.684, flow.Fill!.Value.Value.Seconds, 0.2);
    }

    /// <summary>
    /// The same case from a port of 5 mm radius over 0.25 m: 1683.66 s (computed). The line that leads to the port is as wide as the port; one of 12 mm, which is taken where nothing is said, is
    /// a port of 6 mm: phi mu/(2 K dP) [rf^2 ln(rf/r0) - (rf^2 - r0^2)/2] gives 1593.7 s.
    /// </summary>
    [Theory]
    [InlineData("", 1593.7)]
    [InlineData("feed-line diameter 10 mm", 1683.66)]
    public void APointFillsInThePrintedTime(string feed, double seconds)
    {
        var flow = Corpus.PlanOf(Printed + Part("patient-epoxy", "path 0.25 m", feed)).Flow!;
        Assert.False(flow.FromALine);
        Assert.Equal(seconds, flow.Fill!.Value.Value.Seconds, 0.2);
    }

    /// <summary>
    /// 1 mm of flow medium at 5e-9 m2 on 3 mm of cloth at 1e-10 m2: 1.325e-9 m2 as one (computed). Layers that fill together are the least time there is; here phi 0.6, 0.3 Pa s, 95 kPa and 0.5 m
    /// give 178.7 s, and cloth alone 1973.7 s.
    /// </summary>
    [Fact]
    public void AStackWithAFlowMediumIsAsPermeableAsItsLayers()
    {
        const string mesh = "flow-medium tried-mesh { thickness 1 mm; permeability 5e-9 m2; resin-pickup 1026 g/m2; width 1 m }\n";
        var text = Printed.Replace("600 g/m2", "956.25 g/m2", StringComparison.Ordinal) + Part("patient-epoxy", "path 0.5 m", "feed-line length 300 mm diameter 8 mm");
        var flow = Corpus.PlanOf(mesh + text.Replace("peel-ply", "peel-ply\n    tried-mesh", StringComparison.Ordinal)).Flow!;
        Assert.Equal(1.325e-9, flow.Permeability.Value.SquareMeters, 1e-14);
        Assert.Equal(0.6, flow.Porosity.Value, 1e-6);
        Assert.InRange(flow.Fill!.Value.Value.Seconds, 178.7, 1.5 * 178.7);
    }

    /// <summary>Half the way takes a quarter of the time, twice the viscosity twice the time (Darcy's law), and so does half the pressure.</summary>
    [Theory]
    [InlineData("path 0.25 m", "", "", 0.25)]
    [InlineData("path 0.5 m", "300 mPa.s", "600 mPa.s", 2)]
    [InlineData("path 0.5 m", "950 mbar", "475 mbar", 2)]
    public void DarcysLawHolds(string path, string old, string instead, double times)
    {
        var text = Printed + Part("patient-epoxy", path, "feed-line length 300 mm diameter 8 mm");
        var changed = old.Length > 0 ? text.Replace(old, instead, StringComparison.Ordinal) : text;
        Assert.Equal(1973.684 * times, Corpus.PlanOf(changed).Flow!.Fill!.Value.Value.Seconds, 0.5 * times);
    }

    [Fact]
    public void AMeasuredStackHasANarrowBandAndAnAssumedOneAWideOne()
    {
        var own = Corpus.PlanOf(Printed + Part("patient-epoxy", "path 0.5 m", "feed-line length 300 mm")).Flow!;
        Assert.Equal(1.2, own.FillAtWorst!.Value.Value / own.Fill!.Value.Value, 1e-3);
        var assumed = Corpus.PlanOf((Printed + Part("patient-epoxy", "path 0.5 m", "feed-line length 300 mm")).Replace("permeability", "note \"none\" #", StringComparison.Ordinal)).Flow!;
        Assert.Equal(3, assumed.FillAtWorst!.Value.Value / assumed.Fill!.Value.Value, 1e-3);
        Assert.Contains("default.permeability.cloth", assumed.Fill.Value.RestsOn);
        Assert.Contains("default.permeability-scatter", assumed.Fill.Value.RestsOn);
    }

    [Fact]
    public void AFrontThatStopsIsSaidToStop()
    {
        var plan = Corpus.PlanOf(Printed + Part("infusion-epoxy", "path 9 m", "feed-line length 300 mm"));
        Assert.Null(plan.Flow!.Fill);
        Assert.InRange(plan.Flow.Reach.Value.Meters, 0.3, 3);
        Assert.Contains(plan.Gaps, gap => gap.Missing == "the resin never fills the part");
    }

    [Fact]
    public void AFlowMediumMakesItQuicker()
    {
        var without = Corpus.PlanOf(Printed + Part("patient-epoxy", "path 0.5 m", "feed-line length 300 mm")).Flow!;
        var with = Corpus.PlanOf((Printed + Part("patient-epoxy", "path 0.5 m", "feed-line length 300 mm")).Replace("peel-ply", "peel-ply\nflow-medium", StringComparison.Ordinal)).Flow!;
        Assert.InRange(with.Fill!.Value.Value / without.Fill!.Value.Value, 0.01, 0.3);
    }

    [Fact]
    public void ThePotIsUsedUpWhenThePartIsFull()
    {
        var plan = Corpus.PlanOf(Printed + Part("patient-epoxy", "path 0.5 m", "feed-line length 300 mm"));
        Assert.Equal(plan.Flow!.Fill!.Value.Value.Minutes + 3, plan.Pots[^1].UsedUpAt.Value.Minutes, 1e-6);
    }

    /// <summary>
    /// At 1500 m the standard atmosphere (ISO 2533) is 84556 Pa, so that is all there is to drive the resin, whatever level is written.
    /// </summary>
    [Fact]
    public void NoLevelDrivesHarderThanTheAirThereIs()
    {
        var text = Printed + "shop high {\n  altitude 1500 m\n}\n" + Part("patient-epoxy", "path 0.5 m", "feed-line length 300 mm diameter 8 mm");
        var flow = Corpus.PlanOf(text).Flow!;
        Assert.Equal(84556, flow.Drive.Value.Pascals, 5.0);
        Assert.Equal(1973.684 * 95000 / 84556, flow.Fill!.Value.Value.Seconds, 0.5);
    }

    /// <summary>
    /// Plies of 400 mm with 15 mm of trim end 215 mm from the middle. A mesh that ends 40 mm inside them (common practice: 25 to 50 mm) ends at
    /// 175 mm, however far the peel ply under it runs past them.
    /// </summary>
    [Theory]
    [InlineData("peel-ply\nflow-medium smaller 40 mm")]
    [InlineData("peel-ply beyond 60 mm\nrelease-film perforated\nflow-medium smaller 40 mm")]
    public void AFlowMediumEndsInsideThePlies(string layers)
    {
        var text = (Printed + Part("patient-epoxy", "path 0.5 m", "feed-line length 300 mm")).Replace("peel-ply", layers, StringComparison.Ordinal);
        var mesh = Corpus.PlanOf(text).Bag!.Layers.Single(layer => layer.Layer.Class == Model.LayerClass.FlowMedium);
        Assert.Equal(350, mesh.Length.Value.Millimeters, 1e-9);
        Assert.Equal(250, mesh.Width.Value.Millimeters, 1e-9);
    }

    /// <summary>What is in a feed line when it is clamped cures there (common practice): 2 of 300 mm are 0.6 m, and with a tenth for cutting 0.66 m.</summary>
    [Fact]
    public void FeedLinesAreBoughtAnewForEachPart()
    {
        var text = (Printed + Part("patient-epoxy", "path 0.5 m", "feed-line length 300 mm diameter 8 mm\nfeed-lines 2")).Replace("bag-film", "bag-film\nhose pvc-hose", StringComparison.Ordinal);
        var plan = Corpus.PlanOf(text);
        var line = Assert.Single(plan.Takeoff, line => line.Material.Name == "pvc-hose");
        Assert.Equal(TakeoffGroup.Bag, line.Group);
        Assert.Equal(0.6, line.Net.Value.Si, 1e-12);
        Assert.Equal(0.66, line.Gross.Value.Si, 1e-12);
        Assert.DoesNotContain(plan.Gaps, gap => gap.Subject == "feed line in the takeoff");

        // Nothing is bought that nobody named.
        Assert.Contains(Corpus.PlanOf(text.Replace("hose pvc-hose", "", StringComparison.Ordinal)).Gaps, gap => gap.Subject == "feed line in the takeoff");
        var wider = Corpus.PlanOf(text.Replace("diameter 8 mm", "diameter 12 mm", StringComparison.Ordinal));
        Assert.DoesNotContain(wider.Takeoff, line => line.Material.Name == "pvc-hose");
        Assert.Contains(wider.Gaps, gap => gap.Missing.Contains("12 mm inside", StringComparison.Ordinal));
    }

    private static string Part(string resin, string path, string feed) => $$"""
        mould plate {
          surface flat 400 mm x 300 mm
        }

        part strip {
          mould plate
          resin {{resin}}
          plies {
            all plain-stack 0/90 x4 resin-content 30.8943089431 % by weight
          }
          wet-out {
            mixing 3 min
          }
          bag {
            peel-ply
            bag-film
          }
          infuse {
            {{path}}
            {{feed}}
            mould-temperature 22 degC
          }
          vacuum {
            draw 950 mbar below ambient
          }
        }
        """;
}
