using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Times missing.</summary>
public sealed class TimesMissing : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9104",
        Name = "times-missing",
        Severity = Severity.Warning,
        Title = "Times missing",
        Reason = "Whether the resin was still alive when the bag closed cannot be told afterwards.",
        Remedy = "Write when each pot was mixed, when the pump was switched on, and how long the part stayed in the mould.",
        Source = "common practice",
        Exceptions = """
            Looked at once the part is weighed or decided about. A record that keeps no plan is left alone.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g
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
        if (!record.IsMade() || record.Planned is not { } planned)
        {
            return;
        }

        var missing = new List<string>();
        if (planned.Mixed is { Kilograms: > 0 } && record.Pots.FirstOrDefault(pot => pot.MixedAt is null) is { } pot)
        {
            missing.Add($"when pot {Say.Number(pot.Number)} was mixed");
        }

        if (planned.Vacuum is not null && record.Vacuum?.On is null)
        {
            missing.Add("when the pump was switched on");
        }

        if (record.Demould is null)
        {
            missing.Add("how long it stayed in the mould");
        }

        if (missing.Count > 0)
        {
            context.Report(record.Where, $"it is not written down {RecordFacts.And(missing)}");
        }
    }
}
