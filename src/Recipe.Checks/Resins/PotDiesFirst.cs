using System.Globalization;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>A pot goes off before it is used up.</summary>
public sealed class PotDiesFirst : Check
{
    private const double Margin = 1.1;

    /// <inheritdoc/>
    public override FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC4002",
        Name = "pot-dies-first",
        Severity = Severity.Error,
        Title = "Pot goes off before it is used up",
        Reason = "Resin that gels in the cup is lost, and what is brushed on last never wets the cloth.",
        Remedy = "Mix smaller pots, take more hands, or a slower hardener.",
        Source =
            "US Army TM 1-1500-204-23-11 (page file 0169): within the pot life; half as long for each 10 K more is common "
            + "practice",
        Exceptions = """
            Several small pots of a fast hardener are sound: each pot has its own clock.
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
                room 30 degC
                laminators 1
                pace 150 min/m2
                pot 150 g
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
                room 20 degC
                laminators 1
                pace 5 min/m2
                pot 75 g
                pot 75 g
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
        if (part.Resin is not { } resin || context.Plan.Pots.IsEmpty)
        {
            return;
        }

        if (part.Process.Value == Process.Infused && context.Plan.Flow?.Fill is null)
        {
            context.NotChecked(context.Plan.Missing("fill the part", "the resin never fills the part"), part.Infusion?.Where);
            return;
        }

        // Where the resin thickens before the part is full, that is the finding, and a fresher pot would not help.
        if (context.Plan.Flow is { Fill: { } fill } flow && fill.Value > flow.Thickens.Value)
        {
            return;
        }

        var late = context.Plan.Pots
            .Where(p => p.DeadAt is { } dead && p.UsedUpAt.Value > dead.Value)
            .OrderByDescending(p => p.UsedUpAt.Value - p.DeadAt!.Value.Value)
            .ToList();
        if (late is not [var worst, ..])
        {
            if (context.Plan.Pots.All(p => p.PotLife is null))
            {
                context.NotChecked(resin.PotLife is null ? $"no pot life is given for {resin.Name}" : context.Plan.Missing("pot life", $"the pot life of {resin.Name} is not known"), part.ResinWhere);
            }

            return;
        }

        var used = worst.UsedUpAt.Value - worst.MixedAt.Value;
        var life = worst.DeadAt!.Value.Value - worst.MixedAt.Value;
        context.Report(
            WetOutWords.PotWhere(part, worst.Number),
            $"pot {worst.Number} ({Say.Weighed(worst.Mass.Value, context.Plan.Shop)}) takes {Say.Of(used)} to use up and lives {Say.Of(life)} "
            + $"at {Say.Of(context.Plan.Conditions.Resin.Value, part.WetOut?.ResinTemperature?.Written ?? context.Plan.RoomWritten())}{Say.More(late.Count - 1)}",
            Grounds.Sure.And<Duration>(worst.UsedUpAt).And(worst.DeadAt).And<Temperature>(context.Plan.Conditions.Resin),
            Story(part, worst),
            [MorePots(context.Plan, used / life), MoreHands(context.Plan, used / life)]);
    }

    private static IEnumerable<FindingLabel> Story(Part part, PotPlan pot)
    {
        if (part.ResinWhere is { } mixed)
        {
            yield return new FindingLabel(mixed, "resin mixed for this");
        }

        if (!pot.For.IsEmpty && part.Stack.FirstOrDefault(s => s.Name == pot.For[^1]) is { } last)
        {
            yield return new FindingLabel(last.Where, $"the last of pot {pot.Number} goes here");
        }
    }

    private static Fix? MorePots(Plan plan, double overrun)
    {
        if (plan.Part.WetOut is { PotMasses.IsEmpty: false })
        {
            return null;
        }

        var pots = Math.Max(plan.Pots.Length + 1, (int)Math.Ceiling(plan.Pots.Length * overrun * Margin));
        return Edits.Fix(
            $"Mix {pots} pots",
            FixSafety.NeedsALook,
            WetOutWords.Set(plan.Part, "pots", plan.Part.WetOut?.Pots, pots.ToString(CultureInfo.InvariantCulture)));
    }

    private static Fix? MoreHands(Plan plan, double overrun)
    {
        var hands = (int)Math.Ceiling(plan.Conditions.Laminators.Value * overrun * Margin);
        return hands > WetOutWords.MostHands
            ? null
            : Edits.Fix(
                $"Take {hands} pairs of hands",
                FixSafety.NeedsALook,
                WetOutWords.Set(plan.Part, "laminators", plan.Part.WetOut?.Laminators, hands.ToString(CultureInfo.InvariantCulture)));
    }
}
