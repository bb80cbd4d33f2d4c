using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Cures;

/// <summary>The cure down the page as far as the part is in the mould; H6 is on the traveller.</summary>
internal static class CureStation
{
    /// <summary>The chart, the steps, the readings; for a part without a cure one page to write down what was done.</summary>
    public static IEnumerable<Station> Stations(BenchContext context)
    {
        if (context.Plan.Cure is not { Steps.IsEmpty: false } cure)
        {
            yield return new Station(
                context.Say("Cure"),
                [
                    .. context.Caution(Danger.Heat),
                    new Paragraph(context.Say("The recipe has no cure. Cure as the data sheet says; write what was done.")),
                    context.TimedSteps("", [BenchContext.Step(context.Say("Cure."), DemouldTime(context), new Blank(context.Say("temperature"), context.Text.TemperatureUnit))]),
                    .. context.Foot("H6"),
                ]);
            yield break;
        }

        if (cure.Total.Value > Duration.Zero)
        {
            var marks = CureMoments.Of(context, cure);
            yield return new Station(context.Say("Cure chart"), [.. context.Caution(Danger.Heat), CureDrawing.Draw(context, cure, marks), Marks(context, marks)]);
        }

        yield return new Station(
            context.Say("Cure steps"),
            [
                Panel(context, cure),
                .. Progress(context, cure),
                context.TimedSteps(Origin(context), cure.Steps.Select(step => Step(context, step))),
                If(context),
                .. context.Foot("H6", cure.Peak.RestsOn, cure.Total.RestsOn, cure.Progress?.Degree.RestsOn ?? []),
            ]);
        yield return CureReadings.Build(context, cure);
    }

    private static Table Marks(BenchContext context, ImmutableArray<CureMark> marks) => new(
        context.Say("The numbers on the chart. A hold counts from the coldest reading"),
        [new(context.Say("No."), Align.Centre, 12), new(context.Say("When"), WidthMm: 42), new(context.Say("What"), NamesTheRow: true)],
        [.. marks.Select((mark, i) => new CellRow([new TextCell(Phrase.Strong(Numbers.Whole(i + 1))), At(context, mark.At), Words.Sentence(mark.What)]))]);

    private static IfBox If(BenchContext context) => new(
    [
        .. context.IsBagged ? [new(context.Say("The vacuum is lost before gel"), context.Say("seal it and draw again; go on only at the level"))] : ImmutableArray<IfThen>.Empty,
        new(context.Say("It gets hotter than the limit"), context.IsBagged ? context.Say("heat off, door open, vacuum on; write a deviation") : context.Say("heat off, door open; write a deviation")),
        new(context.Say("The heat stops"), context.Say("write when; count the hold again from the coldest reading")),
    ]);

    /// <summary>The cure from the demoulding on: free-standing.</summary>
    public static IEnumerable<CellRow> AfterDemould(BenchContext context) =>
        context.Plan.Cure is { } cure ? cure.Steps.Skip(Demould(cure)).Select(step => Step(context, step)) : [];

    /// <summary>The cure at a glance: how long, how hot, what stands least.</summary>
    public static IEnumerable<Block> Outline(BenchContext context) =>
        context.Plan.Cure is { Steps.IsEmpty: false } cure ? [Panel(context, cure), .. Progress(context, cure)] : [];

    /// <summary>The cure up to the demoulding, or all of it where the part stays in its mould: how long, and how hot.</summary>
    public static (Duration Time, Temperature Hottest) InMould(CurePlan cure)
    {
        var steps = cure.Steps.Take(Demould(cure)).ToList();
        return steps.Count == 0 || steps.Count == cure.Steps.Length
            ? (cure.Total.Value, cure.Peak.Value)
            : (steps[^1].End.Value, steps.Select(step => step.From > step.To ? step.From : step.To).Max());
    }

    // Index of the first demoulding; the number of steps when there is none.
    private static int Demould(CurePlan cure) => cure.Steps.TakeWhile(step => step.Step.Action != CureAction.Demould).Count();

    private static KeyNumbers Panel(BenchContext context, CurePlan cure)
    {
        var items = ImmutableArray.CreateBuilder<KeyNumber>();
        var peak = context.Text.Temperature(cure.Peak.Value);
        items.Add(new("Hottest", peak.Main, peak.Beside));
        foreach (var (label, until, limit) in Weakest(cure))
        {
            var most = context.Text.Temperature(limit.Limit!.Value.Value);
            var over = limit.Hottest > limit.Limit.Value.Value;
            items.Add(new(label, most.Main, over ? $"{limit.Item}: TOO WEAK" : $"{limit.Item}; set the cut-out to this or less{until}", Alarm: over));
        }

        if (cure.Inside is { } inside)
        {
            var hot = context.Text.Temperature(Whole(context, inside.Value));
            items.Add(new("In the middle of the laminate up to", hot.Main, hot.Beside));
        }

        return new KeyNumbers($"Cure, {QuantityText.Span(cure.Total.Value)} in all", items.ToImmutable());
    }

    // What is in the heat changes: a hose that went with the bag sets no cut-out for a post-cure that is hotter than the hose stands.
    private static IEnumerable<(string Label, string Until, HeatLimit Limit)> Weakest(CurePlan cure)
    {
        if (cure.Limits.FirstOrDefault(limit => limit.Limit is not null) is not { } weakest)
        {
            yield break;
        }

        const string label = "Weakest thing in the heat stands";
        var peak = cure.Peak.Value;
        if (weakest.Hottest >= peak || weakest.Limit!.Value.Value >= peak)
        {
            yield return (label, "", weakest);
            yield break;
        }

        yield return (label, " until it is off", weakest);
        if (cure.Limits.FirstOrDefault(limit => limit.Limit is not null && limit.Hottest >= peak) is { } last)
        {
            yield return ("Weakest thing at the hottest stands", "", last);
        }
    }

