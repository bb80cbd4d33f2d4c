using UnitsNet;

namespace Recipe.Engineering;

/// <summary>One layer of parallel fibres in a stitched cloth.</summary>
/// <param name="Angle">Direction of the fibres; at most 360 degrees either way.</param>
/// <param name="Share">Its share of the cloth's dry weight; more than 0, and all shares of a cloth make 1.</param>
public readonly record struct FibreDirection(Angle Angle, Ratio Share);
