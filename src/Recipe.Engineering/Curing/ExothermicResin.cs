using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A mixed resin that warms itself: how it cures, and what its heat does to it.</summary>
/// <param name="Kinetics">How fast it cures.</param>
/// <param name="HeatOfReaction">Heat of the whole cure per mass of mix; up to 5000 J/g; epoxies with amines 400 to 500 J/g (from memory).</param>
public sealed record ExothermicResin(CureKinetics Kinetics, SpecificEnergy HeatOfReaction)
{
    /// <summary>Specific heat; 1.9 J/(g K) assumed (from memory; liquid and warm epoxies 1.7 to 2.1).</summary>
    public SpecificEntropy SpecificHeat { get; init; } = SpecificEntropy.FromJoulesPerKilogramKelvin(1900);

    /// <summary>Density of the mix; 1100 kg/m3 assumed (from memory).</summary>
    public Density Density { get; init; } = Density.FromKilogramsPerCubicMeter(1100);

    /// <summary>Thermal conductivity; 0.2 W/(m K) assumed (from memory; unfilled resins 0.17 to 0.22).</summary>
    public ThermalConductivity Conductivity { get; init; } = ThermalConductivity.FromWattsPerMeterKelvin(0.2);

    /// <summary>Degree at the start, glass transition and brake; nothing of it when null.</summary>
    public CureOptions? Options { get; init; }

    internal CureOptions OptionsOrNone => Options ?? new CureOptions();
}