    // What the resin makes of it, said as rough as a model is that nobody fitted to the tin.
    private static IEnumerable<Block> Progress(BenchContext context, CurePlan cure)
    {
        if (cure.Progress is not { } progress)
        {
            yield break;
        }

        var early = progress.Demould is null || progress.Demould.Value.Value > progress.PlannedDemould.Value;
        var text = "Vacuum off not before " + Phrase.Strong(Moment(progress.VacuumOff)) + (context.IsLeftOn ? ". Go on with it not before " : ". Pull not before ") + Phrase.Strong(Moment(progress.Demould))
            + (early ? $" ▲ planned at {At(context, progress.PlannedDemould.Value)}. " : ". ");
        if (progress.Transition is { Value: var band })
        {
            var (value, low, high) = (context.Text.Temperature(Whole(context, band.Value)), context.Text.Temperature(Whole(context, band.Low)), context.Text.Temperature(Whole(context, band.High)));
            text += $"After this cure it softens at about {value.Main} ({low.Main} to {high.Main}, {Numbers.Fixed(progress.Degree.Value * 100, 0)}\u00A0% cured).";
        }

        yield return new Paragraph(text);

        string Moment(Computed<Duration>? time) => time is { } at ? At(context, Quarters(at.Value)) : "later than this cure";
    }

    // Whole degrees of the paper's own scale; Fahrenheit is whole already, and one rounding is enough.
    private static Temperature Whole(BenchContext context, Temperature value) =>
        context.Text.IsUs ? value : Temperature.FromDegreesCelsius(Math.Round(value.DegreesCelsius, MidpointRounding.AwayFromZero));

    // Up to the next quarter of an hour.
    private static Duration Quarters(Duration time) => Duration.FromMinutes(Math.Ceiling(time.Minutes / 15) * 15);

    private static string Origin(BenchContext context) =>
        context.Clock is { HasStart: true, Need: not null } ? "Times of day by the plan, from full vacuum on" : "Hours count from the start of the cure";

    private static CellRow Step(BenchContext context, CureStepPlan step)
    {
        var text = context.Text;
        var (start, end) = (At(context, step.Start.Value), At(context, step.End.Value));
        var span = start == end ? context.Say($"at {start}") : context.Say($"{WithoutSameDay(start, end)} to {end}");
        var length = QuantityText.Span(step.End.Value - step.Start.Value);
        var to = text.Temperature(step.To);
        return step.Step.Action switch
        {
            CureAction.Hold => BenchContext.Step(
                Sentences([step.Step.AtRoom ? context.Say($"Hold at room temperature, {to}.") : context.Say($"Hold {to}."), .. State(context, step)]), new BigCell(length, span), Reading(context)),
            CureAction.Ramp => BenchContext.Step(Sentences([Heat(context, step), .. State(context, step)]), new BigCell(to.Main, context.Say($"in {length}, {span}")), Reading(context)),
            CureAction.Cool => BenchContext.Step(
                Sentences([step.Step.Rate is { } rate ? context.Say($"Cool at {text.Written(rate, text.Rate)}.") : context.Say("Cool."), .. State(context, step)]),
                new BigCell(to.Main, context.Say($"in {length}, {span}")),
                Reading(context)),
            CureAction.Vent => BenchContext.Tick(context.Say("Let the vacuum go."), span),
            CureAction.Debag => BenchContext.Tick(context.Say("Take the bag off."), span),
            _ => TakingOff.Step(context, span),
        };
    }

    private static Blank Reading(BenchContext context) => new(context.Say("temperature"), context.Text.TemperatureUnit);

    private static string Sentences(IEnumerable<string> sentences) => string.Join(' ', sentences);

    private static string Heat(BenchContext context, CureStepPlan step)
    {
        var from = context.Text.Temperature(step.From).Main;
        return step.Step.Rate is { } rate ? context.Say($"Heat from {from} at {context.Text.Written(rate, context.Text.Rate)}.") : context.Say($"Heat from {from}.");
    }

    private static IEnumerable<string> State(BenchContext context, CureStepPlan step)
    {
        if (step.Bagged)
        {
            yield return context.Say("Vacuum on.");
        }

        if (!step.InMould)
        {
            yield return (step.Step.Support, context.IsWrapped) switch
            {
                ({ } on, false) => context.Say($"Off the mould, on {on}."),
                (null, false) => context.Say("Off the mould."),
                ({ } on, true) => context.Say($"Off the mandrel, on {on}."),
                (null, true) => context.Say("Off the mandrel."),
            };
        }
    }

    // "15:44 (+1 day) to 16:04 (+1 day)" says the day once.
    private static string WithoutSameDay(string start, string end) =>
        start.IndexOf(" (", StringComparison.Ordinal) is var day && day > 0 && end.EndsWith(start[day..], StringComparison.Ordinal) ? start[..day] : start;

    // The cure starts when the bag is at full vacuum: with a planned start and a known need, that is a time of day.
    /// <summary>A moment of the cure: by the clock where a start is planned, else hours from its start.</summary>
    public static string At(BenchContext context, Duration sinceCure) =>
        (context.Clock.Need is { } need ? context.Clock.TimeOfDay(need + sinceCure) : null) ?? QuantityText.Span(sinceCure);

    private static Cell DemouldTime(BenchContext context) =>
        context.Part.Resin?.Demould is { } demould ? $"demould after {QuantityText.Written(demould)}" : "as the data sheet says";
}
