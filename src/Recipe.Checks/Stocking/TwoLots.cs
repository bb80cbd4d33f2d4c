using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>One part takes more of a cloth than any one lot holds.</summary>
public sealed class TwoLots : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8306",
        Name = "two-lots",
        Severity = Severity.Advice,
        Title = "One part from two lots",
        Reason = "Two lots of cloth in one part differ a little, and a fault can then be traced to neither.",
        Remedy = "Write into the build record which lot went where, or keep one whole lot for the part.",
        Source = "common practice",
        Exceptions = """
            Speaks of cloth, where the shelf holds enough in all and every line has a lot and an amount of the same kind.
            """,
        BadExample = """
            stock {
              glass-twill-163 0.5 m2 lot "G7"
              glass-twill-163 0.4 m2 lot "G8"
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
                back glass-twill-163 0/90 x2
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            stock {
              glass-twill-163 5 m2 lot "G7"
              glass-twill-163 0.4 m2 lot "G8"
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

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        foreach (var line in context.Plan.Takeoff.Where(t => t.Group is TakeoffGroup.Reinforcement && t is { InStock: not null, ToBuy.Si: <= 0 }))
        {
            var lots = Shelf.Of(context.Model, line.Material.Name);
            var dimension = line.Gross.Value.Unit?.Dimension;
            if (lots.Select(l => l.Lot).Distinct().Count() < 2 || lots.Exists(l => l.Lot is null || l.Amount?.Dimension != dimension))
            {
                continue;
            }

            var need = line.Net.Value.Si / Math.Max(1, context.Part.Quantity);
            var largest = lots.GroupBy(l => l.Lot).MaxBy(g => g.Sum(l => l.Amount!.Value.Si))!;
            if (need <= largest.Sum(l => l.Amount!.Value.Si))
            {
                continue;
            }

            context.Report(
                largest.First().Where,
                $"one {context.Part.Name} takes {Shelf.Say(line.Net.Value with { Si = need })} of {line.Material.Name}; the largest lot, {largest.Key}, holds {Shelf.Say(line.Net.Value with { Si = largest.Sum(l => l.Amount!.Value.Si) })}",
                Grounds.Sure.And<Amount>(line.Net),
                lots.Where(l => l.Lot != largest.Key).Select(l => new FindingLabel(l.Where, "other lot")));
            return;
        }
    }
}
