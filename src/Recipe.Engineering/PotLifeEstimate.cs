using UnitsNet;

namespace Recipe.Engineering;

/// <summary>An estimated life and how it came about: the reference life times the three factors.</summary>
/// <param name="Life">The estimate.</param>
/// <param name="TemperatureFactor">Factor for the temperature, the cap for heat included; 1 at the reference.</param>
/// <param name="MassFactor">Factor for the mass of the pot; 1 at the reference.</param>
/// <param name="ShapeFactor">Factor for a shallow tray or a thin film; 1 for a deep cup.</param>
/// <param name="Assumptions">Rules of thumb used.</param>
public sealed record PotLifeEstimate(
    Duration Life,
    double TemperatureFactor,
    double MassFactor,
    double ShapeFactor,
    PotLifeAssumptions Assumptions);
