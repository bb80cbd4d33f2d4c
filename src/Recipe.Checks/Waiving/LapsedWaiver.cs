using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A waiver whose day is over.</summary>
public sealed class LapsedWaiver : WaiverCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9003",
        Name = "lapsed-waiver",
        Severity = Severity.Warning,
        Title = "Waiver that has lapsed",
        Reason = "What was accepted for a while is open again, and the finding is back.",
        Remedy = "Settle the finding, or give a new reason and a new day.",
        Source = "common practice",
        Exceptions = """
            Silent when no day of the run is given. The waiver holds on its last day.
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
              accept cold-night because "the mould stands in a heated box at night" until 2020-01-01
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
              accept cold-night because "the mould stands in a heated box at night" until 2099-01-01
              cure {
                hold room for 48 h
                demould
              }
            }
            """,
    };

    private protected override void Examine(CheckContext context, WaiverUse use)
    {
        if (use is { Fate: WaiverFate.Lapsed, Waiver.Until: { } until } && context.Today is { } today)
        {
            context.Report(
                use.Waiver.Where,
                $"{use.Waiver.Code} was accepted until {Say.Of(until)}; today is {Say.Of(today)}",
                fixes: [new Fix("Take the waiver away", FixSafety.Safe, Edits.Remove(use.Waiver.Where))]);
        }
    }
}
