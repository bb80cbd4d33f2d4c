using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A layer that resin fills, with its area.</summary>
/// <param name="Area">Area; zero or more.</param>
/// <param name="Thickness">Thickness under the bag; zero or more.</param>
/// <param name="Porosity">Share of the volume that resin fills; 0 to 1.</param>
public sealed record FilledLayer(Area Area, Length Thickness, Ratio Porosity);
