using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A laminate so thick that its own heat counts: even through the thickness, large in the plane.</summary>
/// <param name="Resin">The resin.</param>
/// <param name="Thickness">Thickness; 0.01 mm to 1 m.</param>
/// <param name="FibreVolumeFraction">Share of the volume that is fibre; 0 or more, less than 1.</param>
public sealed record ThickLaminate(ExothermicResin Resin, Length Thickness, Ratio FibreVolumeFraction)
{
    /// <summary>Density of the fibre; 2540 kg/m3 assumed, of E-glass (from memory); carbon 1780.</summary>
    public Density FibreDensity { get; init; } = Density.FromKilogramsPerCubicMeter(2540);

    /// <summary>Specific heat of the fibre; 0.8 J/(g K) assumed, of glass (from memory); carbon 0.71.</summary>
    public SpecificEntropy FibreSpecificHeat { get; init; } = SpecificEntropy.FromJoulesPerKilogramKelvin(800);

    /// <summary>Conductivity of the laminate through its thickness; 0.3 W/(m K) assumed, of glass laminate (from memory); carbon 0.5 to 0.7.</summary>
    public ThermalConductivity Conductivity { get; init; } = ThermalConductivity.FromWattsPerMeterKelvin(0.3);
}
