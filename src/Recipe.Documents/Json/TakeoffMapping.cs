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

    public static IEnumerable<TakeoffSumRecord> Sums(Plan plan) => TakeoffSums.Of(plan.Takeoff).Select(sum => new TakeoffSumRecord(
        Keys.Of(sum.Group),
        [.. sum.Costs.Select(cost => new MoneyRecord(cost.Amount, cost.Currency))],
        sum.WithoutPrice,
        Si.Of(sum.Mass),
        sum.WithoutMass));

    public static TakeoffTotalRecord? Total(Plan plan)
    {
        var lines = plan.Takeoff;
        return lines.IsEmpty ? null : new(
            [.. TakeoffSums.CostsOf(lines).Select(cost => new MoneyRecord(cost.Amount, cost.Currency))],
            plan.Cost?.WithoutPrice ?? lines.Count(line => line.Cost is null),
            Si.Of(UnitsNet.Mass.FromKilograms(lines.Sum(line => TakeoffSums.MassOf(line)?.Kilograms ?? 0))),
            lines.Count(line => TakeoffSums.MassOf(line) is null));
    }

    public static CostRecord Of(CostPlan cost, int parts) => new(cost.Total, decimal.Round(cost.Total / Math.Max(parts, 1), 4), cost.Currency, cost.WithoutPrice);

    private static PriceRecord Of(Price price) => new(price.Amount, price.Currency, price.Unit?.Symbol ?? "piece", price.On);
}
