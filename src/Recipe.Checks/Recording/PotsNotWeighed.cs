using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Pots without their weights.</summary>
public sealed class PotsNotWeighed : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9103",
        Name = "pots-not-weighed",
        Severity = Severity.Warning,
        Title = "Pots without their weights",
        Reason = "Without what the scale showed nobody can tell a wrong ratio from a bad tin.",
        Remedy = "Write resin and hardener of each pot as the scale showed them.",
        Source = "common practice of laminators",
        Exceptions = """
            Looked at once the part is weighed or decided about, where the plan mixes resin. A record that keeps no plan is left alone.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 mixed-at 09:00 dead-at 09:40
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
              demould after 48 h at 20 degC
              mass 88 g
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
              }
            }
            """,
    };

    internal override void Examine(CheckContext context, LoggedBuild build, BuildLog log)
    {
        var record = build.Record;
        if (!record.IsMade() || record.Planned is not { Mixed.Kilograms: > 0 })
        {
            return;
        }

        if (record.Pots.IsEmpty && record.Mixed is null)
        {
            context.Report(record.Where, "no pot is written down, and the plan mixes " + Say.Of(record.Planned.Mixed!.Value));
        }

        foreach (var pot in record.Pots.Where(pot => pot.Total is null))
        {
            context.Report(pot.Where, $"pot {Say.Number(pot.Number)} has no {(pot.Resin is null ? pot.Hardener is null ? "weights" : "weight of resin" : "weight of hardener")}");
        }
    }
}
