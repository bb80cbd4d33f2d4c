namespace Recipe.Engineering;

/// <summary>A piece for which there is no room.</summary>
/// <param name="Piece">Index of its outline among the pieces given.</param>
/// <param name="Copy">Which of that outline, from 0.</param>
/// <param name="FitsNone">Whether no roll and no offcut would hold it even alone, however it may be turned; else the cloth is used up.</param>
public sealed record OutlineMissing(int Piece, int Copy, bool FitsNone);
