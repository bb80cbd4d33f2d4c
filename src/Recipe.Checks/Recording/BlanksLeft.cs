using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Blanks left in a record.</summary>
public sealed class BlanksLeft : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9112",
        Name = "blanks-left",
        Severity = Severity.Advice,
        Title = "Blanks left in a record",
        Reason = "In a month nobody knows whether it was forgotten or did not apply.",
        Remedy = "Fill them in, or take the lines away that do not apply.",
        Source = "common practice",
        Exceptions = """
            Looked at once something is decided about the part. Blanks of hold points are another finding.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              humidity __
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
              humidity 52 %
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
        var blanks = build.Record.Blanks.Where(blank => blank.Word != "signed").ToList();
        if (build.Record.Disposition is not null && blanks.Count > 0)
        {
            context.Report(blanks[0].Where, $"`{blanks[0].Word}` has a blank, and the part is decided about{Say.More(blanks.Count - 1)}");
        }
    }
}
