using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Cures;

/// <summary>Heat and vacuum against the clock, on squares of 5 mm, so that the real curve can be drawn in by hand.</summary>
internal static class CureDrawing
{
    public const string Name = "cure-chart";

    private const double Left = 17;
    private const double Width = 180;
    // Letter is 18 mm shorter than A4; the list of moments must still fit under the chart.
    private const int MostUpOnA4 = 19;
    private const int MostUpOnLetter = 15;
    private const int MostAcross = 30;
    private const double VacuumGap = 6.5;
    private const double VacuumHeight = 2 * Chart.Square;
    private const double Size = 11;
    private const double RingStep = 7.5;
    private const double KeyHeight = 14;

    /// <summary>Points of the plan: time from the start in minutes, temperature in the unit of the paper.</summary>
    public static ImmutableArray<(double X, double Y)> Profile(BenchContext context, CurePlan cure) =>
    [
        .. cure.Steps.SelectMany(step => new[] { (step.Start.Value.Minutes, In(context, step.From)), (step.End.Value.Minutes, In(context, step.To)) }),
    ];

    /// <summary>A temperature in the unit that the paper shows.</summary>
    public static double In(BenchContext context, Temperature value) => context.Text.TemperatureUnit == "°F" ? value.DegreesFahrenheit : value.DegreesCelsius;

    public static Drawing Draw(BenchContext context, CurePlan cure, ImmutableArray<CureMark> marks)
    {
        var profile = Profile(context, cure);
        var limit = Limit(context, cure);
        var across = Chart.Across(cure.Total.Value.Minutes, Left, MostAcross);
        var rings = Rings(marks, across);
        var top = KeyHeight + ((rings.IsEmpty ? 0 : rings.Max(ring => ring.Row) + 1) * RingStep) + 2;
        var up = Heat(context, cure, profile, limit, top);
        var bottom = up.Start;
        var hasVacuum = CureMoments.VacuumEnds(context, cure) is not null;
        var clock = context.Clock.HasStart && context.Clock.Need is not null;
        var foot = bottom + (hasVacuum ? VacuumGap + VacuumHeight : 0);
        var canvas = new Canvas(Width, foot + 6 + (clock ? 5 : 0) + 6);

        Key(canvas, context, cure, limit);
        Chart.Grid(canvas, across, up);
        foreach (var (mark, row, x) in rings)
        {
            var y = KeyHeight + (row * RingStep) + (RingStep / 2);
            canvas.Line(across.At(mark.At.Minutes), y, across.At(mark.At.Minutes), foot, new Pen(0.35, Dashed: true));
            _ = canvas.Ring(x, y, Numbers.Whole(marks.IndexOf(mark) + 1), Size);
        }

        Chart.LabelUp(canvas, up, Left - 1.5, Size);
        _ = canvas.Text(4, (up.Start + up.End) / 2, context.Text.TemperatureUnit, Size + 1, Anchor.Middle, strong: true, upright: true);
        Limit(canvas, across, up, limit);
        Chart.Line(canvas, across, up, profile, Pen.Bold);
        if (cure.Progress is { } progress)
        {
            Chart.Line(canvas, across, up, [.. progress.Curve.Where(moment => moment.Transition is not null).Select(moment => (moment.At.Minutes, In(context, moment.Transition!.Value)))], new Pen(0.5, Dashed: true));
        }

        if (hasVacuum)
        {
            Vacuum(canvas, context, cure, across, bottom + VacuumGap);
        }

        Times(canvas, context, across, foot + 4.5, clock);
        return canvas.Draw(Name, context.Say("Planned heat, to draw the real one into"), Describe(context, cure));
    }

    // Two marks side by side would cover one another: the second goes a row down.
    private static ImmutableArray<(CureMark Mark, int Row, double X)> Rings(ImmutableArray<CureMark> marks, Axis across)
    {
        var ends = new List<double>();
        var placed = ImmutableArray.CreateBuilder<(CureMark, int, double)>(marks.Length);
        foreach (var mark in marks)
        {
            var x = across.At(mark.At.Minutes);
            var row = ends.FindIndex(end => end + RingStep <= x);
            if (row < 0)
            {
                row = ends.Count;
                ends.Add(0);
            }

            ends[row] = x;
            placed.Add((mark, row, x));
        }

        return placed.ToImmutable();
    }

    // The limit is drawn where it is near enough to matter; far above, the panel says it.
    private static (double Value, string Short, string What)? Limit(BenchContext context, CurePlan cure)
    {
        var peak = In(context, cure.Peak.Value);
        return cure.Limits.FirstOrDefault(item => item.Limit is not null) is { Limit: { } most } weakest && In(context, most.Value) is var value && value < peak + Math.Max(40, peak)
            ? (value, context.Text.Temperature(most.Value).Main, context.Say($"no hotter than {context.Text.Temperature(most.Value).Main}, for the {weakest.Item}"))
            : null;
    }

