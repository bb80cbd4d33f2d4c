using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Ranges of the heat models' inputs, far outside any workshop and far inside a double.</summary>
internal static class HeatGuard
{
    /// <summary>Heat of reaction in J/kg: 0 to 5000 J/g.</summary>
    internal static double Reaction(SpecificEnergy value, string parameter) =>
        Guard.Between(value.JoulesPerKilogram, 0, 5e6, "J/kg", parameter);

    /// <summary>Specific heat in J/(kg K): 0.1 to 20 J/(g K).</summary>
    internal static double SpecificHeat(SpecificEntropy value, string parameter) =>
        Guard.Between(value.JoulesPerKilogramKelvin, 100, 20_000, "J/(kg K)", parameter);

    /// <summary>Density in kg/m3: 10 to 30 000.</summary>
    internal static double Density(Density value, string parameter) =>
        Guard.Between(value.KilogramsPerCubicMeter, 10, 30_000, "kg/m3", parameter);

    /// <summary>Conductivity in W/(m K): 0.01 to 1000.</summary>
    internal static double Conductivity(ThermalConductivity value, string parameter) =>
        Guard.Between(value.WattsPerMeterKelvin, 0.01, 1000, "W/(m K)", parameter);

    /// <summary>Heat transfer coefficient in W/(m2 K): 0 (insulated) to 1e6.</summary>
    internal static double Transfer(HeatTransferCoefficient value, string parameter) =>
        Guard.Between(value.WattsPerSquareMeterKelvin, 0, 1e6, "W/(m2 K)", parameter);

    /// <summary>Duration of a simulation in s: more than 0, at most 60 days.</summary>
    internal static double Lasts(Duration value, string parameter) =>
        Guard.Positive(Guard.Between(value.Seconds, 0, 60 * 86_400, "s", parameter), "s", parameter);
}
