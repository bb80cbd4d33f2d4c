using UnitsNet;

namespace Recipe.Engineering;

/// <summary>One ply of a laminate as far as mass and thickness go.</summary>
/// <param name="Cloth">Dry weight per area; greater than zero.</param>
/// <param name="Fibre">Density of the fibre; greater than zero.</param>
/// <param name="ResinMassFraction">Mass of resin in the mass of the wet ply; more than 0 and less than 1.</param>
public sealed record StackPly(AreaDensity Cloth, Density Fibre, Ratio ResinMassFraction);
