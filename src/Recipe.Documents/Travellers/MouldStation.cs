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

    public static Station Build(BenchContext context)
    {
        var mould = context.Part.Mould;
        var rows = new List<Row> { BenchContext.Tick("Clean the mould and the tape land. Look for chips.") };
        foreach (var line in mould?.Release ?? [])
        {
            rows.AddRange(Coats(line));
        }

        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(context.SignedSteps(mould is null ? "No mould is named in the recipe" : $"Release coats on {mould.Label}", rows));
        if (mould is not null && mould.Release.IsEmpty)
        {
            var itself = mould.MadeOf?.SelfReleasing == true;
            blocks.Add(new Paragraph(itself ? "No release coats: the mould releases by itself." : "The recipe names no release. Write what was used into the deviations box."));
        }

        blocks.Add(new HoldPoint(
            "H1",
            "mould ready",
            [
                "Every release coat done, and dry as long as written",
                Limits(context),
                .. context.Sides.IsEmpty ? ImmutableArray<Phrase>.Empty : [$"Both halves: {string.Join(", ", context.Sides)}"],
            ],
            [new Blank("Pulls since release")]));
        blocks.AddRange(CoatSteps.Of(context));
        return new Station("Mould", blocks.ToImmutable());
    }

    private static Phrase Limits(BenchContext context) => context.Part.Mould?.HeatLimit is { } limit
        ? $"Tape land clean. Mould stands {context.Text.Written(limit, value => context.Text.Temperature(value))} at most"
        : "Tape land clean";

    private static IEnumerable<Row> Coats(ReleaseCoat line)
    {
        var count = line.Coats?.Value ?? 1;
        var wait = count == 1 ? null : line.Wait is { } between ? $"{QuantityText.Span(between.Value)} between coats" : "wait between coats as the data sheet says";
        yield return BenchContext.Tick(
            $"{Words.Of(line.Agent)}. {How(line.Agent)}", new BigCell(Words.Count(count, "coat", "coats"), wait), boxes: count > MostBoxes ? 1 : Math.Max(count, 1));
        yield return BenchContext.Step(
            count == 1 ? "Write when it was done. Let it dry." : "Write when the last coat was done. Let it dry.",
            line.Dry is { } dry ? new BigCell(QuantityText.Span(dry.Value)) : (Cell)"as the data sheet says",
            new Blank("time of the last coat"));
    }

    private static string How(ReleaseAgent agent) => agent.Kind switch
    {
        ReleaseKind.Wax => "Wipe on thin, let it haze, buff.",
        ReleaseKind.LiquidFilm => "Lay an even, closed film.",
        ReleaseKind.SemiPermanent => "Wipe on a wet film, leave it.",
        ReleaseKind.Sheet => "Lay it without a wrinkle.",
        _ => "Apply as the data sheet says.",
    };
}
