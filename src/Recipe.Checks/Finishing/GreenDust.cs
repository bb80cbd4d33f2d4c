using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A part that is not yet cured is sanded dry.</summary>
public sealed class GreenDust : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC8210",
        Name = "green-dust",
        Severity = Severity.Warning,
        Title = "Dust of green resin",
        Reason = "Dust of half-cured resin still holds free hardener: on skin and in the lungs it brings on an allergy that stays for life.",
        Remedy = "Wait for the full cure, or work wet; a knife makes no dust.",
        Source = "common practice; NIOSH on skin exposure to uncured epoxy (from memory)",
        Exceptions = """
            Speaks only where the line itself says that the resin is green or not cured. Silent for work done wet, with a knife, or with
            extraction and a mask.
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
                wash
                trim "green, with a knife"
                abrade "80 grit while it is still green"
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
                wash
                trim "green, with a knife"
                abrade "80 grit, wet, once it is hard"
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override bool IsSafety => true;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (!context.Part.IsWetted())
        {
            return;
        }

        var dusty = context.Part.Finish.FirstOrDefault(f => (f.Verb == "abrade" || TradeWords.Says(f.Words(), "sand", "grind"))
            && TradeWords.Says(f.Words(), "green", "half cured", "half-cured", "not cured", "not yet cured", "before it is cured", "uncured", "still soft", "still tacky")
            && !f.IsSafeFromDust()
            && !TradeWords.Says(f.Words(), "green paint", "dark green", "light green", "never", "until", "colour", "color", "scotch", "pad"));
        if (dusty is null)
        {
            return;
        }

        context.Report(
            dusty.Where,
            $"{Say.Quoted(dusty.Words())} makes dust of resin that is not cured",
            fixes: [new Fix("Work wet", FixSafety.NeedsALook, FinishWords.AddWords(dusty.Where, "wet"))]);
    }
}
