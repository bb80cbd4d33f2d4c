using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>Which lots go into the part, two materials a row.</summary>
internal static class LotTable
{
    private const int Pairs = 2;

    public static Table Of(BenchContext context) => new(
        "Lot and use-before date, from the label of the tin or roll",
        [new("Material", NamesTheRow: true), new("Lot, use before", WidthMm: 42), new("Material"), new("Lot, use before", WidthMm: 42)],
        [.. Materials(context.Part).Distinct(StringComparer.Ordinal).Chunk(Pairs).Select(Row)],
        TableUse.Steps);

    private static CellRow Row(string[] pair) => new(
    [
        new TextCell(Phrase.Empty, pair[0]),
        new Blank($"lot and use-before date of {pair[0]}"),
        .. pair.Length == Pairs ? [new TextCell(Phrase.Empty, pair[1]), new BlankCell(new Blank($"lot and use-before date of {pair[1]}"))] : ImmutableArray.Create<Cell>("", ""),
    ]);

    // What stays in the part or decides about it: cloth, core, every liquid.
    private static IEnumerable<string> Materials(Part part)
    {
        var resins = part.Coats.Select(coat => coat.Material).Prepend(part.Resin).Append(part.Join?.Adhesive).OfType<ResinSystem>();
        return
        [
            .. resins.SelectMany(Liquids),
            .. part.Stack.Select(item => Words.Of(StackNames.MaterialOf(item))),
            .. part.Join?.Tape is { } tape ? [Words.Of(tape)] : ImmutableArray<string>.Empty,
            .. part.Mould?.Release.Select(line => Words.Of(line.Agent)) ?? [],
        ];
    }

    private static IEnumerable<string> Liquids(ResinSystem resin) => resin.Mix is null
        ? [Words.Of((Material)resin)]
        : [$"{Words.Of((Material)resin)}, resin", $"{Words.Of((Material)resin)}, {(Mixing.Liquids.TakesPeroxide(resin) ? "peroxide" : "hardener")}{(resin.Hardener is { } name ? $" {name}" : "")}"];
}
