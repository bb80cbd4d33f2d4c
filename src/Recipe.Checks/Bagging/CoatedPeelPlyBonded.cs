using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A release-coated peel ply made the face that is bonded or painted.</summary>
public sealed class CoatedPeelPlyBonded : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5111",
        Name = "coated-peel-ply-bonded",
        Severity = Severity.Warning,
        Title = "Coated peel ply on a face that is bonded",
        Reason = "Its release coat comes off on the part, and neither glue nor paint holds on that.",
        Remedy = "Take a peel ply without a coat, or abrade the face well and wipe it before anything is stuck on.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0045): uncoated peel ply where bonding follows, and a scuff all the same",
        Exceptions = """
            Silent where the face is sanded before, and where nothing is bonded or painted.
            """,
        BadExample = """
            peel-ply our-coated-peel-ply { coated yes; areal-weight 90 g/m2; width 150 cm; resin-pickup 35 g/m2; heat-limit 150 degC; source "data sheet" }

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
              bag {
                our-coated-peel-ply
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
              finish {
                wash
                trim
                bond hinge
              }
            }
            """,
        GoodExample = """
            peel-ply our-coated-peel-ply { coated yes; areal-weight 90 g/m2; width 150 cm; resin-pickup 35 g/m2; heat-limit 150 degC; source "data sheet" }

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
              bag {
                our-coated-peel-ply
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
              finish {
                wash
                trim
                abrade 120 grit
                bond hinge
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.FinishLines();

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var part = context.Part;
        if (part.Bag?.Layers.FirstOrDefault(l => l.Class == LayerClass.PeelPly) is not { Material.Coated: true } ply || BagOrder.IsUpsideDown(part))
        {
            return;
        }

        var sticks = part.Finish.FirstOrDefault(FinishWords.Sticks);
        var before = part.Finish.TakeWhile(f => f != sticks);
        if ((sticks is null && part.Join is null)
            || before.Any(FinishWords.Keys)
            || part.Join?.Preparation.Any(FinishWords.Keys) == true)
        {
            return;
        }

        context.Report(
            ply.Where,
            $"{ply.Material.Name} carries a release coat, and {(sticks is null ? "a join" : sticks.Verb)} follows with no sanding between",
            labels: [new FindingLabel(sticks?.Where ?? part.Join!.Where, $"{sticks?.Verb ?? "join"} here")],
            fixes: [new Fix("Take a peel ply without a coat", FixSafety.NeedsALook, LayerLines.Take(ply.Where, ply.Material.Name, "peel-ply"))]);
    }
}
