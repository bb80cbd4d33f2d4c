using Recipe.Text.Units;

namespace Recipe.Planning.Tests;

/// <summary>What is taken from the shelf or bought for a part, through the text of a recipe. Worked by hand; waste is common practice.</summary>
public class TakeoffTests
{
    private const string Panel = """
        outer  tried-cloth  0/90   x2
        bias   tried-cloth  +/-45
        veil   tried-veil   random
        heart  core tried-core  size 300 mm x 200 mm
        nut    insert tried-nut  x4
        """;

    /// <summary>
    /// Pieces of 630 mm x 280 mm (600 x 250 with a trim of 15 mm). Straight from the roll a tenth is left over, 25 to 35 % where cloth is cut askew, 10 to 15 % of mat and veil.
    /// </summary>
    [Fact]
    public void ClothIsWhatIsCutAndItsWaste()
    {
        var takeoff = Planned(Panel).Takeoff;
        const double piece = 0.63 * 0.28;
        Amounts(takeoff, "tried-cloth", 3 * piece, (2 * piece * 1.10) + (piece * 1.30), "m2");
        Assert.Equal(1.10 + (0.2 / 3) - 1, Line(takeoff, "tried-cloth").Waste.Value, 6);
        Amounts(takeoff, "tried-veil", piece, piece * 1.12, "m2");
        Amounts(takeoff, "tried-core", 0.06, 0.066, "m2");
        Amounts(takeoff, "tried-nut", 4, 4, null);
    }

    /// <summary>Layers of the bag run 25 mm past the plies and film 75 mm past the part, each with a tenth more; tape goes round 50 mm outside the rim, with five percent in it already.</summary>
    [Fact]
    public void ABagIsUsedUpWithTheBagAndAHoseIsNot()
    {
        var takeoff = Planned(Panel).Takeoff;
        Amounts(takeoff, "polyester-peel-ply", 0.68 * 0.33, 0.68 * 0.33 * 1.1, "m2");
        Amounts(takeoff, "breather-150", 2 * 0.68 * 0.33, 2 * 0.68 * 0.33 * 1.1, "m2");
        Amounts(takeoff, "nylon-bag-film", 0.75 * 0.40, 0.75 * 0.40 * 1.1, "m2");
        Amounts(takeoff, "general-sealant-tape", 2.1 * 1.05, 2.1 * 1.05, "m");
        Assert.DoesNotContain(takeoff, line => line.Material.Name is "pvc-hose" or "catch-pot-2l");
    }

    /// <summary>Five coats of a wax of which a litre covers 60 m2, over the face and 50 mm of flange all round: 0.7 m x 0.35 m.</summary>
    [Fact]
    public void ReleaseCoversFaceAndFlangeSoManyTimes() => Amounts(Planned(Panel).Takeoff, "tried-wax", 5 * 0.7 * 0.35 / 60e3, 5 * 0.7 * 0.35 / 60e3 * 1.1, "mL");

    /// <summary>Resin has its losses and its spare in it. What is mixed comes apart again into 100 and 30 parts.</summary>
    [Fact]
    public void ResinIsWhatIsMixed()
    {
        var plan = Planned(Panel);
        var lines = plan.Takeoff.Where(line => line.Group == TakeoffGroup.Resin).ToList();
        var mixed = plan.Pots.Sum(pot => pot.Mass.Value.Kilograms);
        Assert.Equal([mixed / 1.3, mixed * 0.3 / 1.3], lines.Select(line => line.Gross.Value.Si), (a, b) => Math.Abs(a - b) < 1e-9);
        Assert.All(lines, line => Assert.Equal(0, line.Waste.Value));

        // Laid on three plies, a veil and two faces of the core: nothing of it is more than once in the sum.
        Assert.Equal(mixed, plan.Resin!.Lines.Sum(line => line.Mass.Value.Kilograms), 9);
    }

    /// <summary>Three parts take three times as much of everything, and two halves twice, but for the resin on the brush, which is one brush.</summary>
    [Theory]
    [InlineData("quantity 3", "", 3)]
    [InlineData("", "halves left right", 2)]
    [InlineData("quantity 3", "halves left right", 6)]
    public void SoManyPartsTakeSoManyTimes(string part, string mould, int times)
    {
        var (one, all) = (Planned(Panel).Takeoff, Planned(Panel, part, mould).Takeoff);
        Assert.Equal(one.Select(line => line.Label.Split('(')[0]), all.Select(line => line.Label.Split('(')[0]));
        foreach (var (a, b) in one.Zip(all))
        {
            var brush = a.Group == TakeoffGroup.Resin && mould.Length > 0 ? 0.15 : 1e-9;
            Assert.InRange(b.Gross.Value.Si / a.Gross.Value.Si, times * (1 - brush), times * (1 + 1e-9));
        }
    }

