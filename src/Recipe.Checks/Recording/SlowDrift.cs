using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Slow drift.</summary>
public sealed class SlowDrift : RecordCheck
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC9109",
        Name = "slow-drift",
        Severity = Severity.Advice,
        Title = "Slow drift",
        Reason = "Something wears or is learnt: wax, scale, roll, hands. Three in a row is when it can still be stopped.",
        Remedy = "Stop and look before the next: weigh a known mass, count the pulls, look at the roll.",
        Source = "common practice; from memory",
        Exceptions = """
            Three parts in a row, so two steps, that go the same way, by more than 2 % in mass or resin mixed, or by half in the rise of the leak check.
            """,
        BadExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-03 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              mass 84 g
              disposition use by "K"
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
              }
            }

            build tray no 4 on 2026-05-04 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              mass 86 g
              disposition use by "K"
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
              }
            }

            build tray no 5 on 2026-05-05 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              mass 88 g
              disposition use by "K"
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
              }
            }
            """,
        GoodExample = RecordExamples.Tray + """
            build tray no 3 on 2026-05-03 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              mass 84 g
              disposition use by "K"
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
              }
            }

            build tray no 4 on 2026-05-04 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              mass 86 g
              disposition use by "K"
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
              }
            }

            build tray no 5 on 2026-05-05 {
              by "K"
              used slow-laminating-epoxy 52 g lot "E31"
              pot 1 resin 40 g hardener 12 g mixed-at 09:00 dead-at 09:40
              demould after 48 h at 20 degC
              mass 85 g
              disposition use by "K"
              planned {
                mixed 52 g
                mass 88 g band 80 g to 96 g
              }
            }
            """,
    };

    private static void Look(CheckContext context, LoggedBuild build, string word, string what, IReadOnlyList<double?> values, double share)
    {
        if (values is [{ } a, { } b, { } c] && a > 0 && (a < b) == (b < c) && a != b && b != c && Math.Abs(c - a) > share * a)
        {
            context.Report(build.Record.LineOf(word), $"{what} has gone {(c > a ? "up" : "down")} from part to part over the last three, by {Say.Percent(Math.Round(Math.Abs(c - a) / a, 2))} altogether");
        }
    }

    internal override void Examine(CheckContext context, LoggedBuild build, BuildLog log)
    {
        if (log.Before(build) is not { } second || log.Before(second) is not { } first)
        {
            return;
        }

        var all = new[] { first.Record, second.Record, build.Record };
        Look(context, build, "mass", "the mass", [.. all.Select(record => record.Mass?.Value.Kilograms)], 0.02);
        Look(context, build, "mixed", "the resin mixed", [.. all.Select(record => record.MixedMass?.Kilograms)], 0.02);
        Look(context, build, "rise", "the rise of the leak check", [.. all.Select(record => record.Rise?.Value.Pascals)], 0.5);
    }
}
