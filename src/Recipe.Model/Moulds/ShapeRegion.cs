using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>An axis of a drawn or scanned shape, with its sense.</summary>
public enum ShapeDirection
{
    /// <summary>Along x.</summary>
    X,

    /// <summary>Along y.</summary>
    Y,

    /// <summary>Along z.</summary>
    Z,

    /// <summary>Against x.</summary>
    MinusX,

    /// <summary>Against y.</summary>
    MinusY,

    /// <summary>Against z.</summary>
    MinusZ,
}

/// <summary>What is kept of a shape. Several lines keep what all of them keep.</summary>
/// <param name="Written">The line without its head, as the author wrote it.</param>
/// <param name="Where">The line.</param>
public abstract record ShapeRegion(string Written, SourceSpan Where);

/// <summary>What lies between two planes across an axis.</summary>
/// <param name="Axis">The axis: x, y or z.</param>
/// <param name="From">Where it begins, or null for no end.</param>
/// <param name="To">Where it ends, or null for no end.</param>
/// <param name="Written">The line without its head.</param>
/// <param name="Where">The line.</param>
public sealed record BetweenPlanes(ShapeDirection Axis, Length? From, Length? To, string Written, SourceSpan Where) : ShapeRegion(Written, Where);

/// <summary>A named group of the file.</summary>
/// <param name="Name">Its name in the file.</param>
/// <param name="Written">The line without its head.</param>
/// <param name="Where">The line.</param>
public sealed record GroupOfShape(string Name, string Written, SourceSpan Where) : ShapeRegion(Written, Where);

/// <summary>The patch round a point, as far as the next sharp edge.</summary>
/// <param name="X">The point.</param>
/// <param name="Y">The point.</param>
/// <param name="Z">The point.</param>
/// <param name="Edge">Two faces that meet at more than this angle have a sharp edge between them; null for the default.</param>
/// <param name="Written">The line without its head.</param>
/// <param name="Where">The line.</param>
public sealed record PatchOfShape(Length X, Length Y, Length Z, Angle? Edge, string Written, SourceSpan Where) : ShapeRegion(Written, Where);

/// <summary>Where the first thread of a woven cloth is laid down, and which way.</summary>
/// <param name="X">The point that the cloth touches first, or null for the middle of the surface.</param>
/// <param name="Y">The point, or null.</param>
/// <param name="Z">The point, or null for wherever the surface lies over or under it.</param>
/// <param name="Along">Which way 0 degrees runs there, or null.</param>
/// <param name="Step">Distance of two threads of the net it is worked out with, or null.</param>
/// <param name="Where">The line.</param>
public sealed record DrapeStart(Length? X, Length? Y, Length? Z, ShapeDirection? Along, Length? Step, SourceSpan Where);
