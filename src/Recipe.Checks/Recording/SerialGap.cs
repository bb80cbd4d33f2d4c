using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Serial number missing.</summary>
public sealed class SerialGap : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9108",
        Name = "serial-gap",
        Severity = Severity.Advice,
        Title = "Serial number missing",
        Reason = "A scrapped part that is hidden is knowledge lost: it was the one to learn from.",
        Remedy = "Write a record of scrap too: what it was made from, its fault, `disposition scrap`.",
        Source = "common practice",
        Exceptions = """
            The first number that is there is where the log begins.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              disposition use by "K"
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
              }
            }

            build tray no 6 on 2026-05-07 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              disposition use by "K"
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
              disposition use by "K"
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
              }
            }

            build tray no 4 on 2026-05-07 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              disposition use by "K"
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
              }
            }
            """,
    };

    internal override void Examine(CheckContext context, LoggedBuild build, BuildLog log)
    {
        if (log.Before(build)?.Record.Number is { } before && build.Record.Number is { } number && number - before > 1)
        {
            context.Report(
                build.Record.Where,
                number - before == 2
                    ? FormattableString.Invariant($"there is no record of no {before + 1}, between {before} and {number}")
                    : FormattableString.Invariant($"there is no record of nos {before + 1} to {number - 1}, between {before} and {number}"));
        }
    }
}
