using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A styrenated resin is laid on epoxy.</summary>
public sealed class PolyesterOnEpoxy : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4303",
        Name = "polyester-on-epoxy",
        Severity = Severity.Warning,
        Title = "Polyester on epoxy",
        Reason = "Amine on the epoxy stops the peroxide: the seam stays tacky and peels.",
        Remedy = "Take epoxy for both, or let the epoxy cure for days, wash it, key it and lay a tie coat.",
        Source = "common practice (not for joints that carry load)",
        Exceptions = """
            A cosmetic coat over cured, washed and keyed epoxy can be accepted with that reason.
            """,
        BadExample = """
            surface-coat own-epoxy-coat {
              chemistry epoxy
              mix 100:30 by weight
              density cured 1.15 g/cm3
              pot-life 60 min at 20 degC in 100 g
              film 300 g/m2
            }

            resin own-polyester {
              chemistry polyester
              mix 100:2 by weight
              density cured 1.20 g/cm3
              pot-life 60 min at 20 degC in 100 g
              film-life 150 min at 20 degC
              gel-time 5 h at 20 degC
              minimum-temperature 15 degC
              demould 24 h at 20 degC
              largest-pot 500 g
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
              resin own-polyester
              coat own-epoxy-coat
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
            surface-coat own-epoxy-coat {
              chemistry epoxy
              mix 100:30 by weight
              density cured 1.15 g/cm3
              pot-life 60 min at 20 degC in 100 g
              film 300 g/m2
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
              coat own-epoxy-coat
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
        var part = context.Part;
        Coat? epoxy = null;
        foreach (var coat in part.Coats)
        {
            if (epoxy is not null && coat.Material.IsStyrenated())
            {
                Report(context, epoxy, coat.Material, coat.Where);
                return;
            }

            epoxy = coat.Material.Chemistry == Chemistry.Epoxy ? coat : epoxy;
        }

        if (epoxy is not null && part.HasPlies() && part.Resin is { } resin && resin.IsStyrenated())
        {
            Report(context, epoxy, resin, part.ResinWhere ?? part.Where);
        }
    }

    private static void Report(CheckContext context, Coat epoxy, ResinSystem over, Recipe.Text.SourceSpan where) => context.Report(
        where,
        $"{over.Name}, which cures by peroxide, comes on {epoxy.Material.Name}, which is epoxy",
        labels: [new FindingLabel(epoxy.Where, "epoxy here")],
        fixes: [Edits.Fix("Leave the epoxy coat out", FixSafety.NeedsALook, Edits.Remove(epoxy.Where))]);
}
