using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A waiver of a finding that no reason can settle.</summary>
public sealed class RefusedWaiver : WaiverCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9004",
        Name = "refused-waiver",
        Severity = Severity.Warning,
        Title = "Waiver of a finding that cannot be accepted",
        Reason = "Some findings say that somebody can be hurt, or that the text cannot be understood: a reason changes neither.",
        Remedy = "Settle the finding, and take the waiver away.",
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
              accept runaway-pot because "we are quick"
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
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private protected override void Examine(CheckContext context, WaiverUse use)
    {
        if (use is { Fate: WaiverFate.Refused, About: { } about })
        {
            context.Report(
                use.Waiver.Where,
                $"{about.Code} {about.Name} cannot be accepted, whatever the reason",
                fixes: [new Fix("Take the waiver away", FixSafety.Safe, Edits.Remove(use.Waiver.Where))]);
        }
    }
}
