using Recipe.Model;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The pump blows its oil mist into the room where parts are laid.</summary>
public sealed class OilMistIndoors : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6107",
        Name = "oil-mist-indoors",
        Severity = Severity.Advice,
        Title = "Oil mist blown into the room",
        Reason = "Oil mist settles on moulds and cloth, and nobody should breathe it.",
        Remedy = "Lead the exhaust outdoors, or through a mist filter.",
        Source = "common practice",
        Exceptions = """
            Silent where nothing is said of the exhaust, and for an oil-less pump.
            """,
        BadExample = """
            shop ours {
              pump 2.5 cfm ultimate 20 mbar absolute exhaust indoors
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
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
            shop ours {
              pump 2.5 cfm ultimate 20 mbar absolute exhaust outdoors
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
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
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

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shop is not { PumpExhaust: { Value: PumpExhaust.Indoors } exhaust } shop || context.Part.Vacuum is not { } vacuum)
        {
            return;
        }

        context.Report(
            exhaust.Where ?? shop.Where,
            "the pump blows into the room where this part is laid",
            Grounds.Sure.And("exhaust", exhaust),
            [new FindingLabel(vacuum.Where, "pump runs here")],
            [Edits.Fix("Lead the exhaust outdoors", FixSafety.NeedsALook, FigureEdits.Rewrite(exhaust, "outdoors"))]);
    }
}
