using System.Collections.Immutable;
using Recipe.Documents.Shared;
using Recipe.Documents.Takeoffs;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Json;

/// <summary>From the takeoff to its JSON shape.</summary>
internal static class TakeoffMapping
{
    public static TakeoffRecord Of(TakeoffLine line) => new(
        Keys.Of(line.Group),
        line.Material.Name,
        line.LabelWithVolume,
        Si.Of(line.Net.Value),
        Si.Of(line.Waste),
        Si.Of(line.Gross.Value),
        Si.Of(line.InStock),
        Si.Of(line.ToBuy),
        [.. line.Shelf.Select(shelf => new ShelfRecord(shelf.Written, shelf.Lot, shelf.Received, shelf.Opened, shelf.Expires))],
        line.Price is { } price ? Of(price) : null,
        line.Cost,
        line.Cost is null ? null : line.Price?.Currency,
        Si.Of(TakeoffSums.MassOf(line)),
        Si.RestsOn(("net", line.Net.RestsOn), ("waste_fraction", line.Waste.RestsOn), ("gross", line.Gross.RestsOn)));

    public static IEnumerable<TakeoffSumRecord> Sums(ImmutableArray<TakeoffLine> lines) => TakeoffSums.Of(lines).Select(sum => new TakeoffSumRecord(
        Keys.Of(sum.Group),
        [.. sum.Costs.Select(cost => new MoneyRecord(cost.Amount, cost.Currency))],
        sum.WithoutPrice,
        Si.Of(sum.Mass),
        sum.WithoutMass));

    public static TakeoffTotalRecord? Total(ImmutableArray<TakeoffLine> lines, CostPlan? cost) => lines.IsEmpty ? null : new(
        [.. TakeoffSums.CostsOf(lines).Select(sum => new MoneyRecord(sum.Amount, sum.Currency))],
        cost?.WithoutPrice ?? lines.Count(line => line.Cost is null),
        Si.Of(UnitsNet.Mass.FromKilograms(lines.Sum(line => TakeoffSums.MassOf(line)?.Kilograms ?? 0))),
        lines.Count(line => TakeoffSums.MassOf(line) is null));

    /// <summary>The cost of all parts: the sum of the lines in the plan's currency, which are for as many parts as are wanted.</summary>
    public static CostRecord Of(CostPlan cost, ImmutableArray<TakeoffLine> lines, int parts)
    {
        var total = TakeoffSums.CostsOf(lines).FirstOrDefault(sum => sum.Currency == cost.Currency).Amount;
        return new(total, decimal.Round(total / Math.Max(parts, 1), 4), cost.Currency, cost.WithoutPrice);
    }

    private static PriceRecord Of(Price price) => new(price.Amount, price.Currency, price.Unit?.Symbol ?? "piece", price.On);
}
