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
        context.Say("Lot and use-before date, from the label of the tin or roll"),
        [new(context.Say("Material"), NamesTheRow: true), new(context.Say("Lot, use before"), WidthMm: 42), new(context.Say("Material")), new(context.Say("Lot, use before"), WidthMm: 42)],
        [.. Materials(context).Distinct(StringComparer.Ordinal).Chunk(Pairs).Select(pair => Row(context, pair))],
        TableUse.Steps);

    private static CellRow Row(BenchContext context, string[] pair) => new(
    [
        new TextCell(Phrase.Empty, pair[0]),
        new Blank(context.Say($"lot and use-before date of {pair[0]}")),
        .. pair.Length == Pairs ? [new TextCell(Phrase.Empty, pair[1]), new BlankCell(new Blank(context.Say($"lot and use-before date of {pair[1]}")))] : ImmutableArray.Create<Cell>("", ""),
    ]);

    // What stays in the part or decides about it: cloth, core, every liquid.
    private static IEnumerable<string> Materials(BenchContext context)
    {
        var part = context.Part;
        var resins = part.Coats.Select(coat => coat.Material).Prepend(part.Resin).Append(part.Join?.Adhesive).OfType<ResinSystem>();
        return
        [
            .. resins.SelectMany(resin => Liquids(context, resin)),
            .. part.Stack.Select(item => Words.Of(StackNames.MaterialOf(item))),
            .. part.Join?.Tape is { } tape ? [Words.Of(tape)] : ImmutableArray<string>.Empty,
            .. part.Mould?.Release.Select(line => Words.Of(line.Agent)) ?? [],
        ];
    }

    private static IEnumerable<string> Liquids(BenchContext context, ResinSystem resin)
    {
        var name = Words.Of((Material)resin);
        return resin.Mix is null ? [name] : [context.Say($"{name}, resin"), Second(context, name, resin)];
    }

    private static string Second(BenchContext context, string name, ResinSystem resin) => (Mixing.Liquids.TakesPeroxide(resin), resin.Hardener) switch
    {
        (true, null) => context.Say($"{name}, peroxide"),
        (true, { } which) => context.Say($"{name}, peroxide {which}"),
        (false, null) => context.Say($"{name}, hardener"),
        (false, { } which) => context.Say($"{name}, hardener {which}"),
    };
}
