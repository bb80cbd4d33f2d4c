using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Leak through one round hole in a thin film, and the hole behind a leak.</summary>
/// <remarks>
/// Source: ideal-gas flow through a thin orifice, at the speed of sound while the bag is below 0.528 of the air around
/// (textbook form); dry air at 20 degC. A crease or a fold in the sealant tape is a long narrow channel and leaks
/// less than a hole of the same section. Holes much under 10 µm are longer than wide in film and leak less too.
/// </remarks>
public static class Pinhole
{
    /// <summary>Share of the ideal flow that a sharp-edged thin hole passes when choked: about 0.85 (from memory).</summary>
    public const double SharpEdge = 0.85;

    /// <summary>Leak of a hole: <c>cd (pi d^2/4) p w</c> with w = 198.6 m/s when choked.</summary>
    /// <param name="diameter">Diameter; 1e-7 m to 1 m.</param>
    /// <param name="ambient">Pressure of the air around; 1 Pa to 1e8 Pa.</param>
    /// <param name="bag">Absolute pressure in the bag; zero up to the ambient pressure.</param>
    /// <param name="discharge">Share of the ideal flow that passes; 0.1 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static LeakRate Leak(Length diameter, Pressure ambient, Pressure bag, double discharge = SharpEdge)
    {
        double d = Guard.Between(diameter.Meters, 1e-7, 1, "m", nameof(diameter));
        return LeakRate.FromPascalCubicMetresPerSecond(Math.PI * d * d / 4 * Flux(ambient, bag, discharge));
    }

    /// <summary>Diameter of the one hole that leaks as much: the inverse of <see cref="Leak"/>.</summary>
    /// <param name="leak">Leak.</param>
    /// <param name="ambient">Pressure of the air around; 1 Pa to 1e8 Pa.</param>
    /// <param name="bag">Absolute pressure in the bag; zero up to less than the ambient pressure.</param>
    /// <param name="discharge">Share of the ideal flow that passes; 0.1 to 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range, or nothing drives the flow.</exception>
    public static Length DiameterFor(LeakRate leak, Pressure ambient, Pressure bag, double discharge = SharpEdge)
    {
        double flux = Flux(ambient, bag, discharge);
        return flux > 0
            ? Length.FromMeters(Math.Sqrt(4 / Math.PI * leak.PascalCubicMetresPerSecond / flux))
            : throw Guard.Refuse(bag.Pascals, "Pa", nameof(bag), "must be below the ambient pressure");
    }

    private static double Flux(Pressure ambient, Pressure bag, double discharge)
    {
        double air = FlowGuard.Drop(ambient, nameof(ambient));
        double inside = Guard.Between(bag.Pascals, 0, air, "Pa", nameof(bag));
        return Guard.Between(discharge, 0.1, 1, string.Empty, nameof(discharge)) * air * Air.HoleSpeed(inside / air);
    }
}
