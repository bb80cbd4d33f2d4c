using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Documents.Mixing;

/// <summary>Weighing the two liquids of a resin on one scale: the second goes in until the scale shows the sum.</summary>
internal static class Weighing
{
    /// <summary>What a mass mixed holds of each liquid; null when the ratio is not by weight.</summary>
    public static (Mass Resin, Mass Hardener)? Split(Mass mixed, Figure<MixRatio>? mix)
    {
        if (mix?.Value is not { Basis: MixBasis.Weight } ratio || !(ratio.Resin + ratio.Hardener > 0))
        {
            return null;
        }

        var hardener = mixed * (ratio.Hardener / (ratio.Resin + ratio.Hardener));
        return (mixed - hardener, hardener);
    }

    /// <summary>The steps to pour one liquid, and the other on top of it.</summary>
    /// <param name="context">The traveller.</param>
    /// <param name="system">The resin.</param>
    /// <param name="resin">Of the first liquid.</param>
    /// <param name="hardener">Of the second.</param>
    /// <param name="tolerance">How far the second may be off, plus or minus; null when unknown.</param>
    /// <param name="remark">What the first step adds in small print, or null.</param>
    public static IEnumerable<Row> Pour(BenchContext context, ResinSystem? system, Mass resin, Mass hardener, Mass? tolerance = null, string? remark = null)
    {
        var text = context.Text;
        var peroxide = TakesPeroxide(system);
        var first = text.Weight(resin);
        yield return BenchContext.Step("Set the scale to zero. Pour resin (A).", new BigCell(first.Main, first.Beside), new Blank("resin poured", text.ScaleUnit), remark);
        if (peroxide)
        {
            yield return BenchContext.Tick("Stir in the accelerator, unless it is in already. Close it, carry it away.", "fully stirred in");
        }

        // What stands on the paper adds up: the scale's total is the rounded resin and the rounded hardener.
        var total = text.OnScale(resin) + text.OnScale(hardener);
        var notes = new List<string>();
        if (tolerance is { } off)
        {
            notes.Add($"{text.Weight(total - off, Rounding.Up).Main} to {text.Weight(total + off, Rounding.Down).Main}");
        }

        notes.Add($"{(peroxide ? "peroxide" : "B")} alone {text.Weight(hardener).Main}");
        yield return BenchContext.Step(
            peroxide ? "Peroxide last. Add it until the scale shows" : "Add hardener (B) until the scale shows",
            new BigCell(text.Weight(total).Main, string.Join("; ", notes)),
            new Blank("scale shows", text.ScaleUnit));
    }

    /// <summary>Whether the second liquid is a peroxide, which must never meet an accelerator outside the resin.</summary>
    public static bool TakesPeroxide(ResinSystem? system) => system?.Chemistry is Chemistry.Polyester or Chemistry.Vinylester;
}
