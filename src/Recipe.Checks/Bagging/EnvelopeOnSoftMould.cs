using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>An envelope bag round a mould that bends.</summary>
public sealed class EnvelopeOnSoftMould : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC5115",
        Name = "envelope-on-soft-mould",
        Severity = Severity.Advice,
        Title = "Envelope bag round a soft mould",
        Reason = "An envelope presses on the mould from all sides, and a mould that gives is cured into the part with its bend.",
        Remedy = "Back the mould with something stiff inside the envelope, or tape the bag to its face.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0175): tools in an envelope bag are supported; common practice",
        Exceptions = """
            Speaks of moulds that say `flexible yes`.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              flexible yes
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
                envelope yes
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
              flexible yes
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
        if (context.Part is not { Bag: { IsEnvelope: true } bag, Mould: { IsFlexible: true, IsMandrel: false } mould })
        {
            return;
        }

        context.Report(
            bag.EnvelopeWhere ?? bag.Where,
            $"the bag goes round the whole of {mould.Name}, which is flexible",
            labels: [new FindingLabel(mould.FlexibleWhere ?? mould.Where, "mould here")],
            fixes: [bag.EnvelopeWhere is { } written ? new Fix("Tape the bag to the mould", FixSafety.NeedsALook, Edits.Remove(written)) : null]);
    }
}
