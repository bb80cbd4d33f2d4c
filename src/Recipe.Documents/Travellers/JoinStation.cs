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
        rows.AddRange(join.Preparation.Select(line => BenchContext.Tick(FinishStation.Sentence(line, context.Wording))));
        rows.Add(BenchContext.Tick(context.Say("Close both halves dry once. Look for gaps."), join.Align is { } align ? context.Say($"aligned by {align}") : null));
        rows.AddRange(Weights(context));
        if (Liquids.IsMixedForTheJoin(context.Plan))
        {
            rows.Add(BenchContext.Tick(context.Say("Mix what the seam takes by its mix card.")));
        }

        rows.AddRange(Seam(context, join));
        rows.Add(Closing(context, join));
        if (join.Vent is { } vent)
        {
            rows.Add(BenchContext.Tick(context.Say("Vent hole open?"), context.Text.Written(vent, value => context.Text.Thickness(value)).ToString()));
        }

        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.AddRange(context.Caution(Danger.Skin, Danger.Peroxide, Danger.Dust));
        blocks.Add(context.SignedSteps(join.Manner is { } manner ? Words.Of(manner.Value, context.Wording) : context.Say("The recipe does not say how it is joined"), rows));
        blocks.Add(new IfBox(
        [
            new(context.Say("The second half gels before closing"), context.Say("do not close; let it cure, join it cured; write a deviation")),
            new(context.Say("It will not close"), context.Say("open it; take filler off; look for a thread or a pin")),
        ]));
        return new Station(context.Say("Join"), blocks.ToImmutable());
    }

    private static IEnumerable<Row> Weights(BenchContext context)
    {
        var names = context.Part.Join is { Parts: { IsEmpty: false } parts } ? parts : context.Sides;
        return names.Select(name => BenchContext.Step(context.Say($"Weigh {name} before closing."), "", new Blank(context.Say($"mass of {name}"), context.Text.ScaleUnit)));
    }

    private static IEnumerable<Row> Seam(BenchContext context, Join join)
    {
        var text = context.Text;
        var rows = new List<Row>();
        if (join.Overlap is { } overlap)
        {
            rows.Add(BenchContext.Tick(context.Say("Overlap all along the seam."), Big(text.Written(overlap, value => text.Size(value)))));
        }

        if (join.BondLine is { } line)
        {
            rows.Add(BenchContext.Tick(context.Say("Keep the bond line open with spacers."), Big(text.Written(line, value => text.Thickness(value)))));
        }

        if (join is { Fillet: { } fillet, Seam: { } seam } && Liquids.FillerOf(context.Plan) is { } mass)
        {
            rows.Add(BenchContext.Step(
                context.Say($"Lay filler along {text.Written(seam, value => text.Size(value))} of seam."), new BigCell(text.About(mass).Main, QuantityText.Written(fillet)), new Blank(context.Say("filler used"), text.ScaleUnit)));
        }

        if (join.Tape is { } tape)
        {
            var wide = join.TapeWidth is { } width ? context.Say($"{text.Written(width, value => text.Size(value))} wide") : null;
            rows.Add(BenchContext.Tick(
                context.Say($"Tape the seam: {Words.Of(tape)}."), new BigCell(Counts.Layers(join.TapeLayers, context.Wording), wide), boxes: Math.Clamp(join.TapeLayers, 1, MostBoxes)));
        }

        return rows.Count == 0 ? rows : rows.Prepend(new GroupRow(context.Say("Seam")));
    }

    private static CellRow Closing(BenchContext context, Join join) => join.Within is { } within
        ? BenchContext.Step(context.Say("Close and clamp. From first mix at most"), new BigCell(QuantityText.Minutes(within.Value, Rounding.Down)), new Blank(context.Say("time closed")))
        : BenchContext.Step(context.Say("Close and clamp."), context.Say("inside the pot life"), new Blank(context.Say("time closed")));

    private static BigCell Big(Reading reading) => new(reading.Main, reading.Beside);
}
