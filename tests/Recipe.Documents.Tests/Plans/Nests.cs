using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Tests.Plans;

/// <summary>Lays the pieces of a plan built by hand on their rolls, as the planner would.</summary>
internal static class Nests
{
    private static readonly Length Overlap = Length.FromMillimeters(20);
    private static readonly Length Gap = Length.FromMillimeters(5);

    public static Plan LaidOut(Plan plan)
    {
        var sizes = new List<(Material Material, Length? Width, NestSize Size)>();
        for (var i = 0; i < plan.Stack.Length; i++)
        {
            if (plan.Stack[i].Item is not PlyItem ply)
            {
                continue;
            }

            foreach (var piece in plan.Stack[i].Pieces)
            {
                var letter = ((char)('A' + sizes.Count)).ToString();
                var strips = piece.Joins + 1;
                var across = (piece.WidthOnRoll + (Overlap * piece.Joins)) / strips;
                sizes.Add((ply.Material, piece.RollWidth, new NestSize(
                    letter, i, null, piece.Length, piece.Width, piece.RollAngle, piece.LengthOnRoll, across, strips, piece.Count * strips, piece.Mirrored, NestTurn.Half)));
            }
        }

        for (var i = 0; i < (plan.Bag?.Layers.Length ?? 0); i++)
        {
            var layer = plan.Bag!.Layers[i];
            sizes.Add((layer.Layer.Material, layer.Layer.Material.Width?.Value, new NestSize(
                (i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), null, i, layer.Length.Value, layer.Width.Value, 0, layer.Length.Value, layer.Width.Value, 1, layer.Sheets, false, NestTurn.Quarter)));
        }

        return plan with { Nests = [.. sizes.GroupBy(size => size.Material.Name).Select(roll => Lay(roll.First().Material, roll.First().Width, [.. roll.Select(size => size.Size)]))] };
    }

    private static NestPlan Lay(Material material, Length? width, ImmutableArray<NestSize> sizes)
    {
        var plan = new NestPlan { Material = material, Sizes = sizes };
        if (width is not { } wide)
        {
            return plan with { Obstacle = NestObstacle.WidthUnknown };
        }

        plan = plan with { UsableWidth = Make.Known(wide) };
        if (sizes.Any(size => size.Across > wide))
        {
            return plan with { Obstacle = NestObstacle.TooWide };
        }

        var nest = RollNesting.Pack([.. sizes.Select(size => new NestPiece(size.Along, size.Across, size.Count, size.Turn))], wide, Gap);
        var pieces = sizes.Sum(size => size.Length.Meters * size.Width.Meters * size.Count / size.Strips);
        return plan with
        {
            Gap = Make.Known(Gap),
            LengthUsed = Make.Known(nest.LengthUsed),
            LeastLength = nest.LeastLength,
            Waste = Make.Known(Math.Max(0, 1 - (pieces / (nest.LengthUsed.Meters * wide.Meters)))),
            Placements = nest.Placements,
        };
    }
}
