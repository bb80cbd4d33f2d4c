using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Documents.Travellers;

/// <summary>The join of two halves or parts.</summary>
internal static class JoinStation
{
    public static Station Build(TravellerContext context, Join join)
    {
        var rows = new List<Row>();
        foreach (var line in join.Preparation)
        {
            rows.Add(context.Tick($"{FinishStation.Sentence(line)}"));
        }

        rows.Add(context.Tick("Close both halves dry once. Look for gaps.", join.Align is { } align ? $"aligned by {align}" : null));
        rows.AddRange(Weights(context));
        rows.AddRange(Seam(context, join));
        if (join.Within is { } within)
        {
            rows.Add(context.Step("Closed after the first mix within", new BigCell(QuantityText.Minutes(within.Value, Rounding.Down), QuantityText.Written(within)), new Blank("time closed")));
        }
        else
        {
            rows.Add(context.Step("Close and clamp.", "inside the pot life", new Blank("time closed")));
        }

        if (join.Vent is { } vent)
        {
            rows.Add(context.Tick("Vent hole open.", context.Text.Written(vent, value => context.Text.Thickness(value)).ToString()));
        }

        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.AddRange(context.Caution(Danger.Skin, Danger.Peroxide, Danger.Dust));
        blocks.Add(TravellerContext.Steps(join.Manner is { } manner ? Words.Of(manner.Value) : "The recipe does not say how it is joined", rows));
        blocks.Add(new IfBox([new("The second half gels before closing", "do not close; let it cure; join it cured; write a deviation"), new("It will not close", "open, take off filler, look for a thread or a pin")]));
        return new Station("Join", blocks.ToImmutable());
    }

    /// <summary>Filler for the whole seam; null when its length or the filler per length is not given.</summary>
    public static Mass? FillerOf(Join join) => join is { Fillet: { } fillet, Seam: { } seam }
        ? Mass.FromKilograms(fillet.Value.KilogramsPerMeter * seam.Value.Meters)
        : null;

    private static IEnumerable<Row> Weights(TravellerContext context)
    {
        var names = context.Part.Join is { Parts: { IsEmpty: false } parts } ? parts : context.Sides;
        foreach (var name in names)
        {
            yield return context.Step($"Weigh {name} before closing.", "", new Blank($"mass of {name}", "g"));
        }
    }

    private static IEnumerable<Row> Seam(TravellerContext context, Join join)
    {
        var text = context.Text;
        if (join.Overlap is { } overlap)
        {
            yield return context.Tick("Overlap all along the seam.", Big(text.Written(overlap, value => text.Size(value))));
        }

        if (join.Adhesive is { } adhesive)
        {
            var ratio = adhesive.Mix is { } mix ? $"mix {QuantityText.Written(mix)}" : "mix ratio on the data sheet";
            yield return context.Tick($"Mix {adhesive.Label}. {CoatSteps.Order(adhesive)}", ratio);
        }

        if (join.BondLine is { } line)
        {
            yield return context.Tick("Bond line, with something that keeps it.", text.Written(line, value => text.Thickness(value)).ToString());
        }

        if (join is { Fillet: { } fillet, Seam: { } seam } && FillerOf(join) is { } mass)
        {
            yield return context.Step(
                $"Filler along {text.Written(seam, value => text.Size(value))} of seam.", new BigCell(text.About(mass).Main, QuantityText.Written(fillet)), new Blank("filler used", "g"));
        }

        if (join.Tape is { } tape)
        {
            var width = join.TapeWidth is { } wide ? $"{text.Written(wide, value => text.Size(value))} wide, " : "";
            yield return context.Tick($"Tape the seam with {tape.Label}.", $"{width}{Words.Count(join.TapeLayers, "layer", "layers")}", boxes: TickCell.Of(Math.Clamp(join.TapeLayers, 1, 8)).Boxes);
        }
    }

    private static BigCell Big(Reading reading) => new(reading.Main, reading.Beside);
}
