using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>How hot a thick laminate gets inside while the plan is made.</summary>
internal sealed record HeatingWork(Known<Temperature> Peak, Num At);

/// <summary>
/// A laminate that is thick enough to keep its own heat: Recipe.Engineering ThickCureSimulation through the plies, still air beyond mould and
/// bag. A thin one loses it to both faces and is left alone, and so is one with a core, whose skins are thin.
/// </summary>
internal static class SelfHeating
{
    private const string Subject = "heat inside the laminate";

    // A few points through the thickness tell the peak to a degree.
    private const int Cells = 7;

    public static HeatingWork? Work(PlanContext context, CureWork? cure, LaminateWork? laminate, ImmutableArray<LineWork> stack)
    {
        if (cure is null || context.Part.Resin is not { } resin || laminate is null || context.Process is Process.Prepreg
            || laminate.Thickness.Si < Defaults.ThickFrom || stack.Any(line => line.CoversAll && line.Item is CoreItem))
        {
            return null;
        }

        if (resin.HeatOfReaction is not { } heat || CureModel.Find(resin) is not { } model)
        {
            context.Miss(Subject, $"{resin.Name} gives no heat of reaction, or nothing to tell its cure by");
            return null;
        }

        // Fibre takes up heat and gives none: without its share the peak would be anybody's guess.
        if (laminate.FibreVolumeFraction is not { } fibre)
        {
            context.Miss(Subject, "the share of fibre by volume is not known");
            return null;
        }

        var on = PotHeat.Basis(context, resin) | context.Ledger.Assume(Defaults.LaminateHeat) | laminate.Thickness.On | cure.Peak.On | fibre.On;
        try
        {
            var transfer = HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(8);
            var face = new LaminateFaceHeat(cure.Schedule, transfer);
            var thick = new ThickLaminate(
                new ExothermicResin(model.Kinetics, heat.Value), Length.FromMeters(laminate.Thickness.Si), Ratio.FromDecimalFractions(Math.Clamp(fibre.Si, 0, 0.9)));
            var inside = ThickCureSimulation.Along(thick, face, face, cure.Schedule.Start, Cells);
            return new HeatingWork(new Known<Temperature>(inside.Peak, on), new Num(inside.PeakAt.Seconds, on));
        }
        catch (ArgumentException)
        {
            context.Miss(Subject, "its temperatures are beyond what the cure model answers for");
            return null;
        }
    }
}
