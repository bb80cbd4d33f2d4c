using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A switched pump lets the bag rise far before it starts again.</summary>
public sealed class WideSwitchBand : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6106",
        Name = "wide-switch-band",
        Severity = Severity.Advice,
        Title = "Pump switch lets the bag rise too far",
        Reason = "The bag breathes with every cycle, and works loose what it should hold.",
        Remedy = "Set the switch to about 130 mbar (4 inHg) between off and on.",
        Source = "common practice (a band of 21 to 25 inHg)",
        Exceptions = """
            Silent where the pump gives no `band`.
            """,
        BadExample = """
            shop ours {
              pump 2.5 cfm ultimate 20 mbar absolute band 250 mbar
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
              pump 2.5 cfm ultimate 20 mbar absolute band 130 mbar
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

    private static readonly Pressure Widest = Pressure.FromMillibars(170);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shop is not { PumpBand: { } band } shop || context.Part.Vacuum is not { } vacuum || band.Value <= Widest)
        {
            return;
        }

        context.Report(
            band.Where ?? shop.Where,
            $"the pump lets the bag rise by {Say.Of(band)} before it starts again; {Say.Of(Widest, band.Written)} is the most",
            Grounds.Sure.And("band", band),
            [new FindingLabel(vacuum.Where, "drawn here")],
            [Edits.Fix("Set it to 130 mbar", FixSafety.NeedsALook, FigureEdits.Rewrite(band, "130 mbar"))]);
    }
}
