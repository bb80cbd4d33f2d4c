using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Hold point not signed.</summary>
public sealed class HoldUnsigned : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9110",
        Name = "hold-unsigned",
        Severity = Severity.Warning,
        Title = "Hold point not signed",
        Reason = "The step may not have happened.",
        Remedy = "Sign it with initials and time, or say under `deviation` why not.",
        Source = "common practice",
        Exceptions = """
            Looked at once something is decided about the part.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              signed H4 by __ at __
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
              signed H4 by "K" at 09:41
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
        if (build.Record.Disposition is not null && build.Record.Blanks.Where(blank => blank.Word == "signed").Select(blank => blank.Where.Source.LineSpan(blank.Where.Start.Line)).Distinct().ToList() is { Count: > 0 } lines)
        {
            context.Report(build.Record.Blanks.First(blank => blank.Word == "signed").Where, $"a hold point is not signed, and the part is decided about{Say.More(lines.Count - 1)}");
        }
    }
}
