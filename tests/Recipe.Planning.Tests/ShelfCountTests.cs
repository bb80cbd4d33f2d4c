namespace Recipe.Planning.Tests;

/// <summary>What the next parts want from the shelf. Worked by hand.</summary>
public class ShelfCountTests
{
    private const string TwoTrays = """
        stock {
          slow-laminating-epoxy  50 g
        }

        part small {
          surface flat 200 mm x 200 mm
          resin slow-laminating-epoxy
          process hand
          plies {
            all glass-twill-163 0/90
          }
        }

        part large {
          surface flat 400 mm x 300 mm
          resin slow-laminating-epoxy
          process hand
          plies {
            all glass-twill-163 0/90 x4
          }
        }
        """;

    /// <summary>Two parts that take different amounts of one resin draw on one tin: what is bought is what both take less what is in it.</summary>
    [Fact]
    public void ATinIsGivenOnce()
    {
        var model = Corpus.ModelOf(TwoTrays, null);
        var shelf = ShelfCount.Of(model.Stock, [], model.Materials.GetValueOrDefault);
        var buy = ShelfCount.ToBuy(model.Parts.Select(part => (part, model, 1)), shelf, null).Where(line => line.Need.Group == TakeoffGroup.Resin).ToList();
        var take = model.Parts.Sum(part => Planner.Plan(part, model).Resin!.ToMix.Value.Grams);
        Assert.Equal([false, true], buy.Select(line => line.Need.IsHardener));
        Assert.Equal(take, buy.Sum(line => line.Gross) * 1000, 1e-9);
        Assert.All(buy, line => Assert.EndsWith(FormattableString.Invariant($" ({line.Gross / Density(line) * 1e6:G3} mL)"), line.Label, StringComparison.Ordinal));
        Assert.Equal(take - 50, buy.Sum(line => line.Buy) * 1000, 1e-9);

        static double Density(ToBuyLine line)
        {
            var resin = (Model.ResinSystem)line.Need.Material;
            return (line.Need.IsHardener ? resin.HardenerDensity : resin.ResinDensity)!.Value.KilogramsPerCubicMeter;
        }
    }
}
