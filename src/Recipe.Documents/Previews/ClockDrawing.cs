using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Previews;

/// <summary>
/// The clock of the bench from the first mix: what is done, one bar under the other, each pot with the minute at which it is dead, and the minute
/// at which full vacuum must be reached.
/// </summary>
internal static class ClockDrawing
{
    public const string Name = "work-clock";

    private const double Width = 180;
    private const double Left = 42;
    private const double Size = 11;
    private const double Row = 9;
    private const double Bar = 5;
    private const int MostSteps = 16;
    private const int MostPots = 24;

    /// <summary>A bar: what, from when until when in minutes, filled how, and the minute behind which it must not run.</summary>
    private sealed record Line(string What, double From, double To, Fill Fill, double? Dead);

    /// <summary>The drawing; null when nothing is planned against the clock.</summary>
    public static Drawing? Draw(BenchContext context)
    {
        // Without a bag there are the pots alone.
        var clock = context.Plan.Clock;
        var lines = Lines(context, clock);
        if (lines.IsEmpty)
        {
            return null;
        }

        var film = clock?.FilmLife?.Value.Minutes;
        var last = lines.Max(line => line.To);
        var end = Math.Max(last, Math.Max(film ?? 0, lines.Max(line => line.Dead ?? 0)));

        // A pot that lives much longer than the work takes only says so at the edge.
        var shown = Math.Max(1, Math.Min(end, 2.5 * Math.Max(last, film ?? 0)));
        var step = Chart.NiceMinutes(shown, MostSteps);
        var across = new Axis(0, step * Math.Ceiling((shown / step) - 1e-9), Left, Width - 8, step);
        const double top = 17;
        var floor = top + (lines.Length * Row) + 2;
        var canvas = new Canvas(Width, floor + 19);
        _ = canvas.Text(2, 5, context.Say("bar: at work"), Size) && (lines.All(line => line.Dead is null) || canvas.Text(42, 5, context.Say("thick end: the pot is dead"), Size))
            && (film is null || canvas.Text(112, 5, context.Say("dashed: full vacuum by then"), Size));
        foreach (var value in across.Lines())
        {
            canvas.Line(across.At(value), top, across.At(value), floor, new Pen(0.1));
        }

        canvas.Line(across.Start, floor, across.End, floor, Pen.Firm);
        for (var i = 0; i < lines.Length; i++)
        {
            Draw(canvas, across, lines[i], top + (i * Row) + 2);
        }

        if (film is { } by)
        {
            canvas.Line(across.At(by), top - 3, across.At(by), floor, new Pen(0.7, Dashed: true));
            _ = canvas.Text(across.At(by), top - 4, QuantityText.Minutes(clock!.FilmLife!.Value.Value, Rounding.Down), Size, Anchor.Middle, strong: true);
        }

        Chart.LabelAcross(canvas, across, floor + 6, minute => Numbers.AtMost(minute, 0), Size);
        _ = canvas.Text((across.Start + across.End) / 2, floor + 12, context.Say("minutes after the first mix"), Size, Anchor.Middle);
        return canvas.Draw(Name, clock is null ? context.Say("The clock, from the first mix") : context.Say("The clock, from the first mix to full vacuum"), Describe(context, lines, clock));
    }

    private static ImmutableArray<Line> Lines(BenchContext context, ClockPlan? clock)
    {
        var lines = ImmutableArray.CreateBuilder<Line>();
        var pots = context.IsWet ? context.Plan.Pots : [];
        foreach (var pot in pots.Take(MostPots))
        {
            lines.Add(new Line(context.Say($"pot {Numbers.Whole(pot.Number)}"), pot.MixedAt.Value.Minutes, pot.UsedUpAt.Value.Minutes, Fill.Mid, pot.DeadAt?.Value.Minutes));
        }

        if (clock is null)
        {
            return lines.ToImmutable();
        }

        var (wet, bag, draw) = (clock.WetOut.Value.Minutes, clock.Bagging.Value.Minutes, clock.DrawDown.Value.Minutes);
        if (lines.Count == 0 && wet > 0)
        {
            lines.Add(new Line(context.Say("lay up"), 0, wet, Fill.Mid, null));
        }

        if (bag > 0)
        {
            lines.Add(new Line(context.Say("lay and close the bag"), wet, wet + bag, Fill.Hatched, null));
        }

        if (draw > 0)
        {
            lines.Add(new Line(context.Say("draw vacuum"), wet + bag, wet + bag + draw, Fill.Dotted, null));
        }

        if (lines.Count == 0)
        {
            lines.Add(new Line(context.Say("all of it"), 0, clock.Need.Value.Minutes, Fill.Mid, null));
        }

        return lines.ToImmutable();
    }

    private static void Draw(Canvas canvas, Axis across, Line line, double y)
    {
        _ = canvas.Text(Left - 2, y + (Bar / 2) + (Lettering.HeightMm(Size) / 2), TextLines.Wrap(line.What, Left - 4, Size)[0], Size, Anchor.End);
        if (line.Dead is { } dead)
        {
            // What is left of its life is a line as far as the end that must not be passed.
            canvas.Line(across.At(line.From), y + (Bar / 2), across.At(dead), y + (Bar / 2), Pen.Thin);
        }

        canvas.Add(PathShape.Box(across.At(line.From), y, Math.Max(0.6, across.At(line.To) - across.At(line.From)), Bar, Pen.Firm, line.Fill));
        if (line.Dead is { } end && across.Holds(end))
        {
            canvas.Line(across.At(end), y - 1, across.At(end), y + Bar + 1, new Pen(1.4));
        }
    }

    private static string Describe(BenchContext context, ImmutableArray<Line> lines, ClockPlan? clock)
    {
        var said = lines.Select(line => line.Dead is { } dead
            ? context.Say($"{line.What} from minute {Whole(line.From)} to {Whole(line.To)}, dead at {Whole(dead)}")
            : context.Say($"{line.What} from minute {Whole(line.From)} to {Whole(line.To)}"));
        return clock?.FilmLife is { } film
            ? context.Say($"{string.Join("; ", said)}. Full vacuum by minute {Numbers.ToStep(film.Value.Minutes, 1, Rounding.Down)}.")
            : context.Say($"{string.Join("; ", said)}.");
    }

    private static string Whole(double minutes) => Numbers.ToStep(minutes, 1, Rounding.Nearest);
}
