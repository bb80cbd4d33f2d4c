using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Mixing;

/// <summary>Weighing and mixing what a join takes in pots of its own.</summary>
internal static class JoinMix
{
    private const string Remark = "what stays in the seam; mix more, by what cup and brush keep";

    /// <summary>Whether the join has a liquid of its own.</summary>
    public static bool IsNeeded(BenchContext context) => context.Part.Join is { } join && Liquids(context, join).Any();

    /// <summary>The station of the join's liquids; none without any.</summary>
    public static IEnumerable<Station> Stations(BenchContext context)
    {
        if (context.Part.Join is { } join && IsNeeded(context))
        {
            yield return new Station("Mix for the join", [.. context.Caution(Danger.Skin, Danger.Peroxide), BenchContext.Steps("", Liquids(context, join)), .. context.Foot(null)]);
        }
    }

    /// <summary>Filler for the whole seam; null when its length or the filler per length is not given.</summary>
    public static Mass? FillerOf(Plan plan) => plan.Join?.Fillet?.Value
        ?? (plan.Part.Join is { Fillet: { } fillet, Seam: { } seam } ? Mass.FromKilograms(fillet.Value.KilogramsPerMeter * seam.Value.Meters) : null);

    private static IEnumerable<Row> Liquids(BenchContext context, Join join)
    {
        if (join.Adhesive is { } adhesive)
        {
            var mass = (context.Plan.Join?.Adhesive?.Value ?? Mass.Zero) + (FillerOf(context.Plan) ?? Mass.Zero);
            foreach (var row in Mix(context, adhesive, mass))
            {
                yield return row;
            }
        }

        // Wet in wet the tape's resin is in the pots already.
        if (context.Plan.Join is { SameSession: false, TapeResin: { } tape } && context.Part.Resin is { } resin)
        {
            foreach (var row in Mix(context, resin, tape.Value, " for the tape"))
            {
                yield return row;
            }
        }
    }

    private static IEnumerable<Row> Mix(BenchContext context, ResinSystem system, Mass mass, string purpose = "")
    {
        var ratio = system.Mix is { } mix ? $"mix {QuantityText.Written(mix)}" : "mix ratio on the data sheet";
        yield return new GroupRow($"{Words.Of(system)}{purpose}: {ratio}");
        if (mass > Mass.Zero && Weighing.Split(mass, system.Mix) is { } parts)
        {
            foreach (var row in Weighing.Pour(context, system, parts.Resin, parts.Hardener, remark: Remark))
            {
                yield return row;
            }
        }
        else
        {
            var amount = mass > Mass.Zero ? new BigCell(context.Text.Weight(mass).Main, context.Text.Weight(mass).Beside) : (Cell)"amount not known";
            yield return BenchContext.Step($"Weigh and mix. {CoatMix.Order(system)}", amount, new Blank("mixed", context.Text.ScaleUnit), Remark);
        }
    }
}
