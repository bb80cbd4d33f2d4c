using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A price that is older than a year.</summary>
public sealed class StalePrice : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8305",
        Name = "stale-price",
        Severity = Severity.Advice,
        Title = "Stale price",
        Reason = "A quote made of old prices is wrong, and nobody can tell by how much.",
        Remedy = "Ask for the price of today and write its date.",
        Source = "common practice",
        Exceptions = """
            Silent for prices without a date, and when no day is given.
            """,
        BadExample = """
            prices {
              glass-twill-163 6.40 EUR/m2 on 2024-11-01
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            prices {
              glass-twill-163 6.40 EUR/m2 on 2026-04-01
            }

            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const int Stale = 12;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var prices = context.Plan.Takeoff
            .Select(t => t.Material)
            .DistinctBy(m => m.Name)
            .Select(m => (Material: m, Price: Price(context.Model, m)))
            .Where(p => p.Price is { Value.On: not null, Where: not null })
            .ToList();
        if (prices.Count == 0)
        {
            return;
        }

        if (context.Today is not { } today)
        {
            context.NotChecked("the day of the run is not given", prices[0].Price!.Where);
            return;
        }

        var stale = prices.Where(p => Shelf.Months(p.Price!.Value.On!.Value, today) > Stale).OrderBy(p => p.Price!.Value.On).ToList();
        if (stale is not [var oldest, ..])
        {
            return;
        }

        var on = oldest.Price!.Value.On!.Value;
        context.Report(
            oldest.Price.Where!.Value,
            FormattableString.Invariant($"the price of {oldest.Material.Name} is of {Say.Of(on)}, {Shelf.Months(on, today)} months ago; after {Stale} it is asked for again{Say.More(stale.Count - 1)}"));
    }

    private static Figure<Price>? Price(RecipeModel model, Material material) => model.Prices.LastOrDefault(p => p.Material == material.Name)?.Price ?? material.Price;
}
