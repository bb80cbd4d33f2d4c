using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Mixing;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>The join of two halves or parts.</summary>
internal static class JoinStation
{
    private const int MostBoxes = 8;

    public static Station Build(BenchContext context, Join join)
    {
        var rows = new List<Row>();
        rows.AddRange(join.Preparation.Select(line => BenchContext.Tick(FinishStation.Sentence(line))));
        rows.Add(BenchContext.Tick("Close both halves dry once. Look for gaps.", join.Align is { } align ? $"aligned by {align}" : null));
        rows.AddRange(Weights(context));
        if (Liquids.IsMixedForTheJoin(context.Plan))
        {
            rows.Add(BenchContext.Tick("Mix what the seam takes by its mix card."));
        }

        rows.AddRange(Seam(context, join));
        rows.Add(Closing(join));
        if (join.Vent is { } vent)
        {
            rows.Add(BenchContext.Tick("Vent hole open?", context.Text.Written(vent, value => context.Text.Thickness(value)).ToString()));
        }

        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.AddRange(context.Caution(Danger.Skin, Danger.Peroxide, Danger.Dust));
        blocks.Add(context.SignedSteps(join.Manner is { } manner ? Words.Of(manner.Value) : "The recipe does not say how it is joined", rows));
        blocks.Add(new IfBox(
        [
            new("The second half gels before closing", "do not close; let it cure, join it cured; write a deviation"),
            new("It will not close", "open it; take filler off; look for a thread or a pin"),
        ]));
        return new Station("Join", blocks.ToImmutable());
    }

    private static IEnumerable<Row> Weights(BenchContext context)
    {
        var names = context.Part.Join is { Parts: { IsEmpty: false } parts } ? parts : context.Sides;
        return names.Select(name => BenchContext.Step($"Weigh {name} before closing.", "", new Blank($"mass of {name}", context.Text.ScaleUnit)));
    }

    private static IEnumerable<Row> Seam(BenchContext context, Join join)
    {
        var text = context.Text;
        var rows = new List<Row>();
        if (join.Overlap is { } overlap)
        {
            rows.Add(BenchContext.Tick("Overlap all along the seam.", Big(text.Written(overlap, value => text.Size(value)))));
        }

        if (join.BondLine is { } line)
        {
            rows.Add(BenchContext.Tick("Keep the bond line open with spacers.", Big(text.Written(line, value => text.Thickness(value)))));
        }

        if (join is { Fillet: { } fillet, Seam: { } seam } && Liquids.FillerOf(context.Plan) is { } mass)
        {
            rows.Add(BenchContext.Step(
                $"Lay filler along {text.Written(seam, value => text.Size(value))} of seam.", new BigCell(text.About(mass).Main, QuantityText.Written(fillet)), new Blank("filler used", text.ScaleUnit)));
        }

        if (join.Tape is { } tape)
        {
            var wide = join.TapeWidth is { } width ? $"{text.Written(width, value => text.Size(value))} wide" : null;
            rows.Add(BenchContext.Tick(
                $"Tape the seam: {Words.Of(tape)}.", new BigCell(Words.Count(join.TapeLayers, "layer", "layers"), wide), boxes: Math.Clamp(join.TapeLayers, 1, MostBoxes)));
        }

        return rows.Count == 0 ? rows : rows.Prepend(new GroupRow("Seam"));
    }

    private static CellRow Closing(Join join) => join.Within is { } within
        ? BenchContext.Step("Close and clamp. From first mix at most", new BigCell(QuantityText.Minutes(within.Value, Rounding.Down)), new Blank("time closed"))
        : BenchContext.Step("Close and clamp.", "inside the pot life", new Blank("time closed"));

    private static BigCell Big(Reading reading) => new(reading.Main, reading.Beside);
}
