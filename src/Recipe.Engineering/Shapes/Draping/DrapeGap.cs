namespace Recipe.Engineering;

/// <summary>A crossing of threads that was not found.</summary>
/// <param name="I">Steps along the warp from the start.</param>
/// <param name="J">Steps along the weft from the start.</param>
/// <param name="Reason">Why.</param>
public readonly record struct DrapeGap(int I, int J, DrapeGapReason Reason);
