using UnitsNet;

namespace Recipe.Engineering;

/// <summary>State at one depth of a laminate.</summary>
/// <param name="Depth">Depth from the mould's face.</param>
/// <param name="Temperature">Temperature.</param>
/// <param name="Degree">Degree of cure.</param>
public sealed record ThicknessPoint(Length Depth, Temperature Temperature, Ratio Degree);
