using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Only expired stock is on the shelf for something the part needs.</summary>
public sealed class ExpiredStock : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8003",
        Name = "expired-stock",
        Severity = Severity.Warning,
        Title = "Expired stock",
        Reason =
            "Resin, hardener, tape and prepreg past their date react, stick and flow differently from the figures in the "
            + "recipe.",
        Remedy = "Buy new, or test it (gel test, tack test) and write the result as a reason.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0166); FAA AC 43.13-1B (1998) p. 3-1",
        Exceptions = """
            Silent when another lot on the shelf is in date, and when no day is given. An error for prepreg.
            """,
        BadExample = """
            stock {
              slow-laminating-epoxy 2.4 kg lot "E31" expires 2020-02-01
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
              slow-laminating-epoxy 2.4 kg lot "E31" expires 2099-02-01
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
        var needed = Needed(context.Plan).ToHashSet(StringComparer.Ordinal);
        var dated = context.Model.Stock.Where(s => s.Expires is not null && needed.Contains(s.Material)).ToList();
        if (dated.Count == 0)
        {
            return;
        }

        if (context.Today is not { } today)
        {
            context.NotChecked("the day of the run is not given", dated[0].Where);
            return;
        }

        foreach (var lots in context.Model.Stock.Where(s => needed.Contains(s.Material)).GroupBy(s => s.Material, StringComparer.Ordinal))
        {
            if (lots.Any(l => l.Expires is not { } end || end >= today))
            {
                continue;
            }

            var latest = lots.MaxBy(l => l.Expires)!;
            var lot = latest.Lot is { } name ? $"lot {name} of {latest.Material}" : latest.Material;
            context.Report(
                latest.Where,
                $"{lot} expired on {Say.Of(latest.Expires!.Value)}; today is {Say.Of(today)}{Say.More(lots.Count() - 1)}",
                labels: Used(context.Part, latest.Material) is { } where ? [new FindingLabel(where, "used here")] : [],
                severity: IsPrepreg(context.Part, latest.Material) ? Severity.Error : Severity.Warning);
        }
    }

    private static IEnumerable<string> Needed(Plan plan)
    {
        var part = plan.Part;
        return plan.Takeoff.Select(t => t.Material.Name)
            .Concat(part.Stack.OfType<PlyItem>().Select(p => p.Material.Name))
            .Concat(part.Resin is { } resin ? [resin.Name] : [])
            .Concat(part.Coats.Select(c => c.Material.Name))
            .Concat(part.Bag?.Layers.Select(l => l.Material.Name) ?? []);
    }

    private static SourceSpan? Used(Part part, string material) =>
        part.Resin?.Name == material ? part.ResinWhere
        : part.Stack.OfType<PlyItem>().FirstOrDefault(p => p.Material.Name == material)?.MaterialWhere
            ?? part.Bag?.Layers.FirstOrDefault(l => l.Material.Name == material)?.Where;

    private static bool IsPrepreg(Part part, string material) =>
        part.Process.Value == Process.Prepreg && part.Stack.OfType<PlyItem>().Any(p => p.Material.Name == material);
}
