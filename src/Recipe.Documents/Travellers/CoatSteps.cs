using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Travellers;

/// <summary>Gel coats and surface coats on the mould, before the plies.</summary>
internal static class CoatSteps
{
    public static IEnumerable<Block> Of(TravellerContext context)
    {
        if (context.Part.Coats.IsEmpty)
        {
            return [];
        }

        var rows = new List<Row>();
        foreach (var coat in context.Part.Coats)
        {
            rows.Add(new GroupRow(Words.Of(coat.Material) + (coat.Material.Mix is { } mix ? $": mix {QuantityText.Written(mix)}" : ": no mix ratio is known")));
            rows.AddRange(Mix(context, coat));
            rows.Add(TravellerContext.Tick("Mix, scrape the cup. Lay an even coat: no runs, no thin corners.", Film(context, coat)));
        }

        rows.Add(TravellerContext.Tick(
            "Wait until it is tacky: no colour on the glove.",
            context.Part.Coats[^1].Wait is { } wait ? $"{QuantityText.Span(wait.Value)} are planned, then the first ply" : "then the first ply"));
        return [.. context.Caution(Danger.Peroxide), TravellerContext.Steps("Coat the mould, after H1", rows)];
    }

    /// <summary>Which liquid goes in when, by the chemistry.</summary>
    public static string Order(ResinSystem resin) => Weighing.TakesPeroxide(resin)
        ? "Stir the accelerator in first. Peroxide last."
        : "Resin first, hardener second.";

    /// <summary>What stays on the mould: wet mass per area by the area inside the trim line, all sides.</summary>
    public static Mass? MassOf(Plan plan, Coat coat) => coat.ArealWeight is { } film && plan.Geometry is { } surface
        ? Mass.FromKilograms(film.Value.KilogramsPerSquareMeter * surface.Area.SquareMeters * surface.Sides)
        : null;

    /// <summary>
    /// What is mixed for one part: the share of the takeoff, which runs as far as the plies do and counts what brush and cup keep.
    /// Null when the takeoff does not know it.
    /// </summary>
    public static Mass? ToMix(Plan plan, Coat coat)
    {
        var lines = plan.Takeoff.Where(line => line.Group == TakeoffGroup.Coat && ReferenceEquals(line.Material, coat.Material)).ToList();
        var same = plan.Part.Coats.Where(other => ReferenceEquals(other.Material, coat.Material)).ToList();
        var film = same.Sum(other => other.ArealWeight?.Value.KilogramsPerSquareMeter ?? 0);
        return lines.Count > 0 && coat.ArealWeight is { } weight && film > 0
            ? Mass.FromKilograms(lines.Sum(line => line.Gross.Value.Si) / Math.Max(plan.Part.Quantity, 1) * weight.Value.KilogramsPerSquareMeter / film)
            : null;
    }

    private static IEnumerable<Row> Mix(TravellerContext context, Coat coat)
    {
        var unit = context.Text.ScaleUnit;
        if (ToMix(context.Plan, coat) is not { } mass)
        {
            return [TravellerContext.Step($"Weigh and mix. {Order(coat.Material)}", "amount not known", new Blank("coat mixed", unit))];
        }

        if (Weighing.Split(mass, coat.Material.Mix) is { } parts)
        {
            return Weighing.Pour(context, coat.Material, parts.Resin, parts.Hardener);
        }

        var weight = context.Text.Weight(mass);
        return [TravellerContext.Step($"Weigh and mix. {Order(coat.Material)}", new BigCell(weight.Main, weight.Beside), new Blank("coat mixed", unit))];
    }

    private static Cell Film(TravellerContext context, Coat coat) => coat.ArealWeight is { } film
        ? context.Text.Written(film, value => context.Text.ArealWeight(value)).ToString()
        : "as the data sheet says";
}
