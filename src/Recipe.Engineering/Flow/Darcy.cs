using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Resin of one viscosity that fills a dry stack from a line across it.</summary>
/// <remarks>
/// Source: Darcy's law with a sharp front, textbook form (for example Rudd, Long, Kendall and Mangin, Liquid Moulding Technologies,
/// 1997, from memory). The pressure difference is that between the feed pot and the vacuum: the air around less the absolute
/// pressure in the bag. Thickness and permeability are taken as even; under a soft bag the wet side swells a little and
/// fills sooner. <see cref="InfusionFill"/>, which plans ask, knows resin that thickens; it is held to these closed forms.
/// </remarks>
public static class Darcy
{
    /// <summary>Time to fill under constant pressure: <c>phi mu L^2/(2 K dP)</c>.</summary>
    /// <param name="medium">The stack.</param>
    /// <param name="viscosity">Viscosity of the resin; 1e-6 to 1e9 Pa s.</param>
    /// <param name="drop">Pressure difference; 1 Pa to 1e8 Pa.</param>
    /// <param name="length">Distance from the feed line to the far end; 1e-9 m to 1e5 m.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Duration FillTime(PorousMedium medium, DynamicViscosity viscosity, Pressure drop, Length length)
    {
        double mu = FlowGuard.Viscosity(viscosity, nameof(viscosity));
        return Duration.FromSeconds(mu * FluidityForLine(medium, drop, FlowGuard.Distance(length, nameof(length))));
    }

    /// <summary>Distance of the front from the feed line after a time: <c>sqrt(2 K dP t/(phi mu))</c>.</summary>
    /// <param name="medium">The stack.</param>
    /// <param name="viscosity">Viscosity of the resin; 1e-6 to 1e9 Pa s.</param>
    /// <param name="drop">Pressure difference; 1 Pa to 1e8 Pa.</param>
    /// <param name="time">Time since the feed was opened; 0 to 1e12 s.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Length FrontAfter(PorousMedium medium, DynamicViscosity viscosity, Pressure drop, Duration time)
    {
        double mu = FlowGuard.Viscosity(viscosity, nameof(viscosity));
        return Length.FromMeters(LineFront(medium, drop, FlowGuard.Time(time, nameof(time)) / mu));
    }

    /// <summary>Integral of time over viscosity that takes the front to a distance, 1/Pa.</summary>
    internal static double FluidityForLine(PorousMedium medium, Pressure drop, double length)
    {
        ArgumentNullException.ThrowIfNull(medium);
        return medium.Pores * length * length / (2 * medium.SquareMetres * FlowGuard.Drop(drop, nameof(drop)));
    }

    /// <summary>Distance in m of the front after an integral of time over viscosity.</summary>
    internal static double LineFront(PorousMedium medium, Pressure drop, double fluidity)
    {
        ArgumentNullException.ThrowIfNull(medium);
        return Math.Sqrt(2 * medium.SquareMetres * FlowGuard.Drop(drop, nameof(drop)) * fluidity / medium.Pores);
    }
}
