using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Engineering constants of a whole laminate, for stretching or for bending.</summary>
/// <param name="X">Modulus in the x direction.</param>
/// <param name="Y">Modulus in the y direction.</param>
/// <param name="Shear">Shear modulus; for bending, the modulus of twist.</param>
/// <param name="PoissonXY">Contraction along y over stretch along x.</param>
/// <param name="PoissonYX">Contraction along x over stretch along y.</param>
/// <param name="ShearFromX">Shear strain over stretch along x, under a pull along x; nil in a balanced laminate.</param>
/// <param name="ShearFromY">Shear strain over stretch along y, under a pull along y.</param>
public sealed record LaminateConstants(
    Pressure X, Pressure Y, Pressure Shear, double PoissonXY, double PoissonYX, double ShearFromX, double ShearFromY)
{
    /// <summary>The constants of a solid whose compliance (1/Pa) is given.</summary>
    internal static LaminateConstants From(PlaneMatrix compliance) =>
        new(
            Pressure.FromPascals(1 / compliance.M11),
            Pressure.FromPascals(1 / compliance.M22),
            Pressure.FromPascals(1 / compliance.M66),
            -compliance.M12 / compliance.M11,
            -compliance.M12 / compliance.M22,
            compliance.M16 / compliance.M11,
            compliance.M26 / compliance.M22);
}
