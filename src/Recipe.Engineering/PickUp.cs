using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Resin that one consumable takes away with it.</summary>
/// <param name="Area">Area of the consumable that touches resin; zero or more.</param>
/// <param name="PerArea">Resin it would take per area; zero or more. A peel ply of 80 to 120 g/m2 takes 30 to 60 g/m2 (common practice).</param>
/// <param name="Capacity">Most it can hold per area, if known; zero or more.</param>
public sealed record PickUp(Area Area, AreaDensity PerArea, AreaDensity? Capacity = null);
