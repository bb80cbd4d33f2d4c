using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The vacuum goes before the resin has set for sure.</summary>
public sealed class VacuumOffEarly : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC6013",
        Name = "vacuum-off-early",
        Severity = Severity.Error,
        Title = "Vacuum off before the resin is firm",
        Reason = "A laminate that is still soft springs off the mould when the bag lets go, and air comes back into it.",
        Remedy = "Hold the vacuum until the resin is firm: one and a half times its gel time at the least.",
        Source = "common practice: 1.5 times the gel time, and not before a late resin has gelled too",
        Exceptions = """
            A swap from vacuum to weights after gel is accepted with a written reason. Rests on a cure model where the resin has one, else on the gel time of the sheet, carried to the temperature of the room.
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
              }
              cure {
                hold 20 degC for 4 h under vacuum
                vent
                hold 20 degC for 44 h
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
              }
              cure {
                hold 20 degC for 48 h under vacuum
                demould
              }
            }
            """,
    };

    private const double Hold = 1.5;
    private const double Slack = 0.95;
    private static readonly Duration Rounding = Duration.FromSeconds(1);

    /// <inheritdoc/>
    public override LinesRead? Reads(Part part) => part.Cure is { } cure ? new LinesRead(cure.Where, AllOfTheLine: true) : null;

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        var (part, plan) = (context.Part, context.Plan);
        if (part.Process.Value is Process.Prepreg or Process.Hand || part.Vacuum is not { } vacuum || part.Resin is not { } resin)
        {
            return;
        }

        if (vacuum is { Off: { } words, Hold: null } && IsBeforeGel(words))
        {
            context.Report(
                vacuum.OffWhere ?? vacuum.Where,
                $"the vacuum goes \"{words}\", while {resin.Name} is liquid",
                labels: part.ResinWhere is { } liquid ? [new FindingLabel(liquid, "resin mixed for this")] : [],
                fixes: [vacuum.OffWhere is { } line ? new Fix("Leave it on until gel", FixSafety.NeedsALook, Edits.Replace(line, "off after gel")) : null]);
            return;
        }

        if (Off(part, plan) is not { } off)
        {
            return;
        }

        if (Needed(resin, plan) is not { } needed)
        {
            context.NotChecked($"no gel time is given for {resin.Name}", part.ResinWhere);
            return;
        }

        if (off.At >= needed.Time * Slack)
        {
            return;
        }

        context.Report(
            off.Where,
            $"the vacuum goes after {Say.Of(off.At)}; {resin.Name} {needed.Words} {Say.Of(Duration.FromMinutes(Math.Round(needed.Time.Minutes)))}",
            needed.Grounds,
            part.ResinWhere is { } mixed ? [new FindingLabel(mixed, "resin mixed for this")] : [],
            [Longer(vacuum, off.At, needed.Time), LongerStep(plan, off.At, needed.Time)]);
    }

    // "when the feed is clamped", "at full wet"; not "after gel", nor "when the leftover is hard".
    private static bool IsBeforeGel(string words) =>
        TradeWords.Says(words, "clamp", "full", "fill", "wet", "feed", "infus")
        && !TradeWords.Says(words, "gel", "cure", "hard", "set", "firm", "solid", "overnight", "demould", "debag", "morning", "day");

    // When it comes off, and what says so: the step of the cure that lets it go, or the hours of the vacuum block. A cure that never says so leaves it on.
    private static (Duration At, Text.SourceSpan Where)? Off(Part part, Plan plan)
    {
        var step = plan.Cure?.Steps.FirstOrDefault(s => s.Step.LetsVacuumGo);
        if (part.Vacuum is { Hold: { } hold } vacuum && (step is null || plan.Cure!.VacuumOff?.Value < step.Start.Value))
        {
            return (hold.Value, hold.Where ?? vacuum.Where);
        }

        return step is null ? null : (step.Start.Value, step.Step.Where);
    }

    private static (Duration Time, string Words, Grounds Grounds)? Needed(ResinSystem resin, Plan plan)
    {
        if (plan.Cure?.Progress is { VacuumOff: { } firm, OwnKinetics: true })
        {
            return (firm.Value, "is firm only after", Grounds.Sure.And<Duration>(firm));
        }

        if (resin.GelTime is not { } gel)
        {
            return null;
        }

        var room = plan.Conditions.Night ?? plan.Conditions.Room;
        var warm = plan.Cure?.Steps.FirstOrDefault(s => s.Step.Action == CureAction.Hold)?.To ?? room.Value;
        var grounds = Grounds.Sure.And($"gel time of {resin.Name}", gel);
        return (
            gel.Value.AtTemperature(warm) * Hold,
            "wants 1.5 times its gel time,",
            Math.Abs(warm.Kelvins - gel.Value.At.Kelvins) < 0.5 ? grounds : grounds.AndThat("gel time halves for each 10 degC warmer"));
    }

    private static Fix? Longer(VacuumPlan vacuum, Duration off, Duration needed) => vacuum.Hold is { } hold && hold.Value.Equals(off, Rounding)
        ? Edits.Fix($"Hold it {Hours(needed)}", FixSafety.NeedsALook, FigureEdits.Rewrite(hold, Hours(needed)))
        : null;

    private static Fix? LongerStep(Plan plan, Duration off, Duration needed)
    {
        var last = plan.Cure?.Steps.LastOrDefault(s => s.Step is { Action: CureAction.Hold, Duration: not null } && s.End.Value <= off);
        return last?.Step.Duration is { } time && last.End.Value.Equals(off, Rounding)
            ? Edits.Fix(
                $"Hold it {Hours(needed - off + time.Value)}", FixSafety.NeedsALook, FigureEdits.Rewrite(time, Hours(needed - off + time.Value)))
            : null;
    }

    private static string Hours(Duration time) => FormattableString.Invariant($"{Math.Ceiling(time.Hours)} h");
}
