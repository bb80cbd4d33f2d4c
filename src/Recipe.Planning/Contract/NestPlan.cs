using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>Why the pieces of a material are not laid out on its roll.</summary>
public enum NestObstacle
{
    /// <summary>The usable width of the roll is not known.</summary>
    WidthUnknown,

    /// <summary>A sheet is wider than the roll.</summary>
    TooWide,

    /// <summary>There are more pieces than anybody would cut from a drawing.</summary>
    TooMany,
}

/// <summary>How the pieces of one part that are cut from one roll lie on it: cloth, mat, veil, and the layers of the bag.</summary>
/// <remarks>
/// A piece that lies at an angle to the roll takes the rectangle round it; its corners are offcuts. Pieces of a round or oval surface take
/// the rectangle round them too. Tape for a seam and cores, which come in sheets, are not laid out.
/// </remarks>
public sealed record NestPlan
{
    /// <summary>What the roll is of.</summary>
    public required Material Material { get; init; }

    /// <summary>The sizes that are cut from it, in the order of the stack or of the bag.</summary>
    public required ImmutableArray<NestSize> Sizes { get; init; }

    /// <summary>Why there is no layout; null when there is one.</summary>
    public NestObstacle? Obstacle { get; init; }

    /// <summary>Usable width of the roll; null when not known.</summary>
    public Computed<Length>? UsableWidth { get; init; }

    /// <summary>Least distance of two pieces; null without a layout.</summary>
    public Computed<Length>? Gap { get; init; }

    /// <summary>Length to cut off the roll; null without a layout.</summary>
    public Computed<Length>? LengthUsed { get => field ?? Layout?.Value.LengthUsed; init; }

    /// <summary>No layout of these pieces is shorter; null without a layout.</summary>
    public Length? LeastLength { get => field ?? Layout?.Value.LeastLength; init; }

    /// <summary>Share of that length of roll, at its usable width, that lies outside the pieces, 0 to 1; null without a layout.</summary>
    public Computed<double>? Waste { get => field ?? Layout?.Value.Waste; init; }

    /// <summary>Where each piece lies, from the cut end of the roll; <see cref="NestPlacement.Piece"/> counts <see cref="Sizes"/>.</summary>
    public ImmutableArray<NestPlacement> Placements { get => field.IsDefault ? Layout?.Value.Placements ?? [] : field; init; }

    /// <summary>The layout, worked out when somebody asks for it: a plan is made at every keystroke in an editor, a drawing of the roll is not.</summary>
    internal Lazy<NestLayout>? Layout { get; init; }
}

/// <summary>A layout of the pieces on their roll.</summary>
internal sealed record NestLayout(Computed<Length> LengthUsed, Length LeastLength, Computed<double> Waste, ImmutableArray<NestPlacement> Placements);

/// <summary>Pieces of one size on a roll.</summary>
/// <param name="Letter">
/// What is written on each: a letter for a piece of a ply, A for the first of the stack; the number of its layer for a sheet of the bag,
/// counted from the part outwards.
/// </param>
/// <param name="StackLine">Index of its line in the stack, or null for a layer of the bag.</param>
/// <param name="BagLayer">Index of its layer in the bag, or null for a ply.</param>
/// <param name="Length">Length of the piece itself; of a joined piece, of the whole.</param>
/// <param name="Width">Width of the piece itself; of a joined piece, of the whole.</param>
/// <param name="Angle">Its angle to the roll, degrees.</param>
/// <param name="Along">Extent along the roll of one piece or strip.</param>
/// <param name="Across">Extent across the roll of one piece or strip.</param>
/// <param name="Strips">Strips that make up one piece; 1 when it is cut whole.</param>
/// <param name="Count">How many pieces or strips are cut, all sides and repeats.</param>
/// <param name="Mirrored">Whether half of the pieces are mirror images.</param>
/// <param name="Turn">How a piece may be turned.</param>
public sealed record NestSize(
    string Letter, int? StackLine, int? BagLayer, Length Length, Length Width, double Angle, Length Along, Length Across, int Strips, int Count, bool Mirrored, NestTurn Turn)
{
    /// <summary>Side of the squares that are cut out of its corners: a ply of an open box, whose walls meet at the corners and do not overlap. Zero for any other.</summary>
    public Length Corner { get; init; }
}
