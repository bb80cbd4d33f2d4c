using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Something mended in a mesh, or seen and left.</summary>
/// <param name="Kind">What.</param>
/// <param name="Count">How many.</param>
/// <param name="Within">The greatest distance that a point was allowed to move, where points were moved.</param>
public sealed record MeshRepair(MeshRepairKind Kind, int Count, Length? Within = null);
