using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The part is levered off with metal.</summary>
public sealed class MetalLevers : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8205",
        Name = "metal-levers",
        Severity = Severity.Advice,
        Title = "Metal lever on a mould face",
        Reason = "A screwdriver scratches the mould face, and the scratch is in every part after that.",
        Remedy = "Take wedges of plastic or wood, air or water, all round and a little at a time.",
        Source = "common practice",
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
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                demould "lever it off with a screwdriver"
                wash
                trim
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
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                demould "with plastic wedges, all round"
                wash
                trim
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var levers = context.Part.Finish.FirstOrDefault(f =>
            (f.Verb is "demould" or "debag" || (f.Verb == "step" && TradeWords.Says(f.Text, "lever", "pry", "prise", "pris", "prize", "demould", "demold", "off the mould", "off the mold")))
            && !TradeWords.Forbids(f.Text)
            && IsMetal(f.Text));
        if (levers is null)
        {
            return;
        }

        context.Report(
            levers.Where,
            $"{Say.Quoted(levers.Words())} puts metal between part and mould",
            fixes: [new Fix("Take plastic wedges", FixSafety.NeedsALook, Edits.Replace(levers.Where, $"{levers.Verb} \"with plastic wedges, all round\""))]);
    }

    private static bool IsMetal(string text) =>
        TradeWords.Says(text, "screwdriver", "chisel", "crowbar", "pry bar", "tyre lever", "tire iron")
        || (TradeWords.Says(text, "steel", "metal", "iron") && TradeWords.Says(text, "wedg", "lever", "scraper", "blade", "knife", "bar", "spatula"));
}
