using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Lots missing.</summary>
public sealed class LotsMissing : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9105",
        Name = "lots-missing",
        Severity = Severity.Advice,
        Title = "Lots missing",
        Reason = "A bad tin cannot be traced to the parts that were made from it.",
        Remedy = "Write what was used with the lot of each tin and roll.",
        Source = "common practice",
        Exceptions = """
            Looked at once the part is weighed or decided about. A record that keeps no plan is left alone.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
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
        if (!record.IsMade() || record.Planned is null)
        {
            return;
        }

        if (record.Used.IsEmpty)
        {
            context.Report(record.Where, "no lot of any material is written down");
        }
        else if (record.Used.FirstOrDefault(line => string.IsNullOrWhiteSpace(line.Lot)) is { } first)
        {
            context.Report(first.Where, $"no lot is written down for {first.Material}{Say.More(record.Used.Count(line => string.IsNullOrWhiteSpace(line.Lot)) - 1)}");
        }
    }
}
