using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>More resin stays in a cloth than its fibres need.</summary>
public sealed class LeftTooWet : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4008",
        Name = "left-too-wet",
        Severity = Severity.Warning,
        Title = "Laminate left too wet",
        Reason = "Resin that no fibre needs is weight, and where it pools it is brittle.",
        Remedy = "Lay it drier, or let the bag take more.",
        Source = "common practice: more than 55 % by weight under a bag or infused, more than 62 % by hand",
        Exceptions = """
            Mats and veils hold more by nature, and so do lines that cover only a part. Speaks of what is left after the bag has taken its share.
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
                resin-content 62 % by weight
                room 20 degC
                laminators 2
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
                resin-content 48 % by weight
                room 20 degC
                laminators 2
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

    // By weight, as people weigh it.
    private const double MostUnderABag = 0.55;
    private const double MostByHand = 0.62;
    private const double Wanted = 0.48;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Process.Value == Process.Prepreg)
        {
            return;
        }

        var most = part.Process.Value == Process.Hand ? MostByHand : MostUnderABag;
        var wet = context.Plan.Stack
            .Where(line => line.Item is PlyItem { Material.Form: ReinforcementForm.Fabric or ReinforcementForm.Unidirectional })
            .Select(line => (Line: line, Share: line.ResinShare(), Stated: ((PlyItem)line.Item).Content ?? part.WetOut?.Content))
            .Where(of => of.Share > most)
            .OrderByDescending(of => of.Share)
            .ToList();
        if (wet.Count == 0)
        {
            return;
        }

        var (worst, share, stated) = wet[0];
        context.Report(
            stated?.Where ?? worst.Item.Where,
            $"{worst.Item.Name} is left with {Say.Percent(Math.Round(share, 2))} resin by weight; {Say.Of(part.Process.Value)} cloth wants no more than {Say.Percent(most)}"
            + Say.More(wet.Count - 1),
            Grounds.Sure.And(worst.NetResin).And(worst.NetMass),
            stated?.Where == worst.Item.Where ? [] : [new FindingLabel(worst.Item.Where, "cloth here")],
            [wet.TrueForAll(of => ReferenceEquals(of.Stated, stated)) ? Drier(stated, share) : null]);
    }

    // Laid so much drier that the bag, which takes its share again, leaves about what is wanted.
    private static Fix? Drier(Figure<Content>? stated, double left)
    {
        if (stated is not { Value: { Basis: ContentBasis.ResinByWeight, Fraction: var laid } } content)
        {
            return null;
        }

        var percent = Math.Floor(((laid - left + Wanted) * 100) + 1e-9);
        return Edits.Fix($"Lay it at {Say.Number(percent)} % by weight", FixSafety.NeedsALook, FigureEdits.Rewrite(content, $"{Say.Number(percent)} % by weight"));
    }
}
