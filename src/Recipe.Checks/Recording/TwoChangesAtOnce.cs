using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Two things changed at once.</summary>
public sealed class TwoChangesAtOnce : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9107",
        Name = "two-changes-at-once",
        Severity = Severity.Advice,
        Title = "Two things changed at once",
        Reason = "Nobody can say which of them did it.",
        Remedy = "Change one thing, build, weigh; then the next. Where it had to be, say so: `changed \"...\"`.",
        Source = "common practice",
        Exceptions = """
            Silent where the record says what was changed on purpose. Plans are compared as the records kept them.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              vacuum on 09:50
              disposition use by "K"
              planned {
                mixed 52 g
                resin slow-laminating-epoxy
                vacuum 0.9 bar below ambient
                laminators 1
              }
            }

            build tray no 4 on 2026-05-07 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              vacuum on 09:50
              disposition use by "K"
              planned {
                mixed 52 g
                resin slow-laminating-epoxy
                vacuum 0.6 bar below ambient
                laminators 2
              }
            }
            """,
        GoodExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              vacuum on 09:50
              disposition use by "K"
              planned {
                mixed 52 g
                resin slow-laminating-epoxy
                vacuum 0.9 bar below ambient
                laminators 1
              }
            }

            build tray no 4 on 2026-05-07 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              vacuum on 09:50
              changed "weaker pump, so two pairs of hands"
              disposition use by "K"
              planned {
                mixed 52 g
                resin slow-laminating-epoxy
                vacuum 0.6 bar below ambient
                laminators 2
              }
            }
            """,
    };

    internal override void Examine(CheckContext context, LoggedBuild build, BuildLog log)
    {
        if (build.Record is { Changed: null, Planned: { } now } && log.Before(build)?.Record.Planned is { } was && RecordFacts.Differences(was, now) is { Count: > 1 } different)
        {
            context.Report(
                build.Record.Where,
                $"since the part before {RecordFacts.And(different)} are changed together",
                labels: [new FindingLabel(log.Before(build)!.Record.Where, "the part before")]);
        }
    }
}
