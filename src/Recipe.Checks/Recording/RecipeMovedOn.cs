using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>The recipe has moved on since the record was begun.</summary>
public sealed class RecipeMovedOn : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9106",
        Name = "recipe-moved-on",
        Severity = Severity.Warning,
        Title = "The recipe has moved on since the record was begun",
        Reason = "Instructions and result do not match: the papers at the bench say one thing, the record another.",
        Remedy = "Print the papers anew and begin the record anew; or finish this one from the old papers.",
        Source = "common practice",
        Exceptions = """
            Silent once something is decided about the part, since a recipe may move on after that; silent too where what is planned is still
            the same, whatever else of the text has changed.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              planned {
                resin fast-laminating-epoxy
              }
            }
            """,
        GoodExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              planned {
                resin slow-laminating-epoxy
              }
            }
            """,
    };

    internal override void Examine(CheckContext context, LoggedBuild build, BuildLog log)
    {
        if (build.Record.Disposition is not null)
        {
            return;
        }

        if (build.Record.Planned is { } then)
        {
            if (RecordFacts.Differences(then, build.Now) is { Count: > 0 } different)
            {
                context.Report(build.Record.LineOf("revision"), $"the recipe has moved on since this record was begun: {RecordFacts.And(different)}");
            }
        }
        else if (build is { Record.Revision: { } revision, RevisionNow: { } now } && revision.Value != now)
        {
            context.Report(build.Record.LineOf("revision"), $"the record is of revision {revision.Value}; the recipe is {now} now");
        }
    }
}