    /// <summary>What is on the shelf comes off what is bought, lot by lot; a price is one of what is used.</summary>
    [Fact]
    public void TheShelfAndThePriceList()
    {
        const string more = """
            stock {
              tried-cloth  0.2 m2  lot "A"
              tried-cloth  20 cm   lot "B"
              tried-nut    10
              tried-wax    1 L
            }
            prices {
              tried-cloth  12 EUR/m2
              tried-nut    0.25 EUR
            }
            """;
        var plan = Planned(Panel, more: more);
        var cloth = Line(plan.Takeoff, "tried-cloth");

        // 20 cm of a roll 1 m wide is 0.2 m2.
        Assert.Equal(0.4, cloth.InStock!.Value.Si, 9);
        Assert.Equal(cloth.Gross.Value.Si - 0.4, cloth.ToBuy!.Value.Si, 9);
        Assert.Equal((decimal)Math.Round(cloth.Gross.Value.Si * 12, 2), cloth.Cost);
        Assert.Equal(0, Line(plan.Takeoff, "tried-nut").ToBuy!.Value.Si);
        Assert.Equal(1.00m, Line(plan.Takeoff, "tried-nut").Cost);
        Assert.Equal(0, Line(plan.Takeoff, "tried-wax").ToBuy!.Value.Si);

        // Nothing of the breather is recorded, so all of it is bought.
        Assert.Equal(Line(plan.Takeoff, "breather-150").Gross.Value.Si, Line(plan.Takeoff, "breather-150").ToBuy!.Value.Si);
        Assert.Equal((cloth.Cost!.Value + 1.00m, "EUR"), (plan.Cost!.Total, plan.Cost.Currency));
        Assert.Equal(plan.Takeoff.Length - 2, plan.Cost.WithoutPrice);
    }

    /// <summary>A cloth of 5.8 oz/yd2 is bought by the square yard, 0.83612736 m2 (exact; NIST SP 811).</summary>
    [Fact]
    public void WhatIsWeighedByTheYardIsBoughtByTheYard()
    {
        var line = Line(Planned("only us-cloth 0/90").Takeoff, "us-cloth");
        Assert.Equal("yd2", line.Gross.Value.Unit!.Symbol);
        Assert.Equal(0.63 * 0.28 * 1.1 / 0.83612736, line.Gross.Value.Value, 1e-9);
    }

    private static void Amounts(IEnumerable<TakeoffLine> takeoff, string name, double net, double gross, string? unit)
    {
        var line = Line(takeoff, name);
        Assert.Equal(net, line.Net.Value.Si, 1e-9);
        Assert.Equal(gross, line.Gross.Value.Si, 1e-9);
        Assert.Equal(unit, line.Gross.Value.Unit?.Symbol);
        Assert.Equal(unit is null ? gross : UnitTable.Get(unit).FromSi(gross), line.Gross.Value.Value, 1e-6);
    }

    private static TakeoffLine Line(IEnumerable<TakeoffLine> takeoff, string name) => Assert.Single(takeoff, line => line.Material.Name == name);

    private static Plan Planned(string plies, string part = "", string mould = "", string more = "") => Corpus.PlanOf($$"""
        fabric tried-cloth {
          fibre e-glass
          areal-weight 200 g/m2
          width 1 m
        }
        fabric us-cloth {
          fibre standard-carbon
          areal-weight 5.8 oz/yd2
          width 50 in
        }
        veil tried-veil {
          fibre e-glass
          areal-weight 30 g/m2
          width 1 m
        }
        core tried-core {
          density 75 kg/m3
          thickness 5 mm
          sheet 1200 mm x 800 mm
          resin-uptake 200 g/m2
        }
        insert tried-nut { mass 4 g }
        release-agent tried-wax {
          kind wax
          coats 5
          coverage 60 m2/L
        }
        mould plate {
          surface flat 600 mm x 250 mm
          flange 50 mm
          {{mould}}
          release { tried-wax }
        }
        part panel {
          mould plate
          process bagged
          resin slow-laminating-epoxy
          trim 15 mm
          {{part}}
          plies {
        {{plies}}
          }
          bag { peel-ply; breather x2; bag-film; sealant-tape; hose; catch-pot }
        }
        {{more}}
        """);
}