    private static Axis Heat(BenchContext context, CurePlan cure, ImmutableArray<(double X, double Y)> profile, (double Value, string Short, string What)? limit, double top)
    {
        var values = profile.Select(point => point.Y).ToList();
        values.AddRange(cure.Progress?.Curve.Select(moment => moment.Transition).OfType<Temperature>().Select(value => In(context, value)).Where(value => value >= 0) ?? []);
        if (limit is { } most)
        {
            values.Add(most.Value);
        }

        // A square above the hottest, for a curve that overshoots.
        var axis = Chart.Up(Math.Min(values.Min(), In(context, Temperature.FromDegreesCelsius(10))), values.Max() * 1.08, 0, context.Paper.Paper == PaperSize.Letter ? MostUpOnLetter : MostUpOnA4);
        return axis with { Start = top + (axis.Start - axis.End), End = top };
    }

    private static void Limit(Canvas canvas, Axis across, Axis up, (double Value, string Short, string What)? limit)
    {
        if (limit is not { } most)
        {
            return;
        }

        var y = up.At(most.Value);
        canvas.Line(across.Start, y, across.End + 1, y, new Pen(0.7));
        _ = canvas.Text(across.End + 1.5, y + (Lettering.HeightMm(Size - 1) / 2), most.Short, Size - 1, strong: true);
    }

    private static void Key(Canvas canvas, BenchContext context, CurePlan cure, (double Value, string Short, string What)? limit)
    {
        var (x, y) = (Left, 4.0);
        Entry(Pen.Bold, context.Say("heat, planned"));
        if (cure.Progress is { Transition: not null, Curve.IsEmpty: false })
        {
            Entry(new Pen(0.5, Dashed: true), context.Say("softens at, by the model"));
        }

        if (limit is { } most)
        {
            (x, y) = (Left, 10);
            Entry(new Pen(0.7), TextLines.Wrap(most.What, Width - Left - 12, Size)[0]);
        }

        void Entry(Pen pen, string what)
        {
            canvas.Line(x, y, x + 10, y, pen);
            _ = canvas.Text(x + 11.5, y + 1.2, what, Size);
            x += 11.5 + Lettering.WidthMm(what, Size) + 5;
        }
    }

    private static void Vacuum(Canvas canvas, BenchContext context, CurePlan cure, Axis across, double top)
    {
        var end = CureMoments.VacuumEnds(context, cure)!.Value.Minutes;
        var strip = new Axis(0, 2, top + VacuumHeight, top, 1);
        Chart.Grid(canvas, across, strip);
        var words = context.Plan.Vacuum is { } levels ? context.Say($"vacuum on, {context.Text.Pressure(levels.BelowAmbient.Value).Main} below ambient") : context.Say("vacuum on");
        _ = canvas.Text(across.Start, top - 1.4, words, Size);
        Chart.Line(canvas, across, strip, [(0, 1.7), (end, 1.7), (end, 0), (across.High, 0)], Pen.Bold);
        _ = canvas.Text(Left - 1.5, top + VacuumHeight, context.Say("off"), Size, Anchor.End);
        _ = canvas.Text(Left - 1.5, top + 3.6, context.Say("vac."), Size, Anchor.End);
    }

    private static void Times(Canvas canvas, BenchContext context, Axis across, double y, bool clock)
    {
        var hours = across.High >= 180;
        Chart.LabelAcross(canvas, across, y, minutes => Numbers.AtMost(hours ? minutes / 60 : minutes, 2), Size);
        _ = canvas.Text(Left - 3, y, hours ? "h" : "min", Size, Anchor.End);
        if (clock)
        {
            Chart.LabelAcross(canvas, across, y + 5, minutes => TimeOfDay(context, minutes), Size - 1);
            y += 5;
        }

        var square = Square(across.Step);
        _ = canvas.Text(
            across.Start,
            y + 5,
            clock ? context.Say($"from full vacuum; by the plan below; one square is {square}") : context.Say($"from the start of the cure; one square is {square}"),
            Size - 1);
    }

    private static string Square(double minutes) => QuantityText.Span(Duration.FromMinutes(minutes));

    private static string TimeOfDay(BenchContext context, double minutes)
    {
        var time = context.Clock.TimeOfDay(context.Clock.Need!.Value + Duration.FromMinutes(minutes)) ?? "";
        return time.IndexOf(' ', StringComparison.Ordinal) is var end && end > 0 ? time[..end] : time;
    }

    private static string Describe(BenchContext context, CurePlan cure)
    {
        var (time, most) = (QuantityText.Span(cure.Total.Value), context.Text.Temperature(cure.Peak.Value).Main);
        return CureMoments.VacuumEnds(context, cure) is null
            ? context.Say($"Temperature against time over {time}, up to {most}, with numbered moments. The list, the steps and the panel say the same in words.")
            : context.Say($"Temperature against time over {time}, up to {most}, with numbered moments and the vacuum underneath. The list, the steps and the panel say the same in words.");
    }
}
