using Recipe.Documents.Shared;
using Recipe.Planning;

namespace Recipe.Documents.Json;

/// <summary>From a layout on a roll to its JSON shape.</summary>
internal static class NestMapping
{
    public static NestRecord Of(Plan plan, NestPlan nest) => new(
        nest.Material.Name,
        nest.Material.Label,
        nest.Obstacle is { } obstacle ? Keys.Of(obstacle) : null,
        Si.Of(nest.UsableWidth),
        Si.Of(nest.Gap),
        Si.Of(nest.LengthUsed),
        nest.LeastLength is { } least ? Si.Of(least) : null,
        nest.Waste is { } waste ? Si.Number(waste.Value) : null,
        [.. nest.Sizes.Select(size => Of(plan, size))],
        [
            .. nest.Placements.Select(place => new NestPlacementRecord(
                nest.Sizes[place.Piece].Letter,
                place.Copy + 1,
                Si.Of(place.AlongAt),
                Si.Of(place.AcrossAt),
                Si.Of(place.Along),
                Si.Of(place.Across),
                place.IsTurned)),
        ],
        Si.RestsOn(("usable_width_m", nest.UsableWidth?.RestsOn), ("length_used_m", nest.LengthUsed?.RestsOn), ("waste_fraction", nest.Waste?.RestsOn)));

    private static NestSizeRecord Of(Plan plan, NestSize size) => new(
        size.Letter,
        size.StackLine is { } line ? plan.Stack[line].Item.Name : null,
        size.BagLayer + 1,
        Si.Of(size.Length),
        Si.Of(size.Width),
        Si.Number(size.Angle),
        Si.Of(size.Along),
        Si.Of(size.Across),
        size.Strips,
        size.Count,
        size.Mirrored,
        Keys.Of(size.Turn),
        size.Corner > UnitsNet.Length.Zero ? Si.Of(size.Corner) : null);
}
