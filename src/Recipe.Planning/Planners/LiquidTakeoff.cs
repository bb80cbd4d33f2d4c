using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning.Ledger;

namespace Recipe.Planning.Planners;

/// <summary>
/// Resin, coats and adhesive of the takeoff: grams, and their volume where a density is known. A system with a known ratio
/// has a line for its resin and one for its hardener. All of it is what is mixed, so losses and spare are in it and it has no waste.
/// </summary>
/// <remarks>
/// Shelf and prices know a hardener by its own name; where they know only the system's name, that is the kit, of which resin and hardener
/// have their shares.
/// </remarks>
internal sealed class LiquidTakeoff(PlanContext context, Prices prices, int quantity)
{
    /// <summary>The resin of the plies and of a later seam, then what is mixed on its own.</summary>
    public void Add(ResinWork? resin, ImmutableArray<OwnMixWork> mixes, List<TakeoffWork> lines)
    {
        var laminating = resin?.ToMix ?? Num.Zero;
        var system = resin?.System;
        foreach (var mix in mixes)
        {
            if (mix.Use == OwnMixUse.SeamResin)
            {
                laminating += mix.ToMix;
                system = mix.System;
            }
        }

        if (system is not null)
        {
            Add(TakeoffGroup.Resin, system, laminating, lines);
        }

        foreach (var mix in mixes)
        {
            if (mix.Use != OwnMixUse.SeamResin)
            {
                Add(mix.Use == OwnMixUse.Coat ? TakeoffGroup.Coat : TakeoffGroup.Adhesive, mix.System, mix.ToMix, lines);
            }
        }
    }

    private void Add(TakeoffGroup group, ResinSystem system, Num forOne, List<TakeoffWork> lines)
    {
        var net = forOne * quantity;
        var ratio = MixRatios.ByWeight(context, system);
        var owner = Owner.Of(system);
        if (ratio is not { } parts)
        {
            var mixed = context.Figures.Density(system.Density, owner, "density");
            lines.Add(Line(group, system, system.Name, system.Label, net, mixed, 1));
            return;
        }

        var share = new Num(parts.Value.HardenerShare.DecimalFractions, parts.On);
        var hardener = net * share;
        var resin = net - hardener;
        var ownName = system.Hardener is { } named && prices.Knows(named) ? named : null;
        lines.Add(Line(
            group, system, system.Name, $"{system.Label}, resin", resin,
            context.Figures.Density(system.ResinDensity, owner, "density resin"), ownName is null ? 1 - share.Si : 1));
        var label = system.Hardener is { } block ? $"{system.Label}, hardener {block}" : $"{system.Label}, hardener";
        var density = context.Figures.Density(system.HardenerDensity, owner, "density hardener");
        var second = Line(group, system, ownName ?? system.Name, label, hardener, density, ownName is null ? share.Si : 1);
        lines.Add(second with { IsHardener = true });
    }

    private static TakeoffWork Line(
        TakeoffGroup group, ResinSystem system, string name, string label, Num net, Num? density, double part) =>
        new(group, system, name, label, net, net, TakeoffUnits.Gram, density, part);
}
