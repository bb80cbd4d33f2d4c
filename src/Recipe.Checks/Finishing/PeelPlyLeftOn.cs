using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Something is bonded on, or the part is sent off, with its peel ply on.</summary>
public sealed class PeelPlyLeftOn : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8215",
        Name = "peel-ply-left-on",
        Severity = Severity.Error,
        Title = "Peel ply left on",
        Reason = "Glue then holds on a ply that is made to come off, and the bond comes off with it.",
        Remedy = "Pull the peel ply just before the bond; leave it on for the journey only on purpose.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0045): the peel ply comes off before bonding; common practice",
        Exceptions = """
            Speaks of a `bond` line with the `peel` line only after it; of a line for the outer face it says nothing. Advice where the part is
            shipped and no line speaks of the peel ply.
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
              bag {
                peel-ply
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
                peel
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
              bag {
                peel-ply
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
                peel
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
        if (part.Bag?.Layers.FirstOrDefault(l => l.Class == LayerClass.PeelPly) is not { } ply)
        {
            return;
        }

        var peel = part.Finish.FirstOrDefault(FinishWords.IsOfPeelPly);
        if (peel is null)
        {
            if (part.Finish.FirstOrDefault(f => f.Verb == "ship") is { } ship)
            {
                context.Report(
                    ship.Where,
                    $"{part.Name} is shipped and no line says that {ply.Material.Name} comes off or stays on",
                    labels: [new FindingLabel(ply.Where, "peel ply here")],
                    fixes: [new Fix("Pull it off before", FixSafety.NeedsALook, Edits.Before(ship.Where, "peel"))],
                    severity: Severity.Advice);
            }

            return;
        }

        var bond = part.Finish.FirstOrDefault(f => f.Verb == "bond" && !TradeWords.Says(f.Text, "outer", "outside", "mould side", "mold side", "show", "front"));
        if (peel.Verb != "peel" || bond is null || part.Finish.SkipWhile(f => f != peel).Any(f => f.Verb == "bond"))
        {
            return;
        }

        context.Report(
            bond.Where,
            $"{Say.Quoted(bond.Words())} stands before the peel ply comes off",
            labels: [new FindingLabel(peel.Where, "pulled only here"), new FindingLabel(ply.Where, "peel ply here")],
            fixes: [new Fix("Pull it off before", FixSafety.NeedsALook, Edits.Before(bond.Where, peel.Where.Text), Edits.Remove(peel.Where))]);
    }
}
