using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Cuts;

/// <summary>
/// The cut list as one rectangular table. The first column says what a record is about: <c>piece</c>, <c>roll</c>, or <c>place</c>, where one piece lies
/// on its roll.
/// </summary>
internal static class CutData
{
    private static readonly ImmutableArray<string> Columns =
    [
        "record", "letter", "ply", "line", "layer", "material", "count", "mirrored", "strips_per_piece", "length_mm", "width_mm", "angle_deg", "mass_g", "with_corners_g",
        "roll_strip", "usable_width_mm", "length_used_mm", "least_length_mm", "waste_percent", "along_at_mm", "across_at_mm", "along_mm", "across_mm", "note",
    ];

    public static DataTable Of(PaperContext context, ImmutableArray<CutRow> rows)
    {
        var table = ImmutableArray.CreateBuilder<ImmutableArray<object?>>();
        foreach (var row in rows)
        {
            var size = row.Size;
            table.Add(Row(
                "piece",
                ("letter", size.Letter),
                ("ply", row.Ply(context.Plan) is { Length: > 0 } ply ? ply : null),
                ("line", row.Line?.Item.Name),
                ("layer", row.Layer is { } layer ? Keys.Of(layer.Layer.Class) : null),
                ("material", row.Nest.Material.Name),
                ("count", size.Count / size.Strips),
                ("mirrored", size.Mirrored ? size.Count / size.Strips / 2 : 0),
                ("strips_per_piece", size.Strips),
                ("length_mm", Mm(size.Length)),
                ("width_mm", Mm(size.Width)),
                ("angle_deg", row.Angles is [var angle] ? Math.Round(angle.Degrees, 3) : null),
                ("mass_g", row.Mass is { } mass ? Math.Round(mass.Grams, 4) : null),
                ("with_corners_g", row.AsRectangles is { } whole ? Math.Round(whole.Grams, 4) : null),
                ("roll_strip", string.Join(" ", row.Strips))));
        }

        foreach (var nest in context.Plan.Nests)
        {
            table.Add(Row(
                "roll",
                ("material", nest.Material.Name),
                ("usable_width_mm", nest.UsableWidth is { } width ? Mm(width.Value) : null),
                ("length_used_mm", nest.LengthUsed is { } used ? Mm(used.Value) : null),
                ("least_length_mm", nest.LeastLength is { } least ? Mm(least) : null),
                ("waste_percent", nest.Waste is { } waste ? Math.Round(waste.Value * 100, 2) : null),
                ("note", nest.Obstacle is { } obstacle ? Keys.Of(obstacle) : context.RestsOn(nest.LengthUsed!.Value.RestsOn))));
            table.AddRange(nest.Placements.Select(place => Row(
                "place",
                ("letter", NestDrawing.Mark(nest.Sizes[place.Piece], place)),
                ("material", nest.Material.Name),
                ("angle_deg", Math.Round(NestDrawing.AngleOf(nest.Sizes[place.Piece], place), 3)),
                ("along_at_mm", Mm(place.AlongAt)),
                ("across_at_mm", Mm(place.AcrossAt)),
                ("along_mm", Mm(place.Along)),
                ("across_mm", Mm(place.Across)),
                ("note", place.IsTurned ? "turned" : null))));
        }

        return new DataTable(Columns, table.ToImmutable());
    }

    private static double Mm(UnitsNet.Length length) => Math.Round(length.Millimeters, 3);

    private static ImmutableArray<object?> Row(string record, params ReadOnlySpan<(string Column, object? Value)> fields)
    {
        var row = new object?[Columns.Length];
        row[0] = record;
        foreach (var (column, value) in fields)
        {
            row[Columns.IndexOf(column)] = value;
        }

        return [.. row];
    }
}
