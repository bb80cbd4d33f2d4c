using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The pot is stirred for less than two minutes, or nobody scrapes it.</summary>
public sealed class MixedInHaste : Check
{
    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4107",
        Name = "mixed-in-haste",
        Severity = Severity.Advice,
        Title = "Pot mixed in haste",
        Reason = "Resin that clings to the wall and the stick never meets hardener, and comes out as a soft spot.",
        Remedy = "Stir for two to four minutes, scrape sides, corners and stick, and stir on.",
        Source = "US Army TM 1-1500-204-23-11 (page file 0169): flat-ended stick, scrape, fold; common practice (two to four minutes)",
        Exceptions = """
            Speaks only where a `mix` block writes the steps down.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              mix {
                add resin
                add hardener
                stir 1 min
                scrape
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
        GoodExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 30 min
              }
            }

            part tray {
              mould tray-mould
              process hand
              resin slow-laminating-epoxy
              plies {
                outer glass-twill-163 0/90
                inner glass-twill-163 0/90
              }
              mix {
                add resin
                add hardener
                stir 3 min
                scrape
              }
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    private static readonly Duration Enough = Duration.FromMinutes(2);

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        if (context.Part.Mixing is not { } mixing)
        {
            return;
        }

        var hardener = mixing.Steps.IndexOf(s => s.Action == MixAction.AddHardener);
        if (hardener < 0)
        {
            return;
        }

        var after = mixing.Steps.Skip(hardener).ToList();
        var stirs = after.Where(s => s.Action == MixAction.Stir).ToList();
        var total = Duration.FromSeconds(stirs.Sum(s => s.Time?.Value.Seconds ?? 0));
        if (total < Enough)
        {
            context.Report(
                stirs is [var first, ..] ? first.Where : mixing.Where,
                stirs.Count == 0 ? "nothing says that the pot is stirred; 2 min or more are wanted" : $"the pot is stirred {Say.Of(total)}; {Say.Of(Enough)} or more are wanted",
                fixes: [stirs is [{ Time: { } time }]
                    ? Edits.Fix("Stir 3 min", FixSafety.Safe, FigureEdits.Rewrite(time, "3 min"))
                    : Edits.Fix("Stir 3 min more", FixSafety.Safe, Edits.After((stirs is [.., var last] ? last : mixing.Steps[hardener]).Where, "stir 3 min"))]);
            return;
        }

        if (!after.Any(s => s.Action is MixAction.Scrape or MixAction.SecondCup))
        {
            context.Report(
                mixing.Where,
                "nothing says that the sides of the pot are scraped",
                fixes: [Edits.Fix("Scrape after the stirring", FixSafety.Safe, Edits.After(stirs[0].Where, "scrape"))]);
        }
    }
}
