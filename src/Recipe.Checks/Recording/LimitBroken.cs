using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>A reading lies beyond its limit and nobody decided anything.</summary>
public sealed class LimitBroken : RecordCheck
{
    private static readonly string[] Decisions = ["use", "repair", "scrap"];

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9101",
        Name = "limit-broken",
        Severity = Severity.Error,
        Title = "Limit broken, nothing decided",
        Reason = "The next person assumes that it was fine, and the limit is worth nothing from then on.",
        Remedy = "Decide: use, repair or scrap, with the reason and initials.",
        Source = "common practice",
        Exceptions = """
            Silent once a `disposition` stands in the record; one that uses the part needs its reason, see RC9102. The limits are those that the record kept when it was begun;
            a vacuum short by up to 5 % is the gauge.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-06 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              mass 101 g
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
              disposition repair because "pool in the middle, sanded back" by "K"
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
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

        foreach (var (word, message) in build.BrokenLimits())
        {
            var line = build.Record.LineOf(word);
            context.Report(
                line,
                $"{message}, and nothing is decided",
                fixes: Decisions.Select(decision => new Fix($"Decide to {decision} it", FixSafety.NeedsALook, Edits.After(line, $"disposition {decision} because \"say why\""))));
        }
    }
}
