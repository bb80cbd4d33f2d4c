using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

/// <summary>Units and random stacks that the tests of flow share.</summary>
internal static class Resins
{
    /// <summary>Woven glass squeezed to half fibre, as in the worked cases: porosity 0.5, permeability 1e-10 m2.</summary>
    internal static PorousMedium Glass { get; } = Medium(1e-10, 0.5);

    /// <summary>The pressure of the worked cases, 95 kPa.</summary>
    internal static Pressure Pull { get; } = Kpa(95);

    /// <summary>Permeability in m2 and porosity over what is infused.</summary>
    internal static Gen<PorousMedium> AnyMedium { get; } =
        Gen.Select(Gen.Double[-13, -8], Gen.Double[0.2, 0.95]).Select((power, pores) => Medium(Math.Pow(10, power), pores));

    internal static Gen<double> AnyViscosity { get; } = Gen.Double[0.05, 2];

    internal static Gen<double> AnyPull { get; } = Gen.Double[10, 101];

    internal static PorousMedium Medium(double squareMetres, double pores) =>
        new(Area.FromSquareMeters(squareMetres), Ratio.FromDecimalFractions(pores));

    internal static PorousLayer LayerOf(double millimetres, double squareMetres, double pores) =>
        new(Mm(millimetres), Medium(squareMetres, pores));

    internal static Length M(double value) => Length.FromMeters(value);

    internal static Length Mm(double value) => Length.FromMillimeters(value);

    internal static Area M2(double value) => Area.FromSquareMeters(value);

    internal static Pressure Kpa(double value) => Pressure.FromKilopascals(value);

    internal static Pressure Mbar(double value) => Pressure.FromMillibars(value);

    internal static DynamicViscosity PaS(double value) => DynamicViscosity.FromPascalSeconds(value);

    internal static Duration S(double value) => Duration.FromSeconds(value);

    internal static Ratio Part(double value) => Ratio.FromDecimalFractions(value);

    internal static Volume Litres(double value) => Volume.FromLiters(value);

    internal static VolumeFlow LitresPerSecond(double value) => VolumeFlow.FromLitersPerSecond(value);

    /// <summary>The call is refused, and the refusal names what was wrong.</summary>
    internal static void Refused(string parameter, Func<object?> call) =>
        Assert.Equal(parameter, Assert.Throws<ArgumentOutOfRangeException>(call).ParamName);
}
