namespace Recipe.Planning.Tests;

/// <summary>What a mix card tells to pour, through the text of a recipe, against mixes that others published.</summary>
public class MixCardTests
{
    /// <summary>
    /// US Army TM 55-1905-223-SDC, para 8-24: 4 parts of resin to 1 of hardener, 400 g and 100 g for a pot of 500 g. Supplier pages: 1 kg of polyester resin at 1 %
    /// takes 10 g of peroxide (10 ml, taken as 1 g/ml there), at 2 % 20 g: percent of the resin, not of the mix.
    /// </summary>
    [Theory]
    [InlineData("epoxy", "4:1 by weight", 500, 400, 100)]
    [InlineData("polyester", "1 % of resin by weight", 1010, 1000, 10)]
    [InlineData("polyester", "2 % of resin by weight", 1020, 1000, 20)]
    public void APotIsPouredAsItWasPublished(string chemistry, string mix, double pot, double resin, double hardener)
    {
        var plan = Planned($"chemistry {chemistry}; mix {mix}", $"pot {pot} g");
        var poured = Assert.Single(plan.Pots);
        Assert.Equal(resin, poured.Resin!.Value.Value.Grams, 6);
        Assert.Equal(hardener, poured.Hardener!.Value.Value.Grams, 6);

        // What is poured is what is taken from the shelf, for three parts three times.
        Assert.Equal(
            [3 * resin, 3 * hardener],
            Planned($"chemistry {chemistry}; mix {mix}", $"pot {pot} g", "quantity 3").Takeoff.Where(line => line.Group == TakeoffGroup.Resin).Select(line => Math.Round(line.Gross.Value.Value, 6)));
    }

    // Parts of hardener by weight to a hundred of resin, worked out from the densities: by weight = by volume x density of hardener / density of resin.
    [Theory]
    [InlineData("2:1 by volume", 1.10, 0.95, 43.18)]
    [InlineData("5:1 by volume", 1.18, 1.00, 16.95)]
    [InlineData("100:37.94 by volume", 1.15, 0.97, 32.00)]
    [InlineData("100:32 by weight", 1.15, 0.97, 32.00)]
    public void ARatioByVolumeIsWeighedByTheDensities(string mix, double resin, double hardener, double parts)
    {
        var pot = Planned(FormattableString.Invariant($"mix {mix}; density resin {resin} g/cm3; density hardener {hardener} g/cm3"), "pot 100 g").Pots[0];
        Assert.Equal(parts, 100 * (pot.Hardener!.Value.Value / pot.Resin!.Value.Value), 0.005);
        Assert.Equal(100, (pot.Hardener.Value.Value + pot.Resin.Value.Value).Grams, 9);
    }

    /// <summary>Parts by volume are never weighed as if they were parts by weight: common practice calls it the dearest word left out.</summary>
    [Fact]
    public void WithoutDensitiesARatioByVolumeIsNotWeighed()
    {
        var plan = Planned("mix 2:1 by volume; density resin 1.10 g/cm3", "pot 100 g");
        Assert.Equal(100, plan.Pots[0].Mass.Value.Grams, 9);
        Assert.Null(plan.Pots[0].Resin);
        Assert.Null(plan.Pots[0].Hardener);
        Assert.Contains(plan.Gaps, gap => gap.Missing == "the ratio is by volume and a density is missing to weigh it");
    }

    /// <summary>Common practice: a gram or two percent of the hardener, whichever is less.</summary>
    [Theory]
    [InlineData("pot 500 g", 1.0)]
    [InlineData("pot 250 g", 1.0)]
    [InlineData("pot 200 g", 0.8)]
    [InlineData("pot 25 g", 0.1)]
    public void TheHardenerMayBeOffByAGramOrTwoPercent(string pot, double grams) =>
        Assert.Equal(grams, Planned("mix 4:1 by weight", pot).Pots[0].HardenerTolerance!.Value.Grams, 9);

    /// <summary>
    /// A square metre of 200 g/m2 laid with as much resin (FAA AC 43.13-1B p. 3-3: equal weights by hand), 10 g lost and a tenth more to spare: 231 g, two pots of
    /// 115.5 g where 150 g is the most. Of each 100:32 the hardener is 32 parts in 132. By hand.
    /// </summary>
    [Fact]
    public void PlannedPotsAreAlikeAndHoldWhatThePartNeeds()
    {
        var plan = Planned("mix 100:32 by weight; pot-life 10 h at 23 degC in 100 g; largest-pot 150 g", "loss 10 g");
        Assert.Equal(210, plan.Resin!.Need.Value.Grams, 6);
        Assert.Equal([115.5, 115.5], plan.Pots.Select(pot => Math.Round(pot.Mass.Value.Grams, 6)));
        Assert.All(plan.Pots, pot => Assert.Equal(115.5 * 32 / 132, pot.Hardener!.Value.Value.Grams, 6));
    }

    private static Plan Planned(string resin, string wetOut, string part = "") => Corpus.PlanOf($$"""
        resin tried-resin { {{resin}} }
        fabric tried-cloth {
          fibre e-glass
          areal-weight 200 g/m2
          width 2 m
        }
        mould plate {
          surface flat 1 m x 1 m
        }
        part panel {
          mould plate
          process hand
          resin tried-resin
          trim 0 mm
          {{part}}
          plies {
            only tried-cloth 0/90 resin-content 50 % by weight
          }
          wet-out { room 23 degC; {{wetOut}} }
        }
        """);
}
