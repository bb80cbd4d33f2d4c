using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>One connected part of a surface laid flat, its long side along X, its least corner at the origin.</summary>
/// <param name="Outline">Its rim, m.</param>
/// <param name="Holes">Its holes, m.</param>
/// <param name="Corners">Where the corners of its triangles lie, three a triangle, m.</param>
/// <param name="Places">Where the same corners lie on the surface, m.</param>
/// <param name="Seams">Lines on the surface along which it was cut, m: round a tube or down the corners of a box.</param>
/// <param name="Overlaps">Whether the rim crosses itself, so that it cannot be cut from one piece of cloth.</param>
public sealed record FlatPart(
    Outline Outline,
    ImmutableArray<Outline> Holes,
    ImmutableArray<Point2> Corners,
    ImmutableArray<Point3> Places,
    ImmutableArray<ImmutableArray<Point3>> Seams,
    bool Overlaps);
