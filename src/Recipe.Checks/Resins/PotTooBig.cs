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
            Silent for a tray. Without a `largest-pot` the limit is twice the mass that the pot life is given for (100 g where the sheet
            does not say): that is as far as a cup goes. Pots are planned smaller than that, at the largest mass that the assumptions list
            (150 g in a cup, 1 kg in a feed pot), and where that is more than the twofold it is the limit: what is planned is not blamed.
            An infusion resin that lives two hours or more is left alone. A pot that can burn is another finding.
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

        if (Largest(part, resin) is not var (largest, words, assumed))
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
        context.Report(
            WetOutWords.PotWhere(part, worst.Number),
            $"pot {worst.Number} holds {Say.Weighed(worst.Mass.Value, context.Plan.Shop)}; {words}{Say.More(big.Count - 1)}",
            assumed is null ? grounds : grounds.AndThat(assumed),
            part.ResinNamed(),
            [SmallerPots(context.Plan, largest), Tray(part)]);
    }

    /// <summary>
    /// The most that may stand in a cup, in words that follow the mass of a pot, and what is assumed for it: the sheet's own figure; else twice
    /// the mass of its pot life, and no less than what pots are planned by. Null without a figure and without a pot life.
    /// </summary>
    internal static (Mass Most, string Words, string? Assumed)? Largest(Part part, ResinSystem resin)
    {
        if (resin.LargestPot is { } own)
        {
            return (own.Value, $"{resin.Name} stands {Say.Of(own.Value)} in a cup", null);
        }

        if (resin.PotLife is not { } life)
        {
            return null;
        }

        var planned = part.Process.Value == Process.Infused ? Defaults.LargestFeedPot : Defaults.LargestPot;
        var measured = life.Value.In ?? Defaults.PotLifeMass.Value;
        var twice = measured * DataSheetFactor;
        return twice >= planned.Value
            ? (twice, $"{resin.Name} stands {Say.Of(twice)} in a cup, twice the {Say.Of(measured)} of its pot life", "a cup may hold twice the mass that the pot life is given for")
            : (planned.Value, $"without a largest pot of its own {resin.Name} is mixed in pots of {planned.Written} at most", $"{planned.What}: {planned.Written}");
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
