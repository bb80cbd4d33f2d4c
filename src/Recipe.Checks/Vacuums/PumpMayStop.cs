using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A long cure under vacuum hangs on a pump that nothing backs up.</summary>
public sealed class PumpMayStop : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6103",
        Name = "pump-may-stop",
        Severity = Severity.Advice,
        Title = "Nothing holds the bag when the pump stops",
        Reason = "A fuse or a hot motor at two in the morning lets the bag go before the resin has set.",
        Remedy = "Put a check valve or a reservoir between bag and pump.",
        Source = "common practice",
        Exceptions = """
            Speaks only of a shop that says `check-valve no`, and of vacuum for more than four hours.
            """,
        BadExample = """
            shop ours {
              check-valve no
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
              check-valve yes
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

    private static readonly Duration Long = Duration.FromHours(4);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Shop is not { CheckValve: { Value: false } valve } shop || context.Plan.Cure is not { VacuumOff: { } off } cure || off.Value <= Long)
        {
            return;
        }

        context.Report(
            valve.Where ?? shop.Where,
            $"the cure hangs on the pump for {Say.Of(off.Value)}, and nothing holds the bag when it stops",
            Grounds.Sure.And("check valve", valve).And<Duration>(off),
            cure.Steps.IsEmpty ? [] : [new FindingLabel(cure.Steps[0].Step.Where, "under vacuum from here")],
            [Edits.Fix("Fit a check valve", FixSafety.NeedsALook, FigureEdits.Rewrite(valve, "yes"))]);
    }
}
