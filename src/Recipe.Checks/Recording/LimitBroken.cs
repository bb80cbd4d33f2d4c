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
            Silent once a `disposition` stands in the record. The limits are those that the record kept when it was begun.
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

    private static void Report(CheckContext context, LoggedBuild build, string word, string message) => context.Report(
        build.Record.LineOf(word),
        $"{message}, and nothing is decided",
        fixes: Decisions.Select(decision => new Fix(
            $"Decide to {decision} it", FixSafety.NeedsALook, Edits.After(build.Record.LineOf(word), $"disposition {decision} because \"say why\""))));

    internal override void Examine(CheckContext context, LoggedBuild build, BuildLog log)
    {
        var (record, planned) = (build.Record, build.Planned);
        if (record.Disposition is not null || planned is null)
        {
            return;
        }

        if (record.Rise is { Value: var rise } found && planned.RiseAtMost is { } most && rise > most && (record.RiseTime is null || planned.RiseTime is null || record.RiseTime.Value <= planned.RiseTime.Value))
        {
            Report(context, build, "rise", $"the pressure rose by {Say.Of(found)}; at most {Say.Of(most, found.Written)} is accepted");
        }

        if (record.Hottest is { } hottest && planned.HeatLimit is { } limit && hottest.Value > limit)
        {
            Report(context, build, "cure", $"it got {Say.Of(hottest)} hot; the weakest thing in the heat stands {Say.Of(limit, hottest.Written)}");
        }

        if (build.IsInBand() == false)
        {
            Report(context, build, "mass", $"the part weighs {Say.Of(record.Mass!)}; its band is {Say.Of(planned.MassLow!.Value, record.Mass!.Written)} to {Say.Of(planned.MassHigh!.Value, record.Mass!.Written)}");
        }
    }
}
