using System.Globalization;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Cloth was wetted out after the last pot had gone off.</summary>
public sealed class LaidWithDeadResin : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9115",
        Name = "laid-with-dead-resin",
        Severity = Severity.Warning,
        Title = "Laid on after the last pot was dead",
        Reason = "Resin that gels in the cup no longer wets cloth: what is laid on last lies dry between two wet plies, and does not hold.",
        Remedy = "Check the times. If they are right, tap the part where it was laid last, and write what was decided.",
        Source = "common practice",
        Exceptions = """
            Speaks where the end of the wetting-out is more than 2 min behind the last `dead-at`, and every pot has one. Silent once it is repaired or scrapped.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              wet-out from 09:04 until 09:50 over 0.24 m2 pieces 2
              demould after 48 h at 20 degC
              mass 88 g
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
              }
            }
            """,
        GoodExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              wet-out from 09:04 until 09:30 over 0.24 m2 pieces 2
              demould after 48 h at 20 degC
              mass 88 g
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
              }
            }
            """,
    };

    // Two clocks are looked at, and the time is written in minutes.
    private static readonly TimeSpan Slack = TimeSpan.FromMinutes(2);

    internal override void Examine(CheckContext context, LoggedBuild build, BuildLog log)
    {
        var record = build.Record;
        if (record.Disposition?.Decision is Model.Disposition.Repair or Model.Disposition.Scrap
            || record.Pots is not [{ MixedAt: { } start }, ..] pots || pots.Any(pot => pot.MixedAt is null || pot.DeadAt is null))
        {
            return;
        }

        // Work may go past midnight: times count from the first mix.
        var last = pots.MaxBy(pot => pot.DeadAt!.Value - start)!;
        var late = record.WetOut.Where(line => line.Until is not null).MaxBy(line => line.Until!.Value - start);
        if (late?.Until is not { } until || (until - start) - (last.DeadAt!.Value - start) <= Slack)
        {
            return;
        }

        context.Report(
            late.Where,
            $"wetted out until {Clock(until)}; pot {Say.Number(last.Number)}, the last, was dead at {Clock(last.DeadAt.Value)}",
            labels: [new FindingLabel(last.Where, "dead here")]);
    }

    private static string Clock(TimeOnly time) => time.ToString("HH:mm", CultureInfo.InvariantCulture);
}
