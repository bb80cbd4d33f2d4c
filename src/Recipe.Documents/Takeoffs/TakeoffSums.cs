using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Documents.Takeoffs;

/// <summary>The sum of a group of takeoff lines.</summary>
/// <param name="Group">The group.</param>
/// <param name="Costs">What its lines with a price cost, by currency in ordinal order: two currencies are never added.</param>
/// <param name="WithoutPrice">How many of its lines have no price.</param>
/// <param name="Mass">What its lines of known mass weigh.</param>
/// <param name="WithoutMass">How many of its lines have no known mass.</param>
internal sealed record GroupSum(TakeoffGroup Group, ImmutableArray<(string Currency, decimal Amount)> Costs, int WithoutPrice, Mass Mass, int WithoutMass);

/// <summary>Masses and sums of a takeoff.</summary>
internal static class TakeoffSums
{
    /// <summary>
    /// What the gross amount of a line weighs: the amount itself, or area by areal weight, or area by thickness by density, or
    /// pieces by the mass of one. Null when the material does not say.
    /// </summary>
    public static Mass? MassOf(TakeoffLine line)
    {
        var amount = line.Gross.Value;
        if (amount.Unit is null)
        {
            return line.Material is Insert { Mass: { } one } ? amount.Si * one.Value : null;
        }

        if (amount.Unit.Dimension == DimensionNames.Mass)
        {
            return Mass.FromKilograms(amount.Si);
        }

        return amount.Unit.Dimension == DimensionNames.Area && KilogramsPerSquareMetre(line.Material) is { } weight
            ? Mass.FromKilograms(amount.Si * weight)
            : null;
    }

    /// <summary>The sums of all groups that have a line, in the order of the groups.</summary>
    public static ImmutableArray<GroupSum> Of(ImmutableArray<TakeoffLine> lines) =>
        [.. lines.GroupBy(line => line.Group).OrderBy(group => group.Key).Select(group => Sum(group.Key, [.. group]))];

    /// <summary>What the lines with a price cost, by currency.</summary>
    public static ImmutableArray<(string Currency, decimal Amount)> CostsOf(IEnumerable<TakeoffLine> lines) =>
    [
        .. lines.Where(line => line is { Cost: not null, Price: not null })
            .GroupBy(line => line.Price!.Currency, StringComparer.Ordinal)
            .OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => (group.Key, group.Sum(line => line.Cost!.Value))),
    ];

    private static GroupSum Sum(TakeoffGroup group, ImmutableArray<TakeoffLine> lines) => new(
        group,
        CostsOf(lines),
        lines.Count(line => line.Cost is null),
        Mass.FromKilograms(lines.Sum(line => MassOf(line)?.Kilograms ?? 0)),
        lines.Count(line => MassOf(line) is null));

    private static double? KilogramsPerSquareMetre(Material material) => material switch
    {
        Reinforcement cloth => cloth.ArealWeight?.Value.KilogramsPerSquareMeter,
        Consumable sheet => sheet.ArealWeight?.Value.KilogramsPerSquareMeter,
        Core core => core.Density?.Value.KilogramsPerCubicMeter * core.Thickness?.Value.Meters,
        _ => null,
    };
}
