using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Mixing;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Travellers;

/// <summary>
/// The join of two halves or parts, in the order of the bench (common practice): faces prepared, closed dry, weighed; mixed, filled, glue spread; closed
/// and clamped, wiped; taped; cured and only then unclamped. Halves that are wet have their tape on one lip before they are closed, and cure with the part.
/// </summary>
internal static class JoinStation
{
    private const int MostBoxes = 8;

    public static Station Build(BenchContext context, Join join)
    {
        var rows = new List<Row>();
        rows.AddRange(join.Preparation.Select(line => BenchContext.Tick(FinishStation.Sentence(line, context.Wording))));
        rows.Add(DryFit(context, join));
        rows.AddRange(Weights(context));
        rows.AddRange(BeforeClosing(context, join));
        rows.AddRange(Closing(context, join));
        if (IsWet(join))
        {
            if (join.Tape is not null)
            {
                rows.Add(BenchContext.Tick(context.Say("Roll the tape down on the other half, through the hand hole."), context.Say("no white, no bridge")));
            }
        }
        else
        {
            rows.AddRange(Taping(context, join));
            rows.AddRange(JoinCure.Rows(context));
        }

        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.AddRange(context.Caution(Danger.Skin, Danger.Peroxide, Danger.Dust));
        blocks.Add(context.SignedSteps(join.Manner is { } manner ? Words.Of(manner.Value, context.Wording) : context.Say("The recipe does not say how it is joined"), rows));
        blocks.Add(new IfBox(
        [
            IsWet(join)
                ? new(context.Say("The second half gels before closing"), context.Say("do not close; let it cure, join it cured; write a deviation"))
                : new(context.Say("The glue stiffens before it is closed"), context.Say("do not close; scrape it off, key again, mix anew; write a deviation")),
            new(context.Say("It will not close"), context.Say("open it; take filler off; look for a thread or a pin")),
        ]));
        return new Station(context.Say("Join"), blocks.ToImmutable());
    }

    private static bool IsWet(Join join) => join.Manner?.Value == JoinManner.WetInWet;

    // Wet halves cannot be tried any more.
    private static CellRow DryFit(BenchContext context, Join join) => BenchContext.Tick(
        IsWet(join) ? context.Say("Both halves were closed dry before the first ply?") : context.Say("Close both halves dry once. Look for gaps."),
        join.Align is { } align ? context.Say($"aligned by {align}") : null);

    private static IEnumerable<Row> Weights(BenchContext context)
    {
        var names = context.Part.Join is { Parts: { IsEmpty: false } parts } ? parts : context.Sides;
        return names.Select(name => BenchContext.Step(context.Say($"Weigh {name} before closing."), "", new Blank(context.Say($"mass of {name}"), context.Text.ScaleUnit)));
    }

    private static IEnumerable<Row> BeforeClosing(BenchContext context, Join join)
    {
        var text = context.Text;
        var rows = new List<Row>();
        if (join.Overlap is { } overlap)
        {
            rows.Add(BenchContext.Tick(context.Say("Overlap all along the seam."), Big(text.Written(overlap, value => text.Size(value)))));
        }

        if (join.Adhesive is { } glue)
        {
            rows.Add(BenchContext.Step(context.Say("Mix by the card of the adhesive pot."), Words.Of(glue, context.Wording), new Blank(context.Say("time mixed"))));
        }

        if (join is { Fillet: { } fillet, Seam: { } seam } && Liquids.FillerOf(context.Plan) is { } mass)
        {
            rows.Add(BenchContext.Step(
                context.Say($"Lay filler along {text.Written(seam, value => text.Size(value))} of seam."), new BigCell(text.AboutOnScale(mass).Main, QuantityText.Written(fillet)), new Blank(context.Say("filler used"), text.ScaleUnit)));
        }

        if (context.Plan.Join?.Adhesive is { } spread)
        {
            rows.Add(BenchContext.Step(
                context.Say("Spread the adhesive on one face, all along."), new BigCell(text.AboutOnScale(spread.Value).Main, context.Say("what stays in the bond line")), new Blank(context.Say("adhesive used"), text.ScaleUnit)));
        }

        if (join.BondLine is { } line)
        {
            rows.Add(BenchContext.Tick(context.Say("Keep the bond line open with spacers."), Big(text.Written(line, value => text.Thickness(value)))));
        }

        if (IsWet(join) && join.Tape is { } tape)
        {
            rows.Add(Tape(context, join, context.Say($"Lay the tape on one lip, half of it free: {Words.Of(tape)}.")));
        }

        return rows.Count == 0 ? rows : rows.Prepend(new GroupRow(context.Say("Seam")));
    }

    private static IEnumerable<Row> Closing(BenchContext context, Join join)
    {
        yield return join.Within is { } within
            ? BenchContext.Step(context.Say("Close and clamp. From first mix at most"), new BigCell(QuantityText.Minutes(within.Value, Rounding.Down)), new Blank(context.Say("time closed")))
            : BenchContext.Step(context.Say("Close and clamp."), context.Say("inside the pot life"), new Blank(context.Say("time closed")));
        if (join.Adhesive is not null || join.Fillet is not null)
        {
            yield return BenchContext.Tick(context.Say("Wipe off what squeezes out, inside too where you reach."), context.Say("none comes out? too little: open it"));
        }

        if (join.Vent is { } vent)
        {
            yield return BenchContext.Tick(context.Say("Vent hole open?"), context.Text.Written(vent, value => context.Text.Thickness(value)).ToString());
        }
    }

    // Tape lies over a closed seam; its resin is mixed only now, since the pot would stand while it is clamped.
    private static IEnumerable<Row> Taping(BenchContext context, Join join)
    {
        if (join.Tape is not { } tape)
        {
            yield break;
        }

        yield return new GroupRow(context.Say("Tape over the closed seam"));
        if (context.Plan.OwnMixes.Any(mix => mix.Use == OwnMixUse.SeamResin) || context.Plan.Join?.TapeResin is not null)
        {
            yield return BenchContext.Step(context.Say("Mix by the card of the seam pot."), "", new Blank(context.Say("time mixed")));
        }

        yield return Tape(context, join, context.Say($"Tape the closed seam, inside where you reach it: {Words.Of(tape)}."));
    }

    private static CellRow Tape(BenchContext context, Join join, string what)
    {
        var wide = join.TapeWidth is { } width ? context.Say($"{context.Text.Written(width, value => context.Text.Size(value))} wide") : null;
        return BenchContext.Tick(what, new BigCell(Counts.Layers(join.TapeLayers, context.Wording), wide), boxes: Math.Clamp(join.TapeLayers, 1, MostBoxes));
    }

    private static BigCell Big(Reading reading) => new(reading.Main, reading.Beside);
}
