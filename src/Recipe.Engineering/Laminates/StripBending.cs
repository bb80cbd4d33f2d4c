using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Small deflections of a straight strip. Lengths, widths and loads are greater than zero and at most 1e6 m or N; a load is a force, so
/// 100 g hung on a strip is 0.981 N.
/// </summary>
/// <remarks>
/// Source: beam theory (exact for small slopes) with the bending stiffness for each unit of width D of
/// <see cref="Laminate.StripStiffness"/>, or of <see cref="Laminate.PanelStiffness"/> for a piece much wider than its span. The
/// optional shear stiffness for each unit of width U (N/m) adds what a soft core yields in shear, as in the sandwich beam of
/// ASTM D7250 (from memory): <c>F L^3/(48 D b) + F L/(4 U b)</c>.
/// </remarks>
public static class StripBending
{
    /// <summary>Deflection in the middle of a strip on two supports with one load in the middle: <c>F L^3/(48 D b) + F L/(4 U b)</c>.</summary>
    /// <param name="bending">Bending stiffness for each unit of width, N m2/m.</param>
    /// <param name="load">Load in the middle.</param>
    /// <param name="span">Distance of the supports.</param>
    /// <param name="width">Width of the strip.</param>
    /// <param name="shear">Shear stiffness for each unit of width; null for a strip without a soft core.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static Length ThreePointDeflection(
        Torque bending, Force load, Length span, Length width, ForcePerLength? shear = null)
    {
        double d = Guard.Between(bending.NewtonMeters, 1e-24, 1e24, "N m", nameof(bending));
        double l = Size(span.Meters, "m", nameof(span));
        double b = Size(width.Meters, "m", nameof(width));
        double f = Size(load.Newtons, "N", nameof(load));
        return Length.FromMeters((f * l * l * l / (48 * d * b)) + (f * l * Slip(shear) / (4 * b)));
    }

    /// <summary>Shear stiffness for each unit of width of a core between two faces: <c>G d^2/c</c> with d between the middles of the faces.</summary>
    /// <param name="coreShear">Shear modulus of the core across its thickness; 1 Pa to 10 000 GPa.</param>
    /// <param name="core">Thickness c of the core.</param>
    /// <param name="mouldFace">Thickness of the face on the mould side.</param>
    /// <param name="bagFace">Thickness of the face on the bag side.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>Source: thin faces on a core that only shears, Allen, Analysis and Design of Structural Sandwich Panels (1969); ASTM D7250 (both from memory).</remarks>
    public static ForcePerLength SandwichShear(Pressure coreShear, Length core, Length mouldFace, Length bagFace)
    {
        double g = LaminateGuard.Modulus(coreShear, nameof(coreShear));
        double c = LaminateGuard.Thickness(core, nameof(core));
        double d = c + ((LaminateGuard.Thickness(mouldFace, nameof(mouldFace)) + LaminateGuard.Thickness(bagFace, nameof(bagFace))) / 2);
        return ForcePerLength.FromNewtonsPerMeter(g * d * d / c);
    }

    private static double Slip(ForcePerLength? shear) =>
        shear is { } value ? 1 / Guard.Between(value.NewtonsPerMeter, 1e-9, 1e24, "N/m", nameof(shear)) : 0;

    private static double Size(double value, string unit, string parameter) => Guard.Between(value, 1e-12, 1e6, unit, parameter);
}
