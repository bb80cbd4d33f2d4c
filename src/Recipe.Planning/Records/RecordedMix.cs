using Recipe.Model;
using Recipe.Planning.Planners;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>What a pot of a build record is held against.</summary>
public static class RecordedMix
{
    /// <summary>
    /// Hardener that an amount of resin asks for, by the ratio of its data sheet. Null when the resin gives no ratio that can be weighed: none at
    /// all, one without its basis, or one by volume without both densities.
    /// </summary>
    /// <param name="system">The resin.</param>
    /// <param name="resin">Resin weighed in.</param>
    public static Mass? HardenerFor(ResinSystem system, Mass resin)
    {
        ArgumentNullException.ThrowIfNull(system);
        if (system.Mix is not { Value: { Resin: > 0 and < 1e9, Hardener: > 0 and < 1e9 } mix })
        {
            return null;
        }

        var ratio = MixRatios.ByWeight(
            mix, system is { ResinDensity.Value: { KilogramsPerCubicMeter: > 0 } a, HardenerDensity.Value: { KilogramsPerCubicMeter: > 0 } b } ? (a, b) : null);
        return ratio is null ? null : resin * (ratio.HardenerParts / ratio.ResinParts);
    }

    /// <summary>What the record says was taken of a resin from the shelf, all lots together; null when no line gives a mass of it.</summary>
    public static Mass? Taken(BuildRecord record, string resin)
    {
        ArgumentNullException.ThrowIfNull(record);
        var weighed = record.Used.Where(used => used.Material == resin && used.Amount?.Dimension == DimensionNames.Mass).ToList();
        return weighed.Count == 0 ? null : Mass.FromKilograms(weighed.Sum(used => used.Amount!.Value.Si));
    }
}
