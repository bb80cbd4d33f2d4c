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
            rows.Add(new GroupRow(Words.Of(coat.Material) + (coat.Material.Mix is { } mix ? $": mix {QuantityText.Written(mix)}" : ": no mix ratio is known")));
            rows.Add(BenchContext.Step("Mix it by its mix card.", Amount(context, coat), new Blank("coat mixed", context.Text.ScaleUnit)));
            rows.Add(BenchContext.Tick("Lay an even coat: no runs, no thin corners.", Film(context, coat)));
        }

        rows.Add(BenchContext.Tick(
            "Wait until it is tacky: no colour on the glove.",
            context.Part.Coats[^1].Wait is { } wait ? $"{QuantityText.Span(wait.Value)} are planned, then the first ply" : "then the first ply"));
        return [.. context.Caution(Danger.Peroxide), context.SignedSteps("Coat the mould, after H1", rows)];
    }

    private static Cell Amount(BenchContext context, Coat coat) => Liquids.ToMix(context.Plan, coat) is { } mass
        ? new BigCell(context.Text.Weight(mass).Main, context.Text.Weight(mass).Beside)
        : "amount not known";

    private static Cell Film(BenchContext context, Coat coat) => coat.ArealWeight is { } film
        ? context.Text.Written(film, value => context.Text.ArealWeight(value)).ToString()
        : "as the data sheet says";
}
