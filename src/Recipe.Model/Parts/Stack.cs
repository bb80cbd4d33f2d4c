using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>One line of the ply list; the first line lies on the mould.</summary>
public abstract record StackItem
{
    /// <summary>The name the author gave the line: <c>outer</c>.</summary>
    public required string Name { get; init; }

    /// <summary>The whole line.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>The name.</summary>
    public required SourceSpan NameWhere { get; init; }

    /// <summary>Repeats of the line, or pieces of a patch or insert; 1 when not given.</summary>
    public int Count { get; init; } = 1;

    /// <summary>The place as the author wrote it (<c>30 mm from rim</c>), or null.</summary>
    public string? At { get; init; }

    /// <summary>Name of the line it lies on, when it says so.</summary>
    public string? After { get; init; }

    /// <summary>Part of the surface it covers, 0 to 1, or null for all of it.</summary>
    public Figure<double>? CoversShare { get; init; }

    /// <summary>Area it covers, when given as an area.</summary>
    public Figure<Area>? CoversArea { get; init; }

    /// <summary>Length of a piece of stated size.</summary>
    public Figure<Length>? SizeLength { get; init; }

    /// <summary>Width of a piece of stated size.</summary>
    public Figure<Length>? SizeWidth { get; init; }
}

/// <summary>Which way the right side of a cloth looks.</summary>
public enum PlyFace
{
    /// <summary>Away from the mould.</summary>
    Up,

    /// <summary>On the mould.</summary>
    Down,
}

/// <summary>A ply or, when it has a size of its own, a patch.</summary>
public sealed record PlyItem : StackItem
{
    /// <summary>What it is cut from.</summary>
    public required Reinforcement Material { get; init; }

    /// <summary>Where the material is named.</summary>
    public required SourceSpan MaterialWhere { get; init; }

    /// <summary>How it lies; null when the author gave none.</summary>
    public Figure<Orientation>? Orientation { get; init; }

    /// <summary>Whether the line says <c>patch</c>.</summary>
    public bool IsPatch { get; init; }

    /// <summary>Overlap where two pieces meet; the line's, or the part's.</summary>
    public Figure<Length>? Overlap { get; init; }

    /// <summary>How far it runs past the trim line; the line's, or the part's.</summary>
    public Figure<Length>? Trim { get; init; }

    /// <summary>How far inside the ply below it ends (a drop-off).</summary>
    public Figure<Length>? Step { get; init; }

    /// <summary>Resin content of this ply alone.</summary>
    public Figure<Content>? Content { get; init; }

    /// <summary>Number of join lines the author allows in the ply; null when none is said.</summary>
    public int? JoinLines { get; init; }

    /// <summary>Whether the darts that the shear of the cloth asks for are cut into it.</summary>
    public bool CutsDarts { get; init; }

    /// <summary>Which way its right side looks; null when the author does not say.</summary>
    public PlyFace? Face { get; init; }
}

/// <summary>A core in the stack.</summary>
public sealed record CoreItem : StackItem
{
    /// <summary>The sheet.</summary>
    public required Core Material { get; init; }

    /// <summary>Where the material is named.</summary>
    public required SourceSpan MaterialWhere { get; init; }

    /// <summary>Thickness: the line's, or the material's.</summary>
    public Figure<Length>? Thickness { get; init; }

    /// <summary>Widest gap between two sheets.</summary>
    public Figure<Length>? Gap { get; init; }

    /// <summary>Slope of its edge against the face; 90 degrees is a square edge.</summary>
    public Figure<Angle>? Chamfer { get; init; }
}

/// <summary>An insert in the stack.</summary>
public sealed record InsertItem : StackItem
{
    /// <summary>The insert.</summary>
    public required Insert Material { get; init; }

    /// <summary>Where the material is named.</summary>
    public required SourceSpan MaterialWhere { get; init; }
}

/// <summary>A coat on the mould before the plies.</summary>
/// <param name="Material">Gel coat or surface coat.</param>
/// <param name="ArealWeight">Wet mass per area: the line's, or the material's film.</param>
/// <param name="Where">The line.</param>
public sealed record Coat(ResinSystem Material, Figure<AreaDensity>? ArealWeight, SourceSpan Where)
{
    /// <summary>Time from this coat to what comes on it.</summary>
    public Figure<Duration>? Wait { get; init; }
}
