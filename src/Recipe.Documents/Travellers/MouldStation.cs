using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>The mould and its release coats, to H1; then the coats on it.</summary>
internal static class MouldStation
{
    /// <summary>More coats than this stand on one line.</summary>
    private const int CoatsOnLinesOfTheirOwn = 6;

    public static Station Build(TravellerContext context)
    {
        var mould = context.Part.Mould;
        var rows = new List<Row> { context.Tick("Clean the mould and the tape land. Look for chips.") };
        foreach (var line in mould?.Release ?? [])
        {
            rows.AddRange(Coats(context, line));
        }

        var blocks = ImmutableArray.CreateBuilder<Block>();
        blocks.Add(TravellerContext.Steps(mould is null ? "No mould is named in the recipe" : $"Release coats on {mould.Label}", rows));
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

    private static Phrase Limits(TravellerContext context) => context.Part.Mould?.HeatLimit is { } limit
        ? $"Tape land clean. Mould stands {context.Text.Written(limit, value => context.Text.Temperature(value))} at most"
        : "Tape land clean";

    private static IEnumerable<Row> Coats(TravellerContext context, ReleaseCoat line)
    {
        var count = line.Coats?.Value ?? 1;
        var wait = line.Wait is { } between ? $"{QuantityText.Span(between.Value)} between coats" : "wait as the data sheet says";
        yield return new GroupRow($"{line.Agent.Label}: {Words.Count(count, "coat", "coats")}, {wait}");
        if (count > CoatsOnLinesOfTheirOwn)
        {
            yield return context.Tick(How(line.Agent), wait, boxes: TickCell.Of(count).Boxes);
        }
        else
        {
            for (var coat = 1; coat <= count; coat++)
            {
                var target = coat == count
                    ? line.Dry is { } dry ? new BigCell(QuantityText.Span(dry.Value), "dry before lay-up") : new TextCell("dry before lay-up")
                    : line.Wait is { } time ? new BigCell(QuantityText.Span(time.Value)) : (Cell)wait;
                yield return context.Tick($"Coat {Numbers.Whole(coat)}. {How(line.Agent)}", target);
            }
        }
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
