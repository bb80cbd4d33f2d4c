namespace Recipe.Engineering;

/// <summary>A small wedge in the rim that shows an axis of the cloth.</summary>
/// <param name="At">Place on the rim, m.</param>
/// <param name="Inward">Direction into the piece.</param>
/// <param name="Degrees">Which end of which axis, counter-clockwise from the warp: 0, 90, 180 or 270 degrees.</param>
public readonly record struct PieceNotch(Point2 At, Point2 Inward, int Degrees);
