using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Far too little or too much hardener for the kind of resin.</summary>
public sealed class OddHardenerShare : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4202",
        Name = "odd-hardener-share",
        Severity = Severity.Warning,
        Title = "Hardener share out of the usual band",
        Reason = "Too little never cures; too much peroxide scorches, and too much of an amine stays in as softener.",
        Remedy = "Read the ratio off the sheet again; a point may be in the wrong place.",
        Source = "common practice (peroxide 0.5 to 4 % of the resin, amine hardener 8 to 120 parts to a hundred)",
        Exceptions = """
            Silent for anhydride systems and for resins that cure by heat. A hardener that outweighs its resin by far is another finding.
            """,
        BadExample = """
            resin shop-epoxy like slow-laminating-epoxy {
              mix 100:3 by weight
              source "data sheet"
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
              resin shop-epoxy
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
            resin shop-epoxy like slow-laminating-epoxy {
              mix 100:30 by weight
              source "data sheet"
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
              resin shop-epoxy
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
        if (part.Resin is not { Mix: { Value: { Resin: > 0, Hardener: > 0 } ratio } mix } resin || resin.CuresWith is "anhydride" or "heat")
        {
            return;
        }

        var (least, most, what) = resin.Chemistry switch
        {
            Chemistry.Epoxy => (8.0, 120.0, "an epoxy"),
            Chemistry.Polyester or Chemistry.Vinylester => (0.5, 4.0, "a styrenated resin"),
            _ => (0, double.PositiveInfinity, ""),
        };
        var share = ratio.PerHundred();
        if ((share >= least && share <= most) || share > HardenerOutweighsResin.Most)
        {
            return;
        }

        var factor = share < least ? 10 : 0.1;
        var slip = share * factor >= least && share * factor <= most ? (ratio with { Hardener = Math.Round(ratio.Hardener * factor, 6) }).Words() : null;
        context.Report(
            part.FigureWhere(mix),
            $"{resin.Name} gets {Say.Number(share)} parts of hardener to 100; {what} takes {Say.Number(least)} to {Say.Number(most)}",
            Grounds.Sure.And($"mix ratio of {resin.Name}", mix),
            part.ResinNamed(),
            [slip is null ? null : Edits.Fix($"Write {slip}", FixSafety.NeedsALook, part.Rewrite(mix, slip))]);
    }
}
