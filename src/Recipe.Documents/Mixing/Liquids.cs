using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Mixing;

/// <summary>What other papers say about liquids that are mixed; how they are weighed stands on the mix cards.</summary>
internal static class Liquids
{
    /// <summary>Whether the second liquid is a peroxide, which must never meet an accelerator outside the resin.</summary>
    public static bool TakesPeroxide(ResinSystem? system) => system?.Chemistry is Chemistry.Polyester or Chemistry.Vinylester;

    /// <summary>The mix ratio of the resin of the plies, as a thing to check.</summary>
    public static Phrase Ratio(BenchContext context)
    {
        if ((context.Plan.Resin?.System ?? context.Part.Resin) is not { Mix: { } mix } resin)
        {
            return context.Say("No mix ratio is known: take it from the data sheet, and mix nothing before");
        }

        var (name, ratio) = (Words.Of(resin, context.Wording), Phrase.Strong(Words.Of(mix, context.Wording)));
        return mix.Value.Basis == MixBasis.Volume
            ? context.SayPhrase($"{name}: mix {ratio}; the weights on the mix cards come from the densities")
            : context.SayPhrase($"{name}: mix {ratio}");
    }

    /// <summary>What stays of a coat on the mould: wet mass per area by the area inside the trim line, all sides.</summary>
    public static Mass? OnTheMould(Plan plan, Coat coat) => coat.ArealWeight is { } film && plan.Geometry is { } surface
        ? Mass.FromKilograms(film.Value.KilogramsPerSquareMeter * surface.Area.SquareMeters * surface.Sides)
        : null;

    /// <summary>
    /// What is mixed of a coat for one part: the share of the takeoff, which runs as far as the plies do and counts what brush and cup keep.
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

    /// <summary>Filler for the whole seam; null when its length or the filler per length is not given.</summary>
    public static Mass? FillerOf(Plan plan) => plan.Join?.Fillet?.Value
        ?? (plan.Part.Join is { Fillet: { } fillet, Seam: { } seam } ? Mass.FromKilograms(fillet.Value.KilogramsPerMeter * seam.Value.Meters) : null);
}
