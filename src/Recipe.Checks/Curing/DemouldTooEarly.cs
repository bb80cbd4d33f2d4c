using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The part leaves the mould before the resin is firm enough.</summary>
public sealed class DemouldTooEarly : Check
{
    private const double Slack = 0.05;
    private const double SameTemperature = 3;

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC7007",
        Name = "demould-too-early",
        Severity = Severity.Error,
        Title = "Demoulded too early",
        Reason = "A part pulled green tears, creeps, and keeps every push of a thumb.",
        Remedy = "Hold it longer or warmer before the mould is opened.",
        Source = "the resin's own demould time; twice as fast for each 10 K more is common practice for amine-cured epoxy; without a time of its own, three quarters cured and 20 degC below its glass transition",
        Exceptions = """
            Warm hours count for more, so a post-cure in the mould shortens the wait. Without a `demould` line the end of the cure is
            meant. Silent when the finish says that the part is trimmed green, and 5 % short is not short.
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
                hold 20 degC for 6 h
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

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.Cure is { } cure ? new LinesRead(cure.Where, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Plan.Cure is not { Steps.Length: > 0 } cure || context.Part.Resin is not { } resin || IsPulledGreen(context.Part))
        {
            return;
        }

        if (resin.Demould is not { } sheet)
        {
            ByModel(context, cure, resin);
            return;
        }

        var inMould = cure.Steps.TakeWhile(s => s.Step.Action != CureAction.Demould).ToList();
        var room = context.Plan.Conditions.Room.Value;
        var done = Duration.FromHours(inMould.Sum(s => HoursAtSheetTemperature(s, sheet.Value.At, room)));
        var needed = sheet.Value.Time;
        if (done >= needed * (1 - Slack))
        {
            return;
        }

        var plain = inMould.TrueForAll(s => Math.Abs(Mean(s, room).Kelvins - sheet.Value.At.Kelvins) <= SameTemperature);
        var grounds = Grounds.Sure.And($"demould time of {resin.Name}", sheet);
        var end = cure.Steps.Select(s => s.Step).FirstOrDefault(s => s.Action == CureAction.Demould) ?? inMould[^1].Step;
        context.Report(
            end.Where,
            $"the mould is opened after {(plain ? "" : "what counts as ")}{Say.Of(done)} at {Say.Of(sheet.Value.At)}; "
            + $"{resin.Name} wants {Say.Of(needed)}",
            plain ? grounds : grounds.AndThat("cure runs twice as fast for each 10 K more"),
            sheet.Where is { } said && !resin.FromBook ? [new FindingLabel(said, "demould time here")] : [],
            [Longer(inMould, needed - done, sheet.Value.At, room)]);
    }

    // Without a sheet's word the cure model has to say when the part is firm.
    private static void ByModel(CheckContext context, CurePlan cure, ResinSystem resin)
    {
        if (cure.Progress is not { } progress)
        {
            context.NotChecked($"no demould time is given for {resin.Name}", context.Part.ResinWhere);
            return;
        }

        if (progress.Demould is { } firm && firm.Value * (1 - Slack) <= progress.PlannedDemould.Value)
        {
            return;
        }

        var end = cure.Steps.Select(s => s.Step).FirstOrDefault(s => s.Action == CureAction.Demould) ?? cure.Steps[^1].Step;
        var wants = progress.Demould is { } later ? $"is firm enough only after {Say.Of(later.Value)}" : "is not firm enough at any time of this cure";
        context.Report(
            end.Where,
            $"the mould is opened after {Say.Of(progress.PlannedDemould.Value)}, {Say.Number(Math.Round(progress.DegreeAtDemould.Value * 100))} % cured; {resin.Name} {wants}",
            Grounds.Sure.And<double>(progress.DegreeAtDemould));
    }

    // Green as the trade says it, not as a coat of paint.
    private static bool IsPulledGreen(Part part) => part.Finish.Any(f =>
        f.Verb is "trim" or "demould" or "debag" or "step" && TradeWords.Says(f.Text, "green"));

    // In the room the plan's temperature is that of the night; by day it is as warm as the room is said to be.
    private static Temperature Mean(CureStepPlan step, Temperature room) =>
        Temperature.FromKelvins(((step.Step.AtRoom ? room.Kelvins : step.From.Kelvins) + step.To.Kelvins) / 2);

    private static double HoursAtSheetTemperature(CureStepPlan step, Temperature sheet, Temperature room)
    {
        var (from, to) = step.Step.AtRoom ? (Mean(step, room), Mean(step, room)) : (step.From, step.To);
        return Engineering.CureSchedule.Worth(step.End.Value - step.Start.Value, from, to, sheet).Hours;
    }

    private static Fix? Longer(List<CureStepPlan> inMould, Duration missing, Temperature sheet, Temperature room)
    {
        if (inMould.LastOrDefault(s => s.Step is { Action: CureAction.Hold, Duration: not null }) is not { } last)
        {
            return null;
        }

        var speed = Math.Pow(2, (Mean(last, room).Kelvins - sheet.Kelvins) / 10);
        var hours = Math.Ceiling(last.Step.Duration!.Value.Hours + (missing.Hours / speed));
        var text = FormattableString.Invariant($"{hours} h");
        return Edits.Fix($"Hold it {text}", FixSafety.NeedsALook, FigureEdits.Rewrite(last.Step.Duration, text));
    }
}
