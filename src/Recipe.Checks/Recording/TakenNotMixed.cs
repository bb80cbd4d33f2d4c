using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>What was taken from the shelf is not what the pots held.</summary>
public sealed class TakenNotMixed : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9114",
        Name = "taken-not-mixed",
        Severity = Severity.Warning,
        Title = "Shelf and pots disagree",
        Reason = "The form has the planned amount in it already. Left as it is, the shelf is counted wrong from this part on, and nobody learns what a part takes.",
        Remedy = "Write what was taken from the tin: the pots and what was thrown away.",
        Source = "common practice",
        Exceptions = """
            Silent up to a tenth of what was mixed, and up to 5 g. Silent while the pots are not all weighed, and for a part with a seam, whose pots the record does not ask for.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 75 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              mass 88 g
              disposition use by "K"
            }
            """,
        GoodExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              mass 88 g
              disposition use by "K"
            }
            """,
    };

    private const double Share = 0.1;
    private static readonly Mass Least = Mass.FromGrams(5);

    internal override void Examine(CheckContext context, LoggedBuild build, BuildLog log)
    {
        var record = build.Record;
        if (!record.IsMade() || build.Part.Join is not null || (record.Planned?.Resin ?? build.Part.Resin?.Name) is not { } resin || record.MixedMass is not { } mixed || RecordedMix.Taken(record, resin) is not { } taken)
        {
            return;
        }

        var off = Mass.FromKilograms(Math.Abs(taken.Kilograms - mixed.Kilograms));
        if (off > Least && off > mixed * Share)
        {
            var line = record.Used.First(used => used.Material == resin);
            context.Report(
                line.Where,
                $"{Say.About(taken, line.Written)} of {resin} were taken from the shelf; {(record.Mixed is null ? "the pots held" : "mixed were")} {Say.About(mixed, line.Written)}",
                labels: [new FindingLabel(record.Mixed?.Where ?? record.Pots.First().Where, "mixed here")]);
        }
    }
}
