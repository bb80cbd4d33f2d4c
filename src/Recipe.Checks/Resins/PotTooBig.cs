using System.Globalization;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>More is mixed at once than the resin stands in a cup.</summary>
public sealed class PotTooBig : Check
{
    private const double DataSheetFactor = 2;

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4005",
        Name = "pot-too-big",
        Severity = Severity.Warning,
        Title = "Pot larger than the resin stands",
        Reason = "Resin heats itself, and the more of it stands together the hotter it gets: it gels in minutes and smokes.",
        Remedy = "Mix smaller pots, or pour it into a shallow tray at once.",
        Source = "common practice; one light-aircraft maintenance manual mixes about 100 g a pot",
        Exceptions = """
            Silent for a tray. Without a `largest-pot` the limit is twice the mass that the pot life is given for, and an infusion resin
            that lives two hours or more is then left alone. A pot that can burn is another finding.
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
              wet-out {
                pot 400 g
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
              wet-out {
                pot 400 g
                tray yes
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
        var part = context.Part;
        if (part.Resin is not { } resin || part.WetOut?.Tray is { Value: true } || context.Plan.Pots.IsEmpty)
        {
            return;
        }

        var isInfusionResin = part.Process.Value == Process.Infused && resin.PotLife is { Value.Time.Hours: >= 2 };
        if (resin.LargestPot is null && isInfusionResin)
        {
            return;
        }

        if ((resin.LargestPot?.Value ?? resin.PotLife?.Value.In * DataSheetFactor) is not { } largest)
        {
            context.NotChecked($"no largest pot is given for {resin.Name}", part.ResinWhere);
            return;
        }

        var big = context.Plan.Pots
            .Where(p => p.Mass.Value > largest && !RunawayPot.CanBurn(resin, p))
            .OrderByDescending(p => p.Mass.Value)
            .ThenBy(p => p.Number)
            .ToList();
        if (big is not [var worst, ..])
        {
            return;
        }

        var grounds = Grounds.Sure.And($"largest pot of {resin.Name}", resin.LargestPot).And<Mass>(worst.Mass);
        // Without a figure of its own it is another limit than the one that pots are planned by, which is said among the assumptions.
        var stands = resin.LargestPot is null ? $"{Say.Of(largest)} in a cup, twice the mass of its pot life" : $"{Say.Of(largest)} in a cup";
        context.Report(
            WetOutWords.PotWhere(part, worst.Number),
            $"pot {worst.Number} holds {Say.Weighed(worst.Mass.Value, context.Plan.Shop)}; {resin.Name} stands {stands}{Say.More(big.Count - 1)}",
            resin.LargestPot is null ? grounds.AndThat("a cup may hold twice the mass that the pot life is given for") : grounds,
            part.ResinWhere is { } named ? [new FindingLabel(named, "resin named here")] : [],
            [SmallerPots(context.Plan, largest), Tray(part)]);
    }

    private static Fix? SmallerPots(Plan plan, Mass largest)
    {
        if (plan.Part.WetOut?.Pots is not { } pots)
        {
            return null;
        }

        var total = plan.Pots.Sum(p => p.Mass.Value.Kilograms);
        var enough = (int)Math.Ceiling(total / largest.Kilograms);
        return Edits.Fix($"Mix {enough} pots", FixSafety.NeedsALook, FigureEdits.Rewrite(pots, enough.ToString(CultureInfo.InvariantCulture)));
    }

    private static Fix? Tray(Part part) =>
        Edits.Fix("Pour it into a shallow tray", FixSafety.NeedsALook, WetOutWords.Set(part, "tray", part.WetOut?.Tray, "yes"));
}
