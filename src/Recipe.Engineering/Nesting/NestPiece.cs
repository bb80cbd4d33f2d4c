using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Pieces of one size that are cut from a roll; of a piece that is no rectangle, the rectangle round it.</summary>
/// <param name="Along">Extent along the roll; greater than zero.</param>
/// <param name="Across">Extent across the roll; greater than zero.</param>
/// <param name="Count">How many of them; 1 or more.</param>
/// <param name="Turn">How they may be turned.</param>
public sealed record NestPiece(Length Along, Length Across, int Count, NestTurn Turn);
