using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The vacuum block holds longer than the cure lets it.</summary>
public sealed class HoldDisagrees : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6108",
        Name = "hold-disagrees",
        Severity = Severity.Warning,
        Title = "Vacuum held longer than the cure says",
        Reason = "Two papers then say two things, and the bag is opened on the shorter one.",
        Remedy = "Write the same time in both, the longer one where the resin needs it.",
        Source = "common practice",
        Exceptions = """
            Silent up to a quarter of difference, since the time to the level is counted or not.
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
                hold 60 h
              }
              cure {
                hold 20 degC for 24 h under vacuum
                vent
                hold 20 degC for 24 h
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
                hold 24 h
              }
              cure {
                hold 20 degC for 24 h under vacuum
                vent
                hold 20 degC for 24 h
                demould
              }
            }
            """,
    };

    private const double Slack = 0.75;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Vacuum is not { Hold: { } hold } vacuum || context.Plan.Cure is not { } cure)
        {
            return;
        }

        var end = cure.Steps.FirstOrDefault(s => s.Step.Action is CureAction.Vent or CureAction.Debag or CureAction.Demould);
        if (end is null || end.Start.Value.Seconds <= 0 || end.Start.Value >= hold.Value * Slack)
        {
            return;
        }

        context.Report(
            hold.Where ?? vacuum.Where,
            $"the vacuum is to be held {Say.Of(hold)}; the cure lets it go after {Say.Of(end.Start.Value)}",
            Grounds.Sure.And("hold", hold).And<Duration>(end.Start),
            [new FindingLabel(end.Step.Where, "let go here")],
            [Edits.Fix("Hold it as long as the cure says", FixSafety.NeedsALook, Edits.Rewrite(hold, FormattableString.Invariant($"{Math.Floor(end.Start.Value.Hours * 10) / 10} h")))]);
    }
}
