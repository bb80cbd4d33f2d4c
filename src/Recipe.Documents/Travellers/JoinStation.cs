using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Travellers;

/// <summary>The join of two halves or parts.</summary>
internal static class JoinStation
{
    private const int MostBoxes = 8;
    private const string Remark = "what stays in the seam; mix more, by what cup and brush keep";

    public static Station Build(TravellerContext context, Join join)
    {
        var rows = new List<Row>();
        rows.AddRange(join.Preparation.Select(line => TravellerContext.Tick(FinishStation.Sentence(line))));
        rows.Add(TravellerContext.Tick("Close both halves dry once. Look for gaps.", join.Align is { } align ? $"aligned by {align}" : null));
        rows.AddRange(Weights(context));
        rows.AddRange(Liquids(context, join));
        rows.AddRange(Seam(context, join));
        rows.Add(Closing(join));
        if (join.Vent is { } vent)
        {
            rows.Add(TravellerContext.Tick("Vent hole open?", context.Text.Written(vent, value => context.Text.Thickness(value)).ToString()));
        }

        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.AddRange(context.Caution(Danger.Skin, Danger.Peroxide, Danger.Dust));
        blocks.Add(TravellerContext.Steps(join.Manner is { } manner ? Words.Of(manner.Value) : "The recipe does not say how it is joined", rows));
        blocks.Add(new IfBox(
        [
            new("The second half gels before closing", "do not close; let it cure, join it cured; write a deviation"),
            new("It will not close", "open it; take filler off; look for a thread or a pin"),
        ]));
        return new Station("Join", blocks.ToImmutable());
    }

    /// <summary>Filler for the whole seam; null when its length or the filler per length is not given.</summary>
    public static Mass? FillerOf(Plan plan) => plan.Join?.Fillet?.Value
        ?? (plan.Part.Join is { Fillet: { } fillet, Seam: { } seam } ? Mass.FromKilograms(fillet.Value.KilogramsPerMeter * seam.Value.Meters) : null);

    private static IEnumerable<Row> Weights(TravellerContext context)
    {
        var names = context.Part.Join is { Parts: { IsEmpty: false } parts } ? parts : context.Sides;
        return names.Select(name => TravellerContext.Step($"Weigh {name} before closing.", "", new Blank($"mass of {name}", context.Text.ScaleUnit)));
    }

    private static IEnumerable<Row> Liquids(TravellerContext context, Join join)
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

    private static IEnumerable<Row> Mix(TravellerContext context, ResinSystem system, Mass mass, string purpose = "")
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
            yield return TravellerContext.Step($"Weigh and mix. {CoatSteps.Order(system)}", amount, new Blank("mixed", context.Text.ScaleUnit), Remark);
        }
    }

    private static IEnumerable<Row> Seam(TravellerContext context, Join join)
    {
        var text = context.Text;
        var rows = new List<Row>();
        if (join.Overlap is { } overlap)
        {
            rows.Add(TravellerContext.Tick("Overlap all along the seam.", Big(text.Written(overlap, value => text.Size(value)))));
        }

        if (join.BondLine is { } line)
        {
            rows.Add(TravellerContext.Tick("Keep the bond line open with spacers.", Big(text.Written(line, value => text.Thickness(value)))));
        }

        if (join is { Fillet: { } fillet, Seam: { } seam } && FillerOf(context.Plan) is { } mass)
        {
            rows.Add(TravellerContext.Step(
                $"Lay filler along {text.Written(seam, value => text.Size(value))} of seam.", new BigCell(text.About(mass).Main, QuantityText.Written(fillet)), new Blank("filler used", text.ScaleUnit)));
        }

        if (join.Tape is { } tape)
        {
            var wide = join.TapeWidth is { } width ? $"{text.Written(width, value => text.Size(value))} wide" : null;
            rows.Add(TravellerContext.Tick(
                $"Tape the seam: {Words.Of(tape)}.", new BigCell(Words.Count(join.TapeLayers, "layer", "layers"), wide), boxes: Math.Clamp(join.TapeLayers, 1, MostBoxes)));
        }

        return rows.Count == 0 ? rows : rows.Prepend(new GroupRow("Seam"));
    }

    private static CellRow Closing(Join join) => join.Within is { } within
        ? TravellerContext.Step("Close and clamp. From first mix at most", new BigCell(QuantityText.Minutes(within.Value, Rounding.Down)), new Blank("time closed"))
        : TravellerContext.Step("Close and clamp.", "inside the pot life", new Blank("time closed"));

    private static BigCell Big(Reading reading) => new(reading.Main, reading.Beside);
}
