namespace Recipe.Engineering;

/// <summary>The place where a laminate first reaches a strain limit.</summary>
/// <param name="LoadFactor">
/// How many times the stated load is borne until then. Below 1 the limit is passed already; 0 when the change of temperature alone passes it.
/// </param>
/// <param name="Ply">Index of the ply, 0 for the one on the mould.</param>
/// <param name="Layer">Index of the layer in its ply.</param>
/// <param name="Face">Where in the layer.</param>
/// <param name="Mode">Which limit.</param>
public sealed record FirstPlyMargin(double LoadFactor, int Ply, int Layer, LayerFace Face, StrainMode Mode);
