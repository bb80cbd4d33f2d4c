using UnitsNet;

namespace Recipe.Engineering.Tests;

/// <summary>Materials and stacks of the published examples.</summary>
internal static class Stacks
{
    /// <summary>Graphite/epoxy of Kaw, Mechanics of Composite Materials, 2nd ed., table 2.1, and of Tsai and Hahn (1980) (from memory).</summary>
    internal static Lamina Graphite { get; } = Lamina.Orthotropic(
        Gpa(181), Gpa(10.3), 0.28, Gpa(7.17), PerKelvin(0.02e-6), PerKelvin(22.5e-6));

    /// <summary>Glass/epoxy of Kaw, table 2.1 (from memory).</summary>
    internal static Lamina Glass { get; } = Lamina.Orthotropic(Gpa(38.6), Gpa(8.27), 0.26, Gpa(4.14));

    internal static Pressure Gpa(double value) => Pressure.FromGigapascals(value);

    internal static Angle Deg(double value) => Angle.FromDegrees(value);

    internal static Length Mm(double value) => Length.FromMillimeters(value);

    internal static Ratio Part(double value) => Ratio.FromDecimalFractions(value);

    internal static Density Rho(double value) => Density.FromKilogramsPerCubicMeter(value);

    internal static AreaDensity Gsm(double value) => AreaDensity.FromGramsPerSquareMeter(value);

    internal static CoefficientOfThermalExpansion PerKelvin(double value) => CoefficientOfThermalExpansion.FromPerKelvin(value);

    internal static ForcePerLength NewtonPerMetre(double value) => ForcePerLength.FromNewtonsPerMeter(value);

    internal static TemperatureDelta Kelvin(double value) => TemperatureDelta.FromKelvins(value);

    internal static Laminate Of(Lamina lamina, Length thickness, params double[] degrees) =>
        new([.. degrees.Select(angle => LaminatePly.Of(lamina, thickness, Deg(angle)))]);

    /// <summary>The plies and then the same in reverse.</summary>
    internal static double[] Symmetric(params double[] degrees) => [.. degrees, .. degrees.Reverse()];
}
