using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>A tin or roll after what the build records took from it.</summary>
/// <param name="Line">Its line on the shelf.</param>
/// <param name="Taken">How often a record names its lot, from the day of the count on.</param>
/// <param name="Used">What they took, SI, in the line's own dimension; uses written in another are among <paramref name="NotCompared"/>.</param>
/// <param name="NotCompared">Uses without an amount, or in another dimension than the shelf's.</param>
public sealed record ShelfLine(StockLine Line, int Taken, double Used, int NotCompared)
{
    /// <summary>What is left, SI, not below 0; null when the line says no amount.</summary>
    public double? Left => Line.Amount is { } amount ? Math.Max(0, amount.Si - Used) : null;

    /// <summary>Whether it may no longer be used.</summary>
    public bool IsExpired(DateOnly today) => Line.Expires is { } end && end < today;
}

/// <summary>What to buy for the next parts.</summary>
/// <param name="Need">The line of the takeoff, as it is for the first part that needs it but for the volume, which is for all.</param>
/// <param name="Gross">Needed with waste for all parts, SI.</param>
/// <param name="InStock">Left on the shelf for it, SI; null when nothing is recorded or it does not compare.</param>
public sealed record ToBuyLine(TakeoffLine Need, double Gross, double? InStock)
{
    /// <summary>To buy, SI.</summary>
    public double Buy => Math.Max(0, Gross - (InStock ?? 0));

    /// <summary>What reports call it: the label of the takeoff, behind that of a liquid the volume of all that is needed.</summary>
    public string Label => Need.LabelOf(Gross);
}

/// <summary>The shelf after the builds, and what the next ones want.</summary>
public static class ShelfCount
{
    /// <summary>What is left of each line.</summary>
    /// <param name="stock">The shelf as it is written down.</param>
    /// <param name="builds">The records.</param>
    /// <param name="materials">Materials by name, for the width that turns an area of tape into its length.</param>
    public static ImmutableArray<ShelfLine> Of(IEnumerable<StockLine> stock, IEnumerable<BuildRecord> builds, Func<string, Material?> materials)
    {
        ArgumentNullException.ThrowIfNull(materials);
        ArgumentNullException.ThrowIfNull(stock);
        ArgumentNullException.ThrowIfNull(builds);
        var uses = builds.SelectMany(build => build.Used.Select(use => (build.On, Use: use))).ToLookup(pair => (pair.Use.Material, pair.Use.Lot));
        return [.. stock.Select(line => Count(line, uses[(line.Material, line.Lot)], WidthOf(materials(line.Material))))];
    }

    /// <summary>What parts want from that shelf, expired lots left out. What stands in two lines is given to the first of them first, and only once.</summary>
    /// <param name="parts">The parts, what is in scope for each, and how many of it.</param>
    /// <param name="shelf">The shelf as it is left.</param>
    /// <param name="today">The day, or null to take every lot for good.</param>
    public static ImmutableArray<ToBuyLine> ToBuy(IEnumerable<(Part Part, RecipeModel Model, int Quantity)> parts, IEnumerable<ShelfLine> shelf, DateOnly? today)
    {
        ArgumentNullException.ThrowIfNull(parts);
        ArgumentNullException.ThrowIfNull(shelf);
        ImmutableArray<StockLine> left =
        [
            .. shelf.Where(line => today is not { } day || !line.IsExpired(day))
                .Select(line => line.Left is { } si ? line.Line with { Amount = line.Line.Amount!.Value with { Si = si } } : line.Line),
        ];
        var giving = new ShelfGiving();
        var buy = ImmutableArray.CreateBuilder<ToBuyLine>();
        foreach (var group in parts.SelectMany(part => Planner.Plan(part.Part with { Quantity = part.Quantity }, part.Model with { Stock = left }).Takeoff)
            .GroupBy(line => (line.Group, line.ShelfName, line.IsHardener))
            .OrderBy(group => group.Key.Group))
        {
            var gross = group.Sum(line => line.Gross.Value.Si);
            var need = group.First();
            buy.Add(new ToBuyLine(need, gross, giving.For(need.ShelfName, need.IsHardener, gross, need.InStock?.Si)));
        }

        return buy.ToImmutable();
    }

    private static ShelfLine Count(StockLine line, IEnumerable<(DateOnly? On, UsedStock Use)> uses, double? width)
    {
        var since = line.Counted ?? line.Received ?? line.Opened;
        var counted = uses.Where(pair => since is not { } day || pair.On is not { } on || on >= day).Select(pair => In(line.Amount?.Dimension, pair.Use.Amount, width)).ToList();
        return new ShelfLine(line, counted.Count, counted.Sum(used => used ?? 0), counted.Count(used => used is null));
    }

    /// <summary>An amount in another dimension; null where the two do not compare.</summary>
    private static double? In(Dimension? wanted, StockAmount? used, double? width) => used is not { } amount || wanted is not { } dimension ? null
        : amount.Dimension == dimension ? amount.Si
        : amount.Dimension == DimensionNames.Area && dimension == DimensionNames.Length && width is > 0 and var w ? amount.Si / w
        : amount.Dimension == DimensionNames.Length && dimension == DimensionNames.Area && width is > 0 and var across ? amount.Si * across
        : null;

    private static double? WidthOf(Material? material) => material switch
    {
        Reinforcement cloth => cloth.Width?.Value.Meters,
        Consumable layer => layer.Width?.Value.Meters,
        _ => null,
    };
}
