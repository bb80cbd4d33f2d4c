namespace Recipe.Engineering;

/// <summary>Pieces of one outline that are cut from a roll.</summary>
/// <param name="Outline">Its true outline; X along the roll, Y across it, so that the warp of the cloth runs along X.</param>
/// <param name="Count">How many of them; 1 or more.</param>
/// <param name="Turn">How they may be turned, besides lying as drawn.</param>
/// <param name="MayMirror">Whether they may be cut from the other face of the cloth, mirrored across the roll's length.</param>
/// <param name="KitOrder">Place of its ply in the order of laying; pieces of one ply have the same number. Any whole number.</param>
public sealed record OutlinePiece(Outline Outline, int Count, NestTurn Turn, bool MayMirror = false, int KitOrder = 0);
