namespace Recipe.Engineering;

/// <summary>A piece of an outline that is cut from one width of roll.</summary>
/// <param name="Index">Which strip, from 0 at the least Y.</param>
/// <param name="Outline">The piece where it lies in the whole, m.</param>
public sealed record OutlineStrip(int Index, Outline Outline);
