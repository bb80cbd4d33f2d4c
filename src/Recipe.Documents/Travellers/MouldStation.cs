using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>The mould and its release coats, to H1; then the coats on it.</summary>
internal static class MouldStation
{
    /// <summary>More coats than this share one box.</summary>
    private const int MostBoxes = 9;

    public static Station Build(BenchContext context) => context.StaysOn ? OnWhatStays(context) : OnAMould(context);

    // Wax here is a part that comes apart. What makes it hold is a clean, matt surface, and little time between that and the resin.
    private static Station OnWhatStays(BenchContext context) => new(
        context.Say("What it is laid on"),
        [
            context.SignedSteps(
                context.Say($"{context.Part.Mould!.Label} stays in the part: no wax, no release agent"),
                [
                    BenchContext.Tick(context.Say("Pull off its peel ply just before, or sand it matt all over, wet, with a mask.")),
                    BenchContext.Tick(context.Say("Wipe it until the wipe stays white. Let it dry. Touch it no more with bare hands.")),
                ]),
            new HoldPoint(
                "H1",
                context.Say("ready to lay on"),
                [context.Say("Matt, dry and free of dust all over; no wax near it"), .. Limits(context)],
                [new Blank(context.Say("Peeled or sanded at"))]),
            .. CoatSteps.Of(context),
        ]);

    private static Station OnAMould(BenchContext context)
    {
        var mould = context.Part.Mould;
        var rows = new List<Row> { BenchContext.Tick(Clean(context)) };
        foreach (var line in mould?.Release ?? [])
        {
            rows.AddRange(Coats(context, line));
        }

        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(context.SignedSteps(mould is null ? context.Say("No mould is named in the recipe") : context.Say($"Release coats on {mould.Label}"), rows));
        if (mould is not null && mould.Release.IsEmpty)
        {
            var itself = mould.MadeOf?.SelfReleasing == true;
            blocks.Add(new Paragraph(itself ? NoCoats(context) : context.Say("The recipe names no release. Write what was used into the deviations box.")));
        }

        blocks.Add(new HoldPoint(
            "H1",
            context.IsWrapped ? context.Say("mandrel ready") : context.Say("mould ready"),
            [
                context.Say("Every release coat done, and dry as long as written"),
                .. Limits(context),
                .. context.Sides.IsEmpty ? ImmutableArray<Phrase>.Empty : [context.Say($"Both halves: {string.Join(", ", context.Sides)}")],
            ],
            [new Blank(context.Say("Pulls since release"))]));
        blocks.AddRange(CoatSteps.Of(context));
        return new Station(context.IsWrapped ? context.Say("Mandrel") : context.Say("Mould"), blocks.ToImmutable());
    }

    // Round a mandrel the tape of a bag that is no envelope goes on its bare ends.
    private static string Clean(BenchContext context) => (context.IsWrapped, context.Paper.HasTapeLand) switch
    {
        (false, true) => context.Say("Clean the mould and the tape land. Look for chips."),
        (false, false) => context.Say("Clean the mould. Look for chips."),
        (true, true) => context.Say("Clean the mandrel and its ends, where the tape goes. Look for dents and scratches."),
        (true, false) => context.Say("Clean the mandrel. Look for dents and scratches."),
    };

    private static string NoCoats(BenchContext context) =>
        context.IsWrapped ? context.Say("No release coats: the mandrel releases by itself.") : context.Say("No release coats: the mould releases by itself.");

    // Without a bag no tape is laid, and of an envelope none on the mould.
    private static IEnumerable<Phrase> Limits(BenchContext context)
    {
        var hasTape = context.Paper.HasTapeLand;
        if (context.Part.Mould?.HeatLimit is { } limit)
        {
            var most = context.Text.Written(limit, value => context.Text.Temperature(value));
            yield return context.StaysOn ? context.Say($"It stands {most} at most") : (context.IsWrapped, hasTape) switch
            {
                (false, true) => context.Say($"Tape land clean. Mould stands {most} at most"),
                (false, false) => context.Say($"Mould stands {most} at most"),
                (true, true) => context.Say($"Ends clean for the tape. Mandrel stands {most} at most"),
                (true, false) => context.Say($"Mandrel stands {most} at most"),
            };
        }
        else if (hasTape)
        {
            yield return context.IsWrapped ? context.Say("Ends clean for the tape") : context.Say("Tape land clean");
        }
    }

    private static IEnumerable<Row> Coats(BenchContext context, ReleaseCoat line)
    {
        var count = line.Coats?.Value ?? 1;
        var wait = count == 1 ? null : line.Wait is { } between ? context.Say($"{QuantityText.Span(between.Value)} between coats") : context.Say("wait between coats as the data sheet says");
        yield return BenchContext.Tick(
            $"{Words.Of(line.Agent)}. {How(context, line.Agent)}", new BigCell(Counts.Coats(count, context.Wording), wait), boxes: count > MostBoxes ? 1 : Math.Max(count, 1));
        yield return BenchContext.Step(
            count == 1 ? context.Say("Write when it was done. Let it dry.") : context.Say("Write when the last coat was done. Let it dry."),
            line.Dry is { } dry ? new BigCell(QuantityText.Span(dry.Value)) : (Cell)context.Say("as the data sheet says"),
            new Blank(context.Say("time of the last coat")));
    }

    private static string How(BenchContext context, ReleaseAgent agent) => agent.Kind switch
    {
        ReleaseKind.Wax => context.Say("Wipe on thin, let it haze, buff."),
        ReleaseKind.LiquidFilm => context.Say("Lay an even, closed film."),
        ReleaseKind.SemiPermanent => context.Say("Wipe on a wet film, leave it."),
        ReleaseKind.Sheet => context.Say("Lay it without a wrinkle."),
        _ => context.Say("Apply as the data sheet says."),
    };
}
