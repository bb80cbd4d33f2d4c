using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>What the checks of heat limits share: the weakest thing in the oven decides, and one message names it.</summary>
internal static class Heat
{
    // Below this no consumable of the trade gives way, so an unknown limit is nothing to speak of.
    private static readonly Temperature UnknownMattersAbove = Temperature.FromDegreesCelsius(60);

    /// <summary>
    /// What a temperature may lie over its limit unsaid: a limit of 121 degC is 250 degF on the same sheet, and what lies between is rounding from one
    /// scale to the other.
    /// </summary>
    public static TemperatureDelta Rounding { get; } = TemperatureDelta.FromKelvins(0.5);

    /// <summary>Reports the things of one kind that get hotter than they stand.</summary>
    /// <param name="context">The check's context.</param>
    /// <param name="isOfThisKind">Which of the things in the heat are meant.</param>
    /// <param name="isThere">In which steps of the cure they are in the heat.</param>
    public static void Examine(CheckContext context, Func<HeatLimit, bool> isOfThisKind, Func<CureStepPlan, bool> isThere)
    {
        if (context.Plan.Cure is not { } cure)
        {
            return;
        }

        var things = cure.Limits.Where(isOfThisKind).ToList();
        var tooHot = things
            .Where(t => t.Limit is { } limit && t.Hottest > limit.Value + Rounding)
            .OrderBy(t => t.Limit!.Value.IsAssumed)
            .ThenBy(t => t.Limit!.Value.Value)
            .ThenBy(t => t.Item, StringComparer.Ordinal)
            .DistinctBy(t => t.Item)
            .ToList();
        if (tooHot is [var worst, ..])
        {
            ReportWorst(context, cure, worst, tooHot, isThere);
            return;
        }

        var unknown = things.Where(t => t.Limit is null && t.Hottest > UnknownMattersAbove).Select(t => t.Item).Distinct().ToList();
        if (unknown.Count > 0)
        {
            context.NotChecked(
                $"no heat limit is known for {unknown[0]}{Say.More(unknown.Count - 1)}",
                things.First(t => t.Item == unknown[0]).Where);
        }
    }

    private static void ReportWorst(
        CheckContext context, CurePlan cure, HeatLimit worst, List<HeatLimit> tooHot, Func<CureStepPlan, bool> isThere)
    {
        var step = worst.HottestStep >= 0 && worst.HottestStep < cure.Steps.Length ? cure.Steps[worst.HottestStep].Step : null;
        var written = step?.Temperature?.Written;
        var weakest = tooHot.Min(t => t.Limit!.Value.Value);
        context.Report(
            step?.Where ?? worst.Where,
            $"the cure reaches {Say.Of(worst.Hottest, written)}; {worst.Item} stands {Say.Of(worst.Limit!.Value.Value, written)}"
            + Say.More(tooHot.Count - 1),
            Grounds.Sure.And(worst.Limit),
            tooHot.Select(t => new FindingLabel(t.Where, $"{t.Item} here")).DistinctBy(l => l.Where),
            [Cap(cure.Steps.Where(isThere).Select(s => s.Step), weakest)]);
    }

    /// <summary>Takes the steps that are hotter than a limit down to it, in the whole degrees of their own scale; null where one of them is written elsewhere.</summary>
    public static Fix? Cap(IEnumerable<CureStep> steps, Temperature limit)
    {
        var edits = ImmutableArray.CreateBuilder<TextEdit>();
        var title = "";
        foreach (var step in steps.Where(s => s.Temperature is { } t && t.Value > limit + Rounding))
        {
            var unit = Say.UnitLike(step.Temperature!.Written, "degC");
            var text = FormattableString.Invariant($"{Math.Floor(unit.FromSi(limit.Kelvins) + 1e-9)} {unit.Symbol}");
            if (FigureEdits.Rewrite(step.Temperature, text) is not { } edit)
            {
                return null;
            }

            edits.Add(edit);
            title = $"Cure no hotter than {text}";
        }

        return edits.Count == 0 ? null : new Fix(title, FixSafety.NeedsALook, edits.ToImmutable());
    }
}
