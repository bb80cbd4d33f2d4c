using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Permeability of aligned fibre from its radius and how tightly it is packed.</summary>
/// <remarks>
/// Source: Kozeny-Carman in the form of Gutowski (1987): <c>K = rf^2/(4 k0) (1 - Vf)^3/Vf^2</c>. It shows how the permeability
/// falls with packing; for a woven cloth, whose yarns leave channels, only a measured permeability is good for more.
/// </remarks>
public static class KozenyCarman
{
    /// <summary>Constant k0 for flow along aligned fibre: about 0.7 (Gutowski 1987, from memory).</summary>
    public const double AlongFibre = 0.7;

    /// <summary>Constant k0 for flow across aligned fibre: about 11 (Gutowski 1987, from memory).</summary>
    public const double AcrossFibre = 11;

    /// <summary>Permeability: <c>rf^2/(4 k0) (1 - Vf)^3/Vf^2</c>.</summary>
    /// <param name="fibreRadius">Radius of the fibre; 1e-8 m to 1e-2 m. Glass has 5 to 12 µm, carbon 2.5 to 4 µm (from memory).</param>
    /// <param name="constant">Kozeny constant k0; 0.01 to 1000.</param>
    /// <param name="fibreVolumeFraction">Share of fibre by volume; 0.01 to 0.99.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Area Permeability(Length fibreRadius, double constant, Ratio fibreVolumeFraction)
    {
        double radius = Guard.Between(fibreRadius.Meters, 1e-8, 1e-2, "m", nameof(fibreRadius));
        double k0 = Guard.Between(constant, 0.01, 1000, string.Empty, nameof(constant));
        return Area.FromSquareMeters(radius * radius / (4 * k0) * Openness(fibreVolumeFraction, nameof(fibreVolumeFraction)));
    }

    /// <summary>A measured permeability carried to another packing of the same fabric: in proportion to <c>(1 - Vf)^3/Vf^2</c>.</summary>
    /// <param name="measured">Measured permeability; 1e-20 to 1e-3 m2.</param>
    /// <param name="at">Share of fibre by volume at which it was measured; 0.01 to 0.99.</param>
    /// <param name="wanted">Share of fibre by volume that is wanted; 0.01 to 0.99. A few per cent away is fair, a great step is a guess.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Area Repacked(Area measured, Ratio at, Ratio wanted)
    {
        double permeability = FlowGuard.Permeability(measured, nameof(measured));
        return Area.FromSquareMeters(permeability * Openness(wanted, nameof(wanted)) / Openness(at, nameof(at)));
    }

    private static double Openness(Ratio fibreVolumeFraction, string parameter)
    {
        double fibre = Guard.Between(fibreVolumeFraction.DecimalFractions, 0.01, 0.99, string.Empty, parameter);
        double pores = 1 - fibre;
        return pores * pores * pores / (fibre * fibre);
    }
}
