using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A flat piece of cloth or film before it is laid: the rectangle round it and its own area.</summary>
/// <param name="Length">Size in the first direction of the surface, allowances included.</param>
/// <param name="Width">Size across it, allowances included.</param>
/// <param name="Area">Area of the piece itself, allowances included; not more than the surface needs.</param>
/// <param name="IsOval">True when the piece is round or oval, so that turning it changes its extent less than a rectangle's.</param>
public sealed record FlatPiece(Length Length, Length Width, Area Area, bool IsOval);
