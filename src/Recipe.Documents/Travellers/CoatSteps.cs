using Recipe.Documents.Layout;
using Recipe.Documents.Mixing;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>Gel coats and surface coats on the mould, before the plies.</summary>
internal static class CoatSteps
{
    public static IEnumerable<Block> Of(BenchContext context)
    {
        if (context.Part.Coats.IsEmpty)
        {
            return [];
        }

        var rows = new List<Row>();
        foreach (var coat in context.Part.Coats)
        {
            rows.Add(new GroupRow(coat.Material.Mix is { } mix
                ? context.Say($"{Words.Of(coat.Material, context.Wording)}: mix {Words.Of(mix, context.Wording)}")
                : context.Say($"{Words.Of(coat.Material, context.Wording)}: no mix ratio is known")));
            rows.Add(BenchContext.Step(context.Say("Mix it by its mix card."), Amount(context, coat), new Blank(context.Say("coat mixed"), context.Text.ScaleUnit)));
            rows.Add(BenchContext.Tick(context.IsWrapped ? context.Say("Lay an even coat: no runs, no thin spots.") : context.Say("Lay an even coat: no runs, no thin corners."), Film(context, coat)));
        }

        rows.Add(BenchContext.Tick(
            context.Say("Wait until it is tacky: no colour on the glove."),
            context.Part.Coats[^1].Wait is { } wait ? context.Say($"{QuantityText.Span(wait.Value)} are planned, then the first ply") : context.Say("then the first ply")));
        return [.. context.Caution(Danger.Peroxide), context.SignedSteps(context.IsWrapped ? context.Say("Coat the mandrel, after H1") : context.Say("Coat the mould, after H1"), rows)];
    }

    private static Cell Amount(BenchContext context, Coat coat) => Liquids.ToMix(context.Plan, coat) is { } mass
        ? new BigCell(context.Text.Weight(mass).Main, context.Text.Weight(mass).Beside)
        : context.Say("amount not known");

    private static Cell Film(BenchContext context, Coat coat) => coat.ArealWeight is { } film
        ? context.Text.Written(film, value => context.Text.ArealWeight(value)).ToString()
        : context.Say("as the data sheet says");
}
