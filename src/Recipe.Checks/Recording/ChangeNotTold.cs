using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>First part after a change, and it does not say so.</summary>
public sealed class ChangeNotTold : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9111",
        Name = "change-not-told",
        Severity = Severity.Advice,
        Title = "First part after a change, and it does not say so",
        Reason = "A change that nobody watches is not tried, only made.",
        Remedy = "Say what was changed, `changed \"...\"`, and look harder at this one.",
        Source = "common practice",
        Exceptions = """
            Silent where the record says what was changed. Plans are compared as the records kept them.
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
                laminators 1
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
              changed "weaker pump"
              disposition use by "K"
              planned {
                mixed 52 g
                resin slow-laminating-epoxy
                vacuum 0.6 bar below ambient
                laminators 1
              }
            }
            """,
    };

    internal override void Examine(CheckContext context, LoggedBuild build, BuildLog log)
    {
        if (build.Record is { Changed: null, Planned: { } now } && log.Before(build)?.Record.Planned is { } was && RecordFacts.Differences(was, now) is [var different])
        {
            context.Report(
                build.Record.Where,
                $"this is the first part with another {different}, and the record does not say so",
                labels: [new FindingLabel(log.Before(build)!.Record.Where, "the part before")],
                fixes: [Edits.Last(build.Record.Where, $"changed \"{different}\"") is { } edit ? new Fix("Say that it was changed", FixSafety.NeedsALook, edit) : null]);
        }
    }
}
