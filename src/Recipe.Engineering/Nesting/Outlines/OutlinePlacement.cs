namespace Recipe.Engineering;

/// <summary>Where one piece lies.</summary>
/// <param name="Piece">Index of its outline among the pieces given.</param>
/// <param name="Copy">Which of that outline, from 0.</param>
/// <param name="Stock">Index of its roll or offcut among those given.</param>
/// <param name="IsMirrored">Whether the outline is mirrored (<see cref="Outline.Mirrored"/>) before it is turned.</param>
/// <param name="Degrees">How far it is then turned counter-clockwise round the origin: 0, 90, 180 or 270.</param>
/// <param name="Shift">How far it is then moved, m.</param>
/// <param name="Lies">The outline as it lies: X from the cut end, Y from the selvedge, m.</param>
public sealed record OutlinePlacement(int Piece, int Copy, int Stock, bool IsMirrored, int Degrees, Point2 Shift, Outline Lies);
