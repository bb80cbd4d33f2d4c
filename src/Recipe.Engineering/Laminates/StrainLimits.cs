using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// The largest strains that a layer is taken to bear, in its own axes; each from 0.0001 % to 100 %, as a positive figure. A limit that nobody
/// has given is null and is never judged: none is made up.
/// </summary>
/// <param name="StretchAlong">Stretch along the fibre.</param>
/// <param name="PressAlong">Shortening along the fibre, as a positive figure.</param>
/// <param name="StretchAcross">Stretch across the fibre.</param>
/// <param name="PressAcross">Shortening across the fibre, as a positive figure.</param>
/// <param name="Shear">Engineering shear strain, either sign.</param>
public sealed record StrainLimits(
    Ratio? StretchAlong = null,
    Ratio? PressAlong = null,
    Ratio? StretchAcross = null,
    Ratio? PressAcross = null,
    Ratio? Shear = null)
{
    /// <summary>Whether any limit is given.</summary>
    public bool Any =>
        StretchAlong is not null || PressAlong is not null || StretchAcross is not null || PressAcross is not null || Shear is not null;

    /// <summary>The limit of one way to fail, as a fraction, or null when nobody has given it.</summary>
    /// <param name="mode">The way to fail.</param>
    /// <exception cref="ArgumentOutOfRangeException">The limit is out of range.</exception>
    public double? Of(StrainMode mode)
    {
        Ratio? limit = mode switch
        {
            StrainMode.StretchAlong => StretchAlong,
            StrainMode.PressAlong => PressAlong,
            StrainMode.StretchAcross => StretchAcross,
            StrainMode.PressAcross => PressAcross,
            _ => Shear,
        };
        return limit is { } value ? Guard.Between(value.DecimalFractions, 1e-6, 1, string.Empty, mode.ToString()) : null;
    }
}
