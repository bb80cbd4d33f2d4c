using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A line of open edges of a mesh: its rim, or the edge of a hole.</summary>
/// <param name="Points">Points along it, m, with the surface on the left seen from the cloth side; of a closed one the first is not repeated.</param>
/// <param name="Length">Its length.</param>
/// <param name="IsClosed">Whether the last point is joined to the first; only torn or crowded edges leave a line open.</param>
public sealed record MeshBoundary(ImmutableArray<Point3> Points, Length Length, bool IsClosed);
