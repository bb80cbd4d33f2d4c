using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The mould is struck to free the part.</summary>
public sealed class HammerOnMould : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8206",
        Name = "hammer-on-mould",
        Severity = Severity.Warning,
        Title = "Hammer on the mould",
        Reason = "A blow on the back of a mould makes star cracks in its face, which print from then on and hold the next part.",
        Remedy = "Tap the flange with a rubber mallet, or use wedges, air or water.",
        Source = "common practice",
        Exceptions = """
            Silent for a rubber or wooden mallet and for taps on flange or rim.
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
              cure {
                hold 20 degC for 48 h
                demould
              }
              finish {
                demould "hit the back of the mould with a hammer"
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
                demould "tap the flange with a rubber mallet"
                wash
                trim
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var blow = context.Part.Finish.FirstOrDefault(f => f.Verb is "demould" or "debag" or "step"
            && TradeWords.Says(f.Text, "hammer", "hit", "strik", "bang", "bash", "beat", "sledge")
            && TradeWords.Says(f.Verb == "step" ? f.Text : f.Words(), "demould", "mould", "mold", "tool", "back")
            && !TradeWords.Says(f.Text, "flange", "rim", "edge", "rubber", "nylon", "wood", "wooden", "plastic", "soft", "hide", "wedg", "tap", "tapp")
            && !TradeWords.Forbids(f.Text));
        if (blow is null)
        {
            return;
        }

        context.Report(
            blow.Where,
            $"{Say.Quoted(blow.Words())} strikes a mould, whose face cracks in stars",
            fixes: [new Fix("Tap the flange", FixSafety.NeedsALook, Edits.Replace(blow.Where, $"{blow.Verb} \"tap the flange with a rubber mallet\""))]);
    }
}
