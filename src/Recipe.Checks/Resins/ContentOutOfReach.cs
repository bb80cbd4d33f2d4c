using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A ply is to hold less resin than its fibres leave room for.</summary>
public sealed class ContentOutOfReach : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4011",
        Name = "content-out-of-reach",
        Severity = Severity.Warning,
        Title = "Drier than the fibres can be packed",
        Reason = "Cloth pressed as hard as a bag can still has room between its fibres; where no resin fills it there is air, and the ply comes apart.",
        Remedy = "Write the content that your own parts weigh, or 36 to 48 % by weight for cloth under a bag, 28 to 38 % infused.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0166): 62 % of fibre by volume is the optimum, and hard to reach in wet lay-up; beyond 65 % wet, or 70 % of prepreg, is common practice for out of reach",
        Exceptions = """
            Speaks of a content that the part states, of cloth and unidirectional. A fibre without a density is not judged.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                resin-content 18 % by weight
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                resin-content 46 % by weight
              }
              bag {
                peel-ply
                release-film perforated
                breather
                bag-film
              }
              vacuum {
                draw 25 inHg below ambient within 10 min
                leak-check 5 min rise at-most 30 mbar isolated
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    private const double Wet = 0.65;
    private const double Prepreg = 0.70;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Resin is not { CuredDensity.Value: { KilogramsPerCubicMeter: > 0 } resin })
        {
            return;
        }

        var most = part.Process.Value == Process.Prepreg ? Prepreg : Wet;
        var tight = part.Plies()
            .Where(ply => ply.Material.Form is ReinforcementForm.Fabric or ReinforcementForm.Unidirectional && ply.Material.Fibre?.Density is not null)
            .Select(ply => (Ply: ply, Stated: ply.Content ?? part.WetOut?.Content))
            .Where(one => one.Stated is not null)
            .Select(one => (one.Ply, Stated: one.Stated!, Share: Fibre(one.Stated!.Value, one.Ply.Material.Fibre!.Density!.Value, resin)))
            .Where(one => one.Share > most)
            .OrderByDescending(one => one.Share)
            .ToList();
        if (tight is not [var (worst, stated, share), ..])
        {
            return;
        }

        context.Report(
            stated.Where ?? worst.Where,
            $"{worst.Name} is to hold {stated.Written}, which is {Say.Percent(Math.Round(share, 2))} of fibre by volume; {Say.APart(part.Process.Value)} gets no more than {Say.Percent(most)}{Say.More(tight.Count - 1)}",
            Grounds.Sure.And("resin content", stated),
            stated.Where == worst.Where ? [] : [new FindingLabel(worst.Where, "cloth here")],
            [tight.TrueForAll(one => ReferenceEquals(one.Stated, stated)) ? Usual(part, worst, stated, resin, most) : null]);
    }

    // What such cloth usually holds in such work, where that is wet enough for its fibre.
    private static Fix? Usual(Part part, PlyItem ply, Figure<Content> stated, Density resin, double most)
    {
        var usual = new Content(ContentBasis.ResinByWeight, Defaults.ResinContent(part.Process.Value, ply.Material.Form).Value);
        var text = $"{Say.Percent(usual.Fraction)} by weight";
        return stated.Value.Basis == ContentBasis.ResinByWeight && Fibre(usual, ply.Material.Fibre!.Density!.Value, resin) <= most
            ? Edits.Fix($"Lay it at {text}", FixSafety.NeedsALook, part.Rewrite(stated, text))
            : null;
    }

    private static double Fibre(Content content, Density fibre, Density resin) => content switch
    {
        { Basis: ContentBasis.FibreByVolume } => content.Fraction,
        { Fraction: > 0 and < 1 } => FibreContent.VolumeFraction(Ratio.FromDecimalFractions(1 - content.Fraction), fibre, resin).DecimalFractions,
        _ => 1 - content.Fraction,
    };
}
