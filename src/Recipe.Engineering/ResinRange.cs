using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Resin share by mass that a process leaves in cloth: what is usual and between what ends.</summary>
/// <param name="Low">Lower end.</param>
/// <param name="Usual">Usual share.</param>
/// <param name="High">Upper end.</param>
public sealed record ResinRange(Ratio Low, Ratio Usual, Ratio High);
