using System.Collections.Immutable;
using Recipe.Documents.Quantities;
using Recipe.Planning;

namespace Recipe.Documents.Json;

/// <summary>The root of <c>recipe/shelf/1</c>. Amounts are SI: kg, m2, m, m3, or pieces.</summary>
internal sealed record ShelfCountRecord(string Schema, ImmutableArray<ShelfLineRecord> Shelf, ImmutableArray<ToBuyRecord> Buy)
{
    public static ShelfCountRecord Of(IReadOnlyList<ShelfLine> shelf, IReadOnlyList<ToBuyLine> buy, DateOnly today) => new(
        ShelfReport.Schema,
        [
            .. shelf.Select(line => new ShelfLineRecord(
                line.Line.Material, line.Line.Lot, line.Line.Written, line.Line.Amount?.Si, line.Used, line.Left, line.Taken, line.NotCompared,
                Day(line.Line.Counted), Day(line.Line.Received), Day(line.Line.Opened), Day(line.Line.Expires), line.IsExpired(today))),
        ],
        [.. buy.Select(line => new ToBuyRecord(line.Need.Material.Name, line.Need.LabelWithVolume, line.Need.Gross.Value.Unit?.Symbol, line.Gross, line.InStock, line.Buy))]);

    private static string? Day(DateOnly? day) => day is { } known ? Numbers.Day(known) : null;
}

internal sealed record ShelfLineRecord(
    string Material, string? Lot, string Written, double? AmountSi, double UsedSi, double? LeftSi, int Uses, int UsesNotCompared, string? Counted, string? Received, string? Opened, string? Expires, bool Expired);

/// <summary><paramref name="Unit"/> is the one papers show; the amounts are SI all the same.</summary>
internal sealed record ToBuyRecord(string Material, string Label, string? Unit, double NeededSi, double? InStockSi, double BuySi);
