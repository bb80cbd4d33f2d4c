using UnitsNet;

namespace Recipe.Semantics.Binding;

/// <summary>Typed quantities from SI values.</summary>
internal static class Si
{
    public static Length Length(double si) => UnitsNet.Length.FromMeters(si);

    public static Area Area(double si) => UnitsNet.Area.FromSquareMeters(si);

    public static Volume Volume(double si) => UnitsNet.Volume.FromCubicMeters(si);

    public static Mass Mass(double si) => UnitsNet.Mass.FromKilograms(si);

    public static Duration Time(double si) => Duration.FromSeconds(si);

    public static Temperature Temperature(double si) => UnitsNet.Temperature.FromKelvins(si);

    public static TemperatureChangeRate Rate(double si) => TemperatureChangeRate.FromDegreesCelsiusPerSecond(si);

    public static Angle Angle(double si) => UnitsNet.Angle.FromRadians(si);

    public static AreaDensity ArealWeight(double si) => AreaDensity.FromKilogramsPerSquareMeter(si);

    public static LinearDensity LinearDensity(double si) => UnitsNet.LinearDensity.FromKilogramsPerMeter(si);

    public static Density Density(double si) => UnitsNet.Density.FromKilogramsPerCubicMeter(si);

    public static Pressure Pressure(double si) => UnitsNet.Pressure.FromPascals(si);

    public static DynamicViscosity Viscosity(double si) => DynamicViscosity.FromPascalSeconds(si);

    public static VolumeFlow Flow(double si) => VolumeFlow.FromCubicMetersPerSecond(si);

    public static CoefficientOfThermalExpansion Expansion(double si) => CoefficientOfThermalExpansion.FromPerKelvin(si);

    public static ForcePerLength Pull(double si) => ForcePerLength.FromNewtonsPerMeter(si);

    public static SpecificEnergy SpecificEnergy(double si) => UnitsNet.SpecificEnergy.FromJoulesPerKilogram(si);

    public static Model.Pace Pace(double si) => new(Time(si));

    public static int Count(double number) => (int)number;

    public static double Plain(double number) => number;

    /// <summary>Square metres per litre from square metres per cubic metre.</summary>
    public static double CoveragePerLitre(double si) => si / 1000;
}
