using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The vacuum block and the cure hold the vacuum for different times.</summary>
public sealed class HoldDisagrees : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6108",
        Name = "hold-disagrees",
        Severity = Severity.Warning,
        Title = "Vacuum block and cure hold for different times",
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

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.Cure is { } cure ? new LinesRead(cure.Where, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Vacuum is not { Hold: { } hold } vacuum || context.Plan.Cure is not { } cure)
        {
            return;
        }

        if (Longest(cure) is { At.Value.Seconds: > 0 } longest && longest.At.Value < hold.Value * CurePlan.SameTime)
        {
            Report(longest.At, $"the cure lets it go after {Say.Of(longest.At.Value)}", new(longest.Where, "let go here"));
        }
        else if (Shortest(cure) is { } shortest && hold.Value < shortest.At.Value * CurePlan.SameTime)
        {
            Report(shortest.At, $"the cure keeps it for {Say.Of(shortest.At.Value)}", new(shortest.Where, shortest.Words));
        }

        void Report(Computed<Duration> at, string cures, FindingLabel label) => context.Report(
            hold.Where ?? vacuum.Where,
            $"the vacuum is to be held {Say.Of(hold)}; {cures}",
            Grounds.Sure.And("hold", hold).And<Duration>(at),
            [label],
            [Hours(at.Value) is { } time ? Edits.Fix("Hold it as long as the cure says", FixSafety.NeedsALook, FigureEdits.Rewrite(hold, time)) : null]);
    }

    // Never longer than the cure has it; null for a time that nobody would write down.
    private static string? Hours(Duration time) =>
        time.Hours >= 1 ? FormattableString.Invariant($"{Math.Floor(time.Hours * 10) / 10} h")
        : time.Minutes >= 1 ? FormattableString.Invariant($"{Math.Floor(time.Minutes)} min")
        : null;

    // The longest that the cure can have it: up to the step that lets it go.
    private static (Computed<Duration> At, SourceSpan Where)? Longest(CurePlan cure) =>
        cure.Steps.FirstOrDefault(s => s.Step.LetsVacuumGo) is { } end ? (end.Start, end.Step.Where) : null;

    // The shortest that the cure asks for: up to the venting, or through the last step that it says is under vacuum. Without either, the
    // vacuum block alone says when it comes off.
    private static (Computed<Duration> At, SourceSpan Where, string Words)? Shortest(CurePlan cure)
    {
        if (cure.Steps.FirstOrDefault(s => s.Step.LetsVacuumGo) is { Step.Action: CureAction.Vent } vent)
        {
            return (vent.Start, vent.Step.Where, "let go here");
        }

        return cure.Steps.LastOrDefault(s => s is { Step.UnderVacuum: true, Bagged: true }) is { } held ? (held.End, held.Step.Where, "under vacuum to its end") : null;
    }
}
