using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Mixing;

/// <summary>Weighing and mixing the coats on the mould.</summary>
internal static class CoatMix
{
    /// <summary>The station of the coats; none without a coat.</summary>
    public static IEnumerable<Station> Stations(BenchContext context)
    {
        if (context.Part.Coats.IsEmpty)
        {
            yield break;
        }

        var rows = new List<Row>();
        foreach (var coat in context.Part.Coats)
        {
            rows.Add(new GroupRow(Words.Of(coat.Material) + (coat.Material.Mix is { } mix ? $": mix {QuantityText.Written(mix)}" : ": no mix ratio is known")));
            rows.AddRange(Mix(context, coat));
            rows.Add(BenchContext.Tick("Mix, scrape the cup."));
        }

        yield return new Station("Mix the coat", [.. context.Caution(Danger.Peroxide), BenchContext.Steps("After H1", rows), .. context.Foot("H1")]);
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

    private static IEnumerable<Row> Mix(BenchContext context, Coat coat)
    {
        var unit = context.Text.ScaleUnit;
        if (ToMix(context.Plan, coat) is not { } mass)
        {
            return [BenchContext.Step($"Weigh and mix. {Order(coat.Material)}", "amount not known", new Blank("coat mixed", unit))];
        }

        if (Weighing.Split(mass, coat.Material.Mix) is { } parts)
        {
            return Weighing.Pour(context, coat.Material, parts.Resin, parts.Hardener);
        }

        var weight = context.Text.Weight(mass);
        return [BenchContext.Step($"Weigh and mix. {Order(coat.Material)}", new BigCell(weight.Main, weight.Beside), new Blank("coat mixed", unit))];
    }
}
