using UnitsNet;

namespace Recipe.Engineering;

/// <summary>The plane that fits the longest boundary best, and how the surface lies to it.</summary>
/// <param name="Centre">Mean of the boundary, m.</param>
/// <param name="Normal">Normal of the plane, length 1, to the side that the cloth side faces on the whole.</param>
/// <param name="OutOfPlane">Greatest distance of the boundary from the plane.</param>
/// <param name="Depth">Greatest distance of the surface from the plane, against the normal: how deep a female mould is.</param>
/// <param name="Rise">Greatest distance of the surface from the plane, along the normal: how high a male mould stands.</param>
/// <param name="Width">Least width of the boundary in its plane, to half a degree of direction.</param>
/// <remarks>Source: least squares through the moments of the boundary line, each edge by its length.</remarks>
public sealed record MeshRim(Point3 Centre, Point3 Normal, Length OutOfPlane, Length Depth, Length Rise, Length Width);
