using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A waiver that nothing needs any more.</summary>
public sealed class UnusedWaiver : WaiverCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9002",
        Name = "unused-waiver",
        Severity = Severity.Advice,
        Title = "Waiver that nothing needs",
        Reason = "Left standing it will silence the next finding of its kind, which nobody then looks at.",
        Remedy = "Take it away.",
        Source = "common practice",
        Exceptions = """
            Silent while the check could not look, or while not all parts that carry the waiver were checked together.
            """,
        BadExample = """
            shop ours {
              night 16 degC
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                room 20 degC
              }
              accept cold-night because "the mould stands in a heated box at night"
              cure {
                hold room for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            shop ours {
              night 10 degC
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
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              wet-out {
                room 20 degC
              }
              accept cold-night because "the mould stands in a heated box at night"
              cure {
                hold room for 48 h
                demould
              }
            }
            """,
    };

    private protected override void Examine(CheckContext context, WaiverUse use)
    {
        if (use.Fate == WaiverFate.Unused)
        {
            context.Report(
                use.Waiver.Where,
                $"{use.Waiver.Code} is accepted and nothing of the kind is found",
                fixes: [new Fix("Take the waiver away", FixSafety.Safe, Edits.Remove(use.Waiver.Where))]);
        }
    }
}
