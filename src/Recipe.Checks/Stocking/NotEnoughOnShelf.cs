using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The shelf holds less of a material than the parts take.</summary>
public sealed class NotEnoughOnShelf : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8301",
        Name = "not-enough-on-shelf",
        Severity = Severity.Warning,
        Title = "Not enough on the shelf",
        Reason = "The job stops half way, with resin on the bench and a ply missing.",
        Remedy = "Buy the rest first, or make fewer parts.",
        Source = "common practice",
        Exceptions = """
            Speaks only of materials that the `stock` block lists. What is needed holds the usual waste of cutting.
            """,
        BadExample = """
            stock {
              glass-twill-163 0.1 m2 lot "G7"
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
            stock {
              glass-twill-163 5 m2 lot "G7"
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
        var scarce = context.Plan.Takeoff
            .Where(t => t is { InStock: not null, ToBuy.Si: > 0 } && t.ToBuy!.Value.Si > t.Gross.Value.Si * Slack)
            .Select(t => (Line: t, Lots: Shelf.Of(context.Model, t.Material.Name)))
            .Where(t => t.Lots.Count > 0)
            .OrderByDescending(t => t.Line.ToBuy!.Value.Si / t.Line.Gross.Value.Si)
            .DistinctBy(t => t.Line.Material.Name)
            .ToList();
        if (scarce is not [var (worst, lots), ..])
        {
            return;
        }

        var parts = context.Part.Quantity > 1 ? FormattableString.Invariant($"{context.Part.Quantity} parts take") : $"{context.Part.Name} takes";
        context.Report(
            lots[0].Where,
            $"{parts} {Shelf.Say(worst.Gross.Value)} of {worst.Material.Name}{Share(worst)}; the shelf has {Shelf.Say(worst.InStock!.Value)}{Say.More(scarce.Count - 1)}",
            Grounds.Sure.And<Amount>(worst.Gross),
            Shelf.Used(context.Part, worst.Material.Name) is { } used ? [new FindingLabel(used, "used here")] : []);
    }

    private const double Slack = 1e-6;

    // Resin and hardener of a kit are counted each.
    private static string Share(TakeoffLine line) =>
        line.Label.Contains(", hardener", StringComparison.Ordinal) ? " (its hardener)" : line.Label.Contains(", resin", StringComparison.Ordinal) ? " (its resin)" : "";
}
