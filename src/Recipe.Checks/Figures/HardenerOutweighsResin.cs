using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>More hardener than resin in the mix.</summary>
public sealed class HardenerOutweighsResin : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4203",
        Name = "hardener-outweighs-resin",
        Severity = Severity.Warning,
        Title = "Mix ratio turned round",
        Reason = "A mix with the parts exchanged never cures, and the part is scrapped with its mould full.",
        Remedy = "Write the parts of resin first, then those of hardener.",
        Source = "common practice (resin first; few systems take more hardener than resin)",
        Exceptions = """
            Silent for 1:1 and up to 120 parts of hardener to 100 of resin, and for anhydride systems.
            """,
        BadExample = """
            resin shop-epoxy like slow-laminating-epoxy {
              mix 30:100 by weight
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

    /// <summary>Parts of hardener to a hundred of resin above which the two have probably changed places.</summary>
    internal const double Most = 120;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Resin is not { Mix: { Value: { Resin: > 0, Hardener: > 0 } ratio } mix } resin || resin.CuresWith == "anhydride" || ratio.PerHundred() <= Most)
        {
            return;
        }

        var turned = (ratio with { Resin = ratio.Hardener, Hardener = ratio.Resin }).Words();
        context.Report(
            part.FigureWhere(mix),
            $"{resin.Name} is mixed {Say.Of(mix)}, resin first: that is {Say.Number(ratio.PerHundred())} parts of hardener to 100",
            Grounds.Sure.And($"mix ratio of {resin.Name}", mix),
            part.ResinNamed(),
            [Edits.Fix($"Write {turned}", FixSafety.NeedsALook, part.Rewrite(mix, turned))]);
    }
}
