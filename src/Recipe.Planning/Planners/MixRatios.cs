using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;

namespace Recipe.Planning.Planners;

/// <summary>The mix ratio by weight, since everything is weighed.</summary>
internal static class MixRatios
{
    /// <summary>Parts by weight; null when the ratio, its basis, or a density to turn volume into weight is missing.</summary>
    public static Known<WeightRatio>? ByWeight(PlanContext context, ResinSystem resin)
    {
        var subject = $"resin and hardener of {resin.Name}";
        if (resin.Mix is not { } mix)
        {
            context.Miss(subject, "it gives no mix ratio");
            return null;
        }

        var owner = Owner.Of(resin);
        var on = context.Figures.Basis(mix, owner, "mix");
        var (a, b) = (mix.Value.Resin, mix.Value.Hardener);
        if (!(a is > 0 and < 1e9) || !(b is > 0 and < 1e9))
        {
            context.Miss(subject, $"'{mix.Written}' cannot be used");
            return null;
        }

        switch (mix.Value.Basis)
        {
            case MixBasis.Weight:
                return new Known<WeightRatio>(ByWeight(mix.Value, null)!, on);
            case MixBasis.Volume when Densities(context, resin) is { } densities:
                return new Known<WeightRatio>(
                    ByWeight(mix.Value, (UnitsNet.Density.FromKilogramsPerCubicMeter(densities.Resin.Si), UnitsNet.Density.FromKilogramsPerCubicMeter(densities.Hardener.Si)))!,
                    on | densities.Resin.On | densities.Hardener.On);
            case MixBasis.Volume:
                context.Miss(subject, "the ratio is by volume and a density is missing to weigh it");
                return null;
            default:
                context.Miss(subject, "the ratio does not say whether it is by weight or by volume");
                return null;
        }
    }

    /// <summary>A ratio in parts by weight; null when it is by volume and the densities are not given, or does not say which it is.</summary>
    /// <param name="mix">The ratio; both parts above 0.</param>
    /// <param name="densities">Densities of resin and hardener, or null.</param>
    public static WeightRatio? ByWeight(MixRatio mix, (UnitsNet.Density Resin, UnitsNet.Density Hardener)? densities) => mix.Basis switch
    {
        MixBasis.Weight => new WeightRatio(mix.Resin, mix.Hardener),
        MixBasis.Volume when densities is { } known => new VolumeRatio(mix.Resin, mix.Hardener).ToWeight(known.Resin, known.Hardener),
        _ => null,
    };

    /// <summary>Densities of the two liquids, kg/m3; null unless both are known.</summary>
    public static (Num Resin, Num Hardener)? Densities(PlanContext context, ResinSystem resin)
    {
        var owner = Owner.Of(resin);
        var a = context.Figures.Density(resin.ResinDensity, owner, "density resin");
        var b = context.Figures.Density(resin.HardenerDensity, owner, "density hardener");
        return a is { } one && b is { } other ? (one, other) : null;
    }
}
