using System.Collections.Immutable;
using Recipe.Model;

namespace Recipe.Planning.Planners;

/// <summary>
/// The sum of the takeoff in the shop's currency, or that of its first priced line. Two currencies are never added: lines in another
/// one count as lines without a price.
/// </summary>
internal static class CostPlanner
{
    public static CostPlan? Work(Shop? shop, ImmutableArray<TakeoffLine> takeoff)
    {
        var currency = shop?.Currency;
        foreach (var line in takeoff)
        {
            currency ??= line.Cost is null ? null : line.Price?.Currency;
        }

        if (currency is null)
        {
            return null;
        }

        var (total, without) = (0m, 0);
        foreach (var line in takeoff)
        {
            if (line.Cost is { } cost && line.Price?.Currency == currency)
            {
                total += cost;
            }
            else
            {
                without++;
            }
        }

        return without == takeoff.Length ? null : new CostPlan(total, currency, without);
    }
}
