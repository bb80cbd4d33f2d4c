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
            rows.Add(new GroupRow(coat.Material.Label + (coat.Material.Mix is { } mix ? $": mix {QuantityText.Written(mix)}" : ": no mix ratio is known")));
            if (MassOf(context.Plan, coat) is { } mass)
            {
                var weight = context.Text.Weight(mass);
                rows.Add(context.Step($"Weigh, mix. {Order(coat.Material)}", new BigCell(weight.Main, weight.Beside), new Blank("coat mixed", "g"), "and what the brush keeps"));
            }
            else
            {
                rows.Add(context.Step($"Weigh, mix. {Order(coat.Material)}", "amount not known", new Blank("coat mixed", "g")));
            }

            var film = coat.ArealWeight is { } weightPerArea
                ? (Cell)context.Text.Written(weightPerArea, value => context.Text.ArealWeight(value)).ToString()
                : "as the data sheet says";
            rows.Add(context.Tick("Lay an even coat. No runs, no thin corners.", film));
        }

        rows.Add(context.Tick("Wait: tacky, no colour on the glove.", "then the first ply"));
        return [TravellerContext.Steps("Coat the mould, after H1", rows), .. context.Caution(Danger.Peroxide)];
    }

    /// <summary>Which liquid goes in when, by the chemistry.</summary>
    public static string Order(ResinSystem resin) => resin.Chemistry is Chemistry.Polyester or Chemistry.Vinylester
        ? "Stir the accelerator in first. Peroxide last."
        : "Resin first, hardener second.";

    /// <summary>What stays on the mould: wet mass per area by the area inside the trim line, all sides.</summary>
    public static Mass? MassOf(Plan plan, Coat coat) => coat.ArealWeight is { } film && plan.Geometry is { } surface
        ? Mass.FromKilograms(film.Value.KilogramsPerSquareMeter * surface.Area.SquareMeters * surface.Sides)
        : null;
}
