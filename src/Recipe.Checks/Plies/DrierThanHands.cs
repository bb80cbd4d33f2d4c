using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Cloth laid by hand is to be drier than hands can make it.</summary>
public sealed class DrierThanHands : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC3113",
        Name = "drier-than-hands",
        Severity = Severity.Warning,
        Title = "Drier than a roller can make it",
        Reason = "Without a bag the cloth springs back after the roller and draws in air instead of resin.",
        Remedy = "Lay it at 45 to 50 % resin by weight, or bag it.",
        Source = "common practice (42 % by weight is as dry as hands get it)",
        Exceptions = """
            Speaks only of a resin content that the part states, and only without a bag. Silent for mat and veil.
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                resin-content 33 % by weight
              }
              cure {
                hold 20 degC for 48 h
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                resin-content 48 % by weight
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private const double Driest = 0.415;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Process.Value != Process.Hand)
        {
            return;
        }

        var dry = context.Plan.Stack
            .Where(s => s.Item is PlyItem { Material.Form: ReinforcementForm.Fabric or ReinforcementForm.Unidirectional })
            .Select(s => (Line: s, Stated: ((PlyItem)s.Item).Content ?? part.WetOut?.Content, Share: s.ResinShare()))
            .Where(s => s is { Stated: not null, Share: > 0 and < Driest })
            .OrderBy(s => s.Share)
            .ToList();
        if (dry is not [var (line, stated, share), ..])
        {
            return;
        }

        context.Report(
            stated!.Where ?? line.Item.Where,
            $"{line.Item.Name} is to hold {Say.Percent(Math.Round(share, 2))} resin by weight; by hand cloth gets no drier than 42 %{Say.More(dry.Count - 1)}",
            Grounds.Sure.And("resin content", stated).And(line.NetResin).And(line.NetMass),
            stated.Where == line.Item.Where ? [] : [new FindingLabel(line.Item.Where, "cloth here")],
            [stated.Value.Basis == ContentBasis.ResinByWeight && dry.All(d => ReferenceEquals(d.Stated, stated))
                ? Edits.Fix("Lay it at 46 % by weight", FixSafety.NeedsALook, part.Rewrite(stated, "46 % by weight"))
                : null]);
    }
}
