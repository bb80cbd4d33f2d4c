using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Used beyond a limit (mass, leak, heat) without a reason.</summary>
public sealed class UsedOutOfBand : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9102",
        Name = "used-out-of-band",
        Severity = Severity.Warning,
        Title = "Used beyond a limit without a reason",
        Reason = "Light is dry or a ply short, heavy is wet, a bag that leaked let air in: each is a cause that comes again.",
        Remedy = "Say why it may be used.",
        Source = "common practice: a practice panel of six plies is allowed 9 %; from memory",
        Exceptions = """
            Silent where the disposition says `because`, and where the part is repaired or scrapped.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              mass 101 g
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
              mass 101 g
              disposition use because "heavy at the rim, no load there" by "K"
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
              }
            }
            """,
    };

    internal override void Examine(CheckContext context, LoggedBuild build, BuildLog log)
    {
        if (build.Record.Disposition is not { Decision: Disposition.Use, Because: null or "" } decision)
        {
            return;
        }

        // One decision, one reason, however many limits it passes over.
        var broken = build.BrokenLimits().ToList();
        if (broken is [var first, .. var others])
        {
            context.Report(
                decision.Where,
                $"{first.Message}, and it is used without a reason{Say.More(others.Count)}",
                labels: [new FindingLabel(build.Record.LineOf(first.Word), "found here"), .. others.Select(other => new FindingLabel(build.Record.LineOf(other.Word), other.Message))],
                fixes: [new Fix("Add the reason", FixSafety.NeedsALook, Edits.Append(decision.Where, "because \"say why\""))]);
        }
    }
}
