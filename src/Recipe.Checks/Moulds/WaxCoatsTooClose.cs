using Recipe.Model;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>The next coat of wax follows before the last one has hardened.</summary>
public sealed class WaxCoatsTooClose : Check
{
    private static readonly Duration Enough = Duration.FromMinutes(20);

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC2003",
        Name = "wax-coats-too-close",
        Severity = Severity.Warning,
        Title = "Wax coats follow each other too closely",
        Reason = "The solvent of the next coat lifts a coat that has not hardened, so that five hurried coats are worth one.",
        Remedy = "Leave 30 to 60 minutes between coats and buff each to a gloss.",
        Source = "common practice (30 min between coats); the limit of 20 min from memory of the trade",
        Exceptions = """
            Silent for a single coat, and when the wax itself is declared with a shorter `wait`: then its maker says so.
            """,
        BadExample = """
            mould tray-mould {
              surface flat 400 mm x 300 mm
              made-of epoxy-glass-tooling
              release {
                carnauba-wax coats 5 wait 10 min
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
              cure {
                hold 20 degC for 48 h
                demould
              }
            }
            """,
    };

    /// <inheritdoc/>
    public override void Examine(CheckContext context)
    {
        foreach (var wax in context.Part.Mould?.Release ?? [])
        {
            if (wax.Agent.Kind != ReleaseKind.Wax || wax.Coats is { Value: < 2 })
            {
                continue;
            }

            if (wax.Wait is null || wax.Coats is null)
            {
                var missing = wax.Wait is null ? "time between coats" : "number of coats";
                context.NotChecked($"no {missing} is known for {wax.Agent.Name}", wax.Where);
                continue;
            }

            var limit = wax.Agent.Wait is { } makers && makers.Value < Enough ? makers.Value : Enough;
            if (wax.Wait.Value < limit)
            {
                context.Report(
                    wax.Where,
                    $"{Say.Of(wax.Wait)} between coats of {wax.Agent.Name}, which wants {Say.Of(limit)} or more",
                    Grounds.Sure.And($"time between coats of {wax.Agent.Name}", wax.Wait),
                    fixes: [Edits.Fix("Wait 30 min between coats", FixSafety.Safe, FigureEdits.Rewrite(wax.Wait, "30 min"))]);
            }
        }
    }
}
