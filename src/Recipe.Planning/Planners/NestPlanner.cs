using System.Collections.Immutable;
using System.Globalization;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning.Ledger;
using UnitsNet;

namespace Recipe.Planning.Planners;

/// <summary>Lays the pieces of one part out on their rolls, one layout for each material.</summary>
internal static class NestPlanner
{
    private const double EvenWarp = 0.05;

    public static ImmutableArray<NestPlan> Work(PlanContext context, Ground? ground, ImmutableArray<LineWork> stack, BagWork? bag)
    {
        var rolls = new List<(Material Material, Figure<Length>? Width, List<NestSize> Sizes)>();
        var pieces = 0;
        for (var i = 0; i < stack.Length; i++)
        {
            if (stack[i].Item is PlyItem ply)
            {
                foreach (var piece in stack[i].Pieces)
                {
                    Roll(rolls, ply.Material, ply.Material.Width).Add(OfPly(ply, piece, i, Letter(pieces++), Corner(ground, ply, piece)));
                }
            }
        }

        for (var i = 0; i < (bag?.Layers.Length ?? 0); i++)
        {
            var layer = bag!.Layers[i];
            if (layer.Layer.Class != LayerClass.Caul)
            {
                Roll(rolls, layer.Layer.Material, layer.Layer.Material.Width).Add(OfLayer(layer, i));
            }
        }

        return [.. rolls.Select(roll => Lay(context, roll.Material, roll.Width, [.. roll.Sizes]))];
    }

    /// <summary>A to Z, then AA.</summary>
    public static string Letter(int index) =>
        index < 26 ? ((char)('A' + index)).ToString(CultureInfo.InvariantCulture) : Letter((index / 26) - 1) + Letter(index % 26);

    private static List<NestSize> Roll(List<(Material Material, Figure<Length>? Width, List<NestSize> Sizes)> rolls, Material material, Figure<Length>? width)
    {
        foreach (var roll in rolls)
        {
            if (roll.Material.Name == material.Name)
            {
                return roll.Sizes;
            }
        }

        rolls.Add((material, width, []));
        return rolls[^1].Sizes;
    }

    // A ply of an open box is one piece: the walls fold up, and the squares between them are cut out. Their edges meet and do not overlap.
    private static Length Corner(Ground? ground, PlyItem ply, PiecePlan piece) =>
        ground?.Shape is BoxShape box && ply is { SizeLength: null, CoversArea: null, CoversShare: null } && piece.Length > box.Length
            ? (piece.Length - box.Length) / 2
            : Length.Zero;

    private static NestSize OfPly(PlyItem ply, PiecePlan piece, int line, string letter, Length corner)
    {
        var strips = piece.Joins + 1;
        return new NestSize(
            letter, line, null, piece.Length, piece.Width, piece.RollAngle, piece.LengthOnRoll, piece.StripWidth ?? piece.WidthOnRoll, strips,
            (int)Math.Min((long)piece.Count * strips, int.MaxValue), piece.Mirrored, Turn(ply, piece))
        {
            Corner = corner,
        };
    }

    private static NestSize OfLayer(LayerWork layer, int index)
    {
        var (length, width) = (Length.FromMeters(layer.Length.Si), Length.FromMeters(layer.Width.Si));

        // What carries the resin of an infusion runs better one way than the other.
        var turn = layer.Layer.Class == LayerClass.FlowMedium ? NestTurn.Half : NestTurn.Quarter;
        return new NestSize((index + 1).ToString(CultureInfo.InvariantCulture), null, index, length, width, 0, length, width, 1, layer.Sheets, false, turn);
    }

    // A quarter turn swaps warp and weft: only cloth that is the same both ways, lying straight on its roll, allows it. A satin is not: its
    // faces show the one or the other.
    private static NestTurn Turn(PlyItem ply, PiecePlan piece)
    {
        var orientation = ply.Orientation?.Value ?? Defaults.Orientation.Value;
        if (PieceCutter.IsFree(ply, orientation))
        {
            return NestTurn.Quarter;
        }

        var cloth = ply.Material;
        var isStraight = piece.RollAngle is 0 or 90;
        var isSquare = orientation.Kind == OrientationKind.Pair && Math.Abs(Math.Abs(orientation.First - orientation.Second) - 90) < 1e-9;
        var isBalanced = cloth is { Form: ReinforcementForm.Fabric, FibreAngles: null, Weave: "plain" or "twill" or "basket" }
            && Math.Abs((cloth.WarpShare?.Value ?? 0.5) - 0.5) <= EvenWarp;
        return isStraight && isSquare && isBalanced ? NestTurn.Quarter : NestTurn.Half;
    }

    private static NestPlan Lay(PlanContext context, Material material, Figure<Length>? figure, ImmutableArray<NestSize> sizes)
    {
        var plan = new NestPlan { Material = material, Sizes = sizes };
        if (context.Figures.Length(figure, Owner.Of(material), "width") is not { } width)
        {
            return plan with { Obstacle = NestObstacle.WidthUnknown };
        }

        plan = plan with { UsableWidth = context.Ledger.PublishLength(width) };
        var fits = sizes.All(size => size.Across.Meters <= width.Si * (1 + 1e-9) || (size.Turn == NestTurn.Quarter && size.Along.Meters <= width.Si * (1 + 1e-9)));
        if (!fits || sizes.Sum(size => (long)size.Count) > RollNesting.MostPieces)
        {
            return plan with { Obstacle = fits ? NestObstacle.TooMany : NestObstacle.TooWide };
        }

        var gap = context.Take(Defaults.NestGap);
        var on = context.Ledger.Publish(Length.FromMeters(gap.Si), width.On | gap.On).RestsOn;
        return plan with
        {
            Gap = context.Ledger.PublishLength(gap),
            Layout = new Lazy<NestLayout>(() => LayOut(sizes, width.Si, gap.Si, on)),
        };
    }

    private static NestLayout LayOut(ImmutableArray<NestSize> sizes, double width, double gap, ImmutableArray<string> on)
    {
        var nest = RollNesting.Pack(
            [.. sizes.Select(size => new NestPiece(size.Along, size.Across, size.Count, size.Turn))], Length.FromMeters(width), Length.FromMeters(gap));
        var pieces = sizes.Sum(size => size.Length.Meters * size.Width.Meters * size.Count / size.Strips);
        return new NestLayout(
            new(nest.LengthUsed, on), nest.LeastLength, new(Math.Clamp(1 - (pieces / (nest.LengthUsed.Meters * width)), 0, 1), on), nest.Placements);
    }
}
