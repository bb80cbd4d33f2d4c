using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>Strain limits and expansions, from the figures of a material to those of a layer. Nothing is made up.</summary>
internal static class LimitReader
{
    /// <summary>The limits of a layer; null when nobody gave one.</summary>
    /// <param name="figures">The reader.</param>
    /// <param name="given">The figures, or null.</param>
    /// <param name="owner">Whose they are.</param>
    /// <param name="hasDirection">Whether the layer has yarns: without any, what it bears along it bears across too.</param>
    public static Known<StrainLimits?> Read(FigureReader figures, LayerLimits? given, Owner owner, bool hasDirection)
    {
        if (given is null)
        {
            return default;
        }

        var stretch = One(given.Stretch, "stretch");
        var press = One(given.Press, "press");
        var stretchAcross = One(given.StretchAcross, "stretch-across") ?? (hasDirection ? null : stretch);
        var pressAcross = One(given.PressAcross, "press-across") ?? (hasDirection ? null : press);
        var shear = One(given.Shear, "shear");
        var limits = new StrainLimits(Share(stretch), Share(press), Share(stretchAcross), Share(pressAcross), Share(shear));
        return new Known<StrainLimits?>(
            limits.Any ? limits : null, On(stretch) | On(press) | On(stretchAcross) | On(pressAcross) | On(shear));

        Num? One(Figure<double>? figure, string way) => figures.Strain(figure, owner, "strain-limit " + way);
    }

    /// <summary>An expansion for the laminate, or null.</summary>
    public static CoefficientOfThermalExpansion? Expansion(Num? perKelvin) =>
        perKelvin is { } known ? CoefficientOfThermalExpansion.FromPerKelvin(known.Si) : null;

    private static Ratio? Share(Num? strain) => strain is { } known ? Ratio.FromDecimalFractions(known.Si) : null;

    private static Rests On(Num? strain) => strain?.On ?? Rests.None;
}
