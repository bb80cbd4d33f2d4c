using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>The figures of a plan that a build record keeps, so that planned and done can be compared after the recipe has moved on.</summary>
public static class PlannedFiguresOf
{
    /// <summary>The pieces of a plan that they are taken from.</summary>
    internal const PlanPieces Pieces = PlanPieces.Resin | PlanPieces.Cure | PlanPieces.Rest;

    /// <summary>Takes them from a plan of one part.</summary>
    public static PlannedFigures Plan(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var (laminate, mass) = (plan.Laminate, plan.TrimmedMass?.Value);
        return new PlannedFigures
        {
            Process = plan.Part.Process.Value,
            Resin = plan.Part.Resin?.Name,
            Mass = mass?.Value,
            MassLow = plan.Part is { TargetMass: { } target, TargetTolerance: { } off } ? target.Value - off.Value : mass?.Low,
            MassHigh = plan.Part is { TargetMass: { } wanted, TargetTolerance: { } more } ? wanted.Value + more.Value : mass?.High,
            Thickness = laminate?.Thickness.Value,
            Fibre = laminate?.Fibre.Value,
            Other = laminate is null ? null : Other(plan, laminate),
            Kit = plan.Stack.Where(line => line.Item is PlyItem).ToList() is { Count: > 0 } plies && plies.All(line => line.CutMass is not null)
                ? Mass.FromKilograms(plies.Sum(line => line.CutMass!.Value.Value.Kilograms))
                : null,
            Mixed = plan.Resin?.ToMix.Value,
            WetOut = plan.Clock?.WetOut.Value,
            Laminators = plan.Conditions.Laminators.Value,
            Vacuum = plan.Part.Vacuum?.Draw?.Written,
            VacuumLevel = plan.Part.Vacuum?.Draw?.Value,
            RiseAtMost = plan.Vacuum?.RiseAtMost?.Value,
            RiseTime = plan.Vacuum?.LeakCheck?.Value,
            Hottest = plan.Cure?.Peak.Value,
            CureTime = plan.Cure?.Total.Value,
            HeatLimit = plan.Cure?.Limits.Select(limit => limit.Limit?.Value).FirstOrDefault(limit => limit is not null),
            Cloths = [.. Cloths(plan)],
            Bag = plan.Bag is { } bag ? [.. bag.Layers.Select(layer => layer.Layer.Material.Name)] : [],
        };
    }

    /// <summary>Area of all plies wetted out by hand, as cut, and how many pieces they are: what the time of wetting out is spread over. Null when a ply's area is unknown.</summary>
    public static (Area Area, int Pieces)? WetWork(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var plies = plan.Stack.Where(line => line.Item is PlyItem).ToList();
        return plan.Part.Process.Value is not (Process.Hand or Process.Bagged) || plies.Count == 0 || plies.Any(line => line.CutArea is null)
            ? null
            : (Area.FromSquareMeters(plies.Sum(line => line.CutArea!.Value.Value.SquareMeters)), plies.Sum(line => line.Pieces.Sum(piece => piece.Count * (piece.Joins + 1))));
    }

    private static Mass Other(Plan plan, LaminatePlan laminate)
    {
        var drunk = plan.Stack.Where(line => line.Item is CoreItem).Sum(line => line.NetResin?.Value.Kilograms ?? 0);
        return laminate.Core.Value + laminate.Coats.Value + laminate.Inserts.Value + (laminate.Join?.Value ?? Mass.Zero) + Mass.FromKilograms(drunk);
    }

    /// <summary>One entry for each cloth, whatever lines it stands on: what it holds is the mean of its lines.</summary>
    private static IEnumerable<PlannedCloth> Cloths(Plan plan)
    {
        foreach (var cloth in plan.Stack.Where(line => line.Item is PlyItem && line is { NetMass: not null, NetResin: not null }).GroupBy(line => ((PlyItem)line.Item).Material.Name, StringComparer.Ordinal))
        {
            var fibre = cloth.Sum(line => line.NetMass!.Value.Value.Kilograms);
            var resin = cloth.Sum(line => line.NetResin!.Value.Value.Kilograms);
            if (fibre > 0)
            {
                yield return new PlannedCloth(cloth.Key, Mass.FromKilograms(fibre), resin / (fibre + resin), null);
            }
        }
    }
}
