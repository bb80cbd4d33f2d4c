using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Model;

/// <summary>A surface of triangles from a file.</summary>
/// <param name="Written">The name of the file as the author wrote it.</param>
/// <param name="File">The file, or null when it cannot be read.</param>
/// <param name="Unit">What a 1 in the file means, or null when the author does not say.</param>
/// <param name="UnitWritten">The unit as the author wrote it, or null.</param>
/// <param name="LaidOnBack">Whether cloth is laid on the side of the triangles from which their corners run clockwise.</param>
public sealed record MeshShape(string Written, ShapeFile? File, Length? Unit, string? UnitWritten, bool LaidOnBack) : SurfaceShape;

/// <summary>A point of a profile.</summary>
/// <param name="Out">Radius, or the distance across or along.</param>
/// <param name="Height">Height above the plane that heights are counted from; negative below it.</param>
public readonly record struct ProfilePoint(Length Out, Length Height);

/// <summary>A profile turned about an axis.</summary>
/// <param name="Profile">Its points, the radius of each and its height.</param>
/// <param name="Arc">How far it is turned; a whole turn closes it.</param>
public sealed record RevolvedShape(ImmutableArray<ProfilePoint> Profile, Angle Arc) : SurfaceShape;

/// <summary>A section drawn along a path.</summary>
/// <param name="Section">Its points across the path.</param>
/// <param name="Path">The points of the path, seen from the side.</param>
public sealed record SweptShape(ImmutableArray<ProfilePoint> Section, ImmutableArray<ProfilePoint> Path) : SurfaceShape;
