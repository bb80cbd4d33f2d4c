using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Where one piece lies on its roll.</summary>
/// <param name="Piece">Index of its size among the pieces given.</param>
/// <param name="Copy">Which of that size, from 0.</param>
/// <param name="AlongAt">Its near edge, from the cut end of the roll.</param>
/// <param name="AcrossAt">Its near edge, from the selvedge.</param>
/// <param name="Along">Its extent along the roll as it lies.</param>
/// <param name="Across">Its extent across the roll as it lies.</param>
/// <param name="IsTurned">Whether it lies a quarter turn from how it was given.</param>
public sealed record NestPlacement(int Piece, int Copy, Length AlongAt, Length AcrossAt, Length Along, Length Across, bool IsTurned);
