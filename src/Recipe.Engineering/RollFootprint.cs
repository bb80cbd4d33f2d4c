using UnitsNet;

namespace Recipe.Engineering;

/// <summary>The room that a piece takes on its roll when it is cut at an angle.</summary>
/// <param name="Along">Extent along the roll (warp) direction.</param>
/// <param name="Across">Extent across the roll, which the usable roll width has to hold.</param>
public sealed record RollFootprint(Length Along, Length Across);
