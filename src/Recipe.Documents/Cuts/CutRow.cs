using System.Collections.Immutable;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Cuts;

/// <summary>One line of the cut list: pieces of one size from one roll.</summary>
/// <param name="Nest">The roll.</param>
/// <param name="Index">Index of the size on it.</param>
/// <param name="Line">The line of the stack, or null for a sheet of the bag.</param>
/// <param name="Layer">The layer of the bag, or null for a ply.</param>
/// <param name="Mass">What all pieces of the line weigh, as the scale shows it; null when not known.</param>
/// <param name="AsRectangles">What they weigh as long as their corners are still on; null where they are plain rectangles, or nobody knows.</param>
/// <param name="Strips">Strips of the roll on which they lie.</param>
internal sealed record CutRow(NestPlan Nest, int Index, StackPlan? Line, BagLayerPlan? Layer, Mass? Mass, Mass? AsRectangles, ImmutableArray<int> Strips)
{
    // Less than this over the piece's own area is no corner that anybody cuts off.
    private const double Corners = 1.03;

    /// <summary>The size.</summary>
    public NestSize Size => Nest.Sizes[Index];

    /// <summary>All lines, roll by roll.</summary>
    public static ImmutableArray<CutRow> Of(PaperContext context)
    {
        var plan = context.Plan;
        var rows = ImmutableArray.CreateBuilder<CutRow>();
        foreach (var nest in plan.Nests)
        {
            var strips = NestStrips.Of(nest);
            for (var i = 0; i < nest.Sizes.Length; i++)
            {
                var size = nest.Sizes[i];
                var line = size.StackLine is { } s && s < plan.Stack.Length ? plan.Stack[s] : null;
                var layer = size.BagLayer is { } b && plan.Bag is { } bag && b < bag.Layers.Length ? bag.Layers[b] : null;
                rows.Add(new CutRow(nest, i, line, layer, MassOf(context, line, size), Rectangles(context, line, size), NestStrips.Holding(strips, i)));
            }
        }

        return rows.ToImmutable();
    }

    /// <summary>
    /// The angles to the roll at which its pieces or strips really lie, with how many at each: cloth that is the same both ways may lie a quarter turn from how
    /// its ply was given. The one angle of the plan where nothing is laid out.
    /// </summary>
    public ImmutableArray<(double Degrees, int Count)> Angles
    {
        get
        {
            var lying = Nest.Placements.Where(place => place.Piece == Index).GroupBy(place => place.IsTurned).OrderBy(group => group.Key)
                .Select(group => (NestDrawing.AngleOf(Size, group.First()), group.Count())).ToImmutableArray();
            return lying.IsEmpty ? [(Size.Angle, Size.Count)] : lying;
        }
    }

    /// <summary>What all pieces of a material weigh as far as known, as the printed figures add up.</summary>
    public static Mass Sum(IEnumerable<CutRow> rows) => rows.Aggregate(UnitsNet.Mass.Zero, (sum, row) => sum + (row.Mass ?? UnitsNet.Mass.Zero));

    /// <summary>"3", "2-4", or nothing for the bag.</summary>
    public string Ply(Plan plan) => Line is null ? "" : StackNames.Number(plan, Line);

    /// <summary>Which way the right side looks, or null when the recipe does not say.</summary>
    public PlyFace? Face => (Line?.Item as PlyItem)?.Face;

    /// <summary>Whether its cloth has no direction: mat, veil, and a ply that may lie anyhow.</summary>
    public bool IsLoose => Line?.Item is PlyItem { Material.Form: ReinforcementForm.Mat or ReinforcementForm.Veil } or PlyItem { Orientation.Value.Kind: OrientationKind.Random };

    /// <summary>
    /// What is cut off a piece that is no plain rectangle: its corners, which on a box are squares, or all outside an oval. Null for a rectangle.
    /// </summary>
    public string? Outline(PaperContext context)
    {
        if (AsRectangles is null || Line is not { Pieces: [{ } piece] })
        {
            return null;
        }

        return context.Plan.Geometry?.Shape switch
        {
            BoxShape when Size.Corner > Length.Zero => context.Wording.Say($"cut {context.Text.Size(Size.Corner).Main} squares out of the corners; their edges meet, nothing overlaps"),
            DiscShape or SphericalCapShape or ParaboloidShape or HalfEllipsoidShape => piece.Length.Equals(piece.Width, Length.FromMillimeters(1)) ? context.Wording.Say("cut round") : context.Wording.Say("cut oval"),
            ConeShape => context.Wording.Say("cut to the cone laid flat"),
            _ => context.Wording.Say("cut to the outline of the mould"),
        };
    }

    private static Mass? Rectangles(PaperContext context, StackPlan? line, NestSize size)
    {
        if (line is not { CutMass: { } mass, CutArea.Value: { SquareMeters: > 0 } area } || RectangleOf(line) <= Corners * area.SquareMeters)
        {
            return null;
        }

        return context.Text.OnScale(mass.Value * (RectangleOf(size) / area.SquareMeters));
    }

    // A line has one size; were there more, each would have its share of the area.
    private static Mass? MassOf(PaperContext context, StackPlan? line, NestSize size) =>
        line is { CutMass: { } mass } && RectangleOf(line) is > 0 and var all ? context.Text.OnScale(mass.Value * Math.Min(1, RectangleOf(size) / all)) : null;

    // Area of the rectangles round all pieces, m2.
    private static double RectangleOf(StackPlan line) => line.Pieces.Sum(piece => piece.Length.Meters * piece.Width.Meters * piece.Count);

    private static double RectangleOf(NestSize size) => size.Length.Meters * size.Width.Meters * size.Count / size.Strips;
}
