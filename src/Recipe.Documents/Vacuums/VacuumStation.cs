using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Documents.Vacuums;

/// <summary>The vacuum and its proof; H5 is on the traveller.</summary>
internal static class VacuumStation
{
    // Minutes at which the gauge is read, as far as the test lasts: a leak shows in the first two.
    private static readonly ImmutableArray<double> Moments = [0, 1, 2, 5, 10, 15, 20, 30, 60];

    // Less than a hundredth is not worth a word.
    private const double LeastShare = 0.01;

    public static IEnumerable<Station> Stations(BenchContext context)
    {
        yield return new Station(
            context.Say("Draw down"),
            [
                .. context.Caution(Danger.Vacuum),
                .. Panel(context),
                context.Steps("", Draw(context)),
                Pump(context),
            ]);
        yield return new Station(
            context.Say("Leak test"),
            [
                new Paragraph(Phrase.Strong(Limit(context)) + (Meaning(context) is { } meaning ? " " + meaning : "")),
                context.Steps("", Shut(context)),
                .. Readings(context),
                If(context),
                .. context.Foot("H5", context.Plan.Vacuum is { } levels ? [levels.BelowAmbient.RestsOn, levels.Ceiling.RestsOn, levels.RiseAtMost?.RestsOn ?? []] : []),
            ]);
    }

    /// <summary>How long the bag is watched; null when the recipe and the plan do not say.</summary>
    public static Duration? TimeOf(BenchContext context) =>
        context.Plan.Vacuum?.LeakCheck?.Value ?? (context.Part.Vacuum?.LeakCheck ?? context.Part.Infusion?.DropTest)?.Duration?.Value;

    /// <summary>The rise that is still accepted in that time; null when nobody says.</summary>
    public static Pressure? RiseOf(BenchContext context) =>
        context.Plan.Vacuum?.RiseAtMost?.Value ?? (context.Part.Vacuum?.LeakCheck ?? context.Part.Infusion?.DropTest)?.RiseAtMost?.Value;

    /// <summary>
    /// That rise in words: as the recipe states it, unless its gauge counts in another unit, which then stands first; what is converted or computed is
    /// rounded down to what a gauge shows. Null when nobody says.
    /// </summary>
    public static Reading? RiseSaid(BenchContext context)
    {
        var text = context.Text;
        if ((context.Part.Vacuum?.LeakCheck ?? context.Part.Infusion?.DropTest)?.RiseAtMost is not { } stated)
        {
            return RiseOf(context) is { } rise ? text.Pressure(rise, Rounding.Down) : null;
        }

        var (written, shown) = (WrittenText.ForReading(stated.Written), text.Pressure(stated.Value, Rounding.Down));
        return WrittenText.IsUs(stated.Written) == text.GaugeInInches ? shown with { Main = written } : new(shown.Main, written);
    }

    /// <summary>When the gauge is read, from the shut valve: the last time is the end of the test.</summary>
    public static ImmutableArray<Duration> ReadAt(BenchContext context)
    {
        var end = TimeOf(context) ?? Duration.FromMinutes(10);
        return [.. Moments.Select(minutes => Duration.FromMinutes(minutes)).Where(at => at.Minutes < end.Minutes - 1e-6), end];
    }

    private static IEnumerable<Block> Panel(BenchContext context)
    {
        if (context.Plan.Vacuum is not { } levels)
        {
            yield break;
        }

        var text = context.Text;
        var (below, absolute, ceiling) = (text.Pressure(levels.BelowAmbient.Value), text.Pressure(levels.Absolute.Value), text.Pressure(levels.Ceiling.Value));
        var height = text.Distance(context.Plan.Conditions.Altitude.Value).Main;
        yield return new KeyNumbers(
            context.Part.Vacuum?.Draw is { } draw ? context.Say($"The level; the recipe says {QuantityText.Written(draw)}") : context.Say("The level"),
            [
                new(context.Say("A gauge that counts from the air shows"), below.Main, Note(below, context.Say("below ambient"))),
                new(context.Say("A gauge that counts from nothing shows"), absolute.Main, Note(absolute, context.Say("absolute"))),
                new(context.Say("The most there is here"), ceiling.Main, Note(ceiling, context.Say($"below ambient, {height} above the sea"))),
                .. levels.PumpDown is { } down
                    ? [new KeyNumber(context.Say("The pump needs about"), QuantityText.Minutes(down.Value, Rounding.Up), Tight(context, levels.HoseSlows is { } hose && down.Value > Duration.Zero ? hose.Value / down.Value : 0))]
                    : ImmutableArray<KeyNumber>.Empty,
            ]);
    }

    private static string Tight(BenchContext context, double hose) => hose >= LeastShare
        ? context.Say($"to draw a tight bag down, {QuantityText.Share(Math.Round(hose, 2))} of it for the hose; longer means a leak")
        : context.Say("to draw a tight bag down; longer means a leak");

    private static string Note(Reading reading, string what) => reading.Beside is { } beside ? $"{what}; {beside}" : what;

    private static IEnumerable<Row> Draw(BenchContext context)
    {
        var vacuum = context.Part.Vacuum;
        var text = context.Text;
        yield return BenchContext.Step(
            context.IsWrapped ? context.Say("Pump on. Seat the bag all round, pleats first.") : context.Say("Pump on. Seat the bag in the corners, pleats first."),
            context.Clock.PumpOnBy is { } by ? new BigCell(QuantityText.Minutes(by, Rounding.Down), context.Say("after first mix at the latest")) : "",
            new Blank(context.Say("time pump on")));
        if (context.Plan.Vacuum is not { } levels)
        {
            yield return BenchContext.Step(context.Say("Draw the vacuum."), context.Say("no level is written"), new Blank(context.Say("vacuum below ambient"), text.PressureUnit));
            yield break;
        }

        yield return BenchContext.Step(
            vacuum?.Within is { } time ? context.Say($"Draw down within {QuantityText.Span(time.Value)}.") : context.Say("Draw down."),
            new BigCell(text.Pressure(levels.BelowAmbient.Value).Main, context.Say("below ambient")),
            new Blank(context.Say("vacuum below ambient"), text.PressureUnit));
        yield return BenchContext.Step(context.Say("Write when the level is reached."), context.Clock.FullVacuumBy is { } full ? context.Say($"by {WorkClock.Minute(context.Wording, full)}") : "", new Blank(context.Say("time of full vacuum")));
        if (vacuum?.Settle is { } pause)
        {
            yield return BenchContext.Tick(context.Say("Let it settle."), new BigCell(QuantityText.Span(pause.Value)));
        }
    }

    // Usual handling of pump and trap: common practice.
    private static Caution Pump(BenchContext context) => new(
        context.Say("Pump and catch pot"),
        [
            context.Say("A pot between bag and pump, upright, empty, its lid tight."),
            context.Say("No glass and no thin plastic under vacuum: it implodes."),
            context.Say("See resin in the hose? Clamp it before it reaches the pot."),
            context.Say("Pump oil clear and at its mark. Its exhaust goes outdoors."),
            context.Say("Stopping? Clamp the bag first, then let air into the pump."),
        ]);

    private static IEnumerable<Row> Shut(BenchContext context)
    {
        var several = context.Bags.Length > 1;
        yield return BenchContext.TickEach(context, several ? context.Say("Shut each bag off from the pump, at the bag.") : context.Say("Shut the bag off from the pump, at the bag."), context.Say("leave the pump on"));
        yield return BenchContext.TickEach(
            context, several ? context.Say("Read the gauge of each bag. Tap it first.") : context.Say("Read the gauge. Tap it first."), context.Part.Bag?.GaugeAt is { } at ? Words.Place(at) : context.Say("on the far side from the port"));
    }

    private static string Limit(BenchContext context) => (RiseSaid(context), TimeOf(context)) switch
    {
        ({ } rise, { } time) when context.Bags.Length > 1 => context.Say($"Each bag may lose at most {rise} in {QuantityText.Span(time)}."),
        ({ } rise, { } time) => context.Say($"It may lose at most {rise} in {QuantityText.Span(time)}."),
        ({ } rise, null) => context.Say($"It may lose at most {rise}; no time is written."),
        _ => context.Say("No limit is written. Decide one before the test and write it here."),
    };

    // A rise says little; a hole that one can look for says more.
    private static string? Meaning(BenchContext context) => context.Plan.Vacuum is { LeakOfAir: { } air, Hole: { } hole }
        ? context.Bags.Length > 1
            ? context.Say($"In all bags that is about {Air(context, air.Value)} of air a minute: one hole of {Hole(context, hole.Value)}.")
            : context.Say($"That is about {Air(context, air.Value)} of air a minute: one hole of {Hole(context, hole.Value)}.")
        : null;

    private static string Air(BenchContext context, VolumeFlow air) => context.Text.IsUs
        ? Numbers.Significant(air.MillilitersPerMinute / Volume.FromUsOunces(1).Milliliters, 2) + "\u00A0floz"
        : Numbers.Significant(air.MillilitersPerMinute, 2) + "\u00A0mL";

    private static string Hole(BenchContext context, Length hole) =>
        context.Text.IsUs ? Numbers.Significant(hole.Inches, 1) + "\u00A0in" : Numbers.Significant(hole.Millimeters, 1) + "\u00A0mm";

    private static IEnumerable<Table> Readings(BenchContext context) => context.Bags.Select(bag => Readings(context, bag));

    private static Table Readings(BenchContext context, string bag)
    {
        var unit = context.Text.PressureUnit;
        var times = ReadAt(context);
        return new Table(
            bag.Length == 0 ? context.Say("Leak test, from the shut valve") : context.Say($"Leak test of {bag}, from the shut valve"),
            [new(context.Say("After"), Align.Centre, 34), new(context.Say("Gauge shows"), WidthMm: 46), new(context.Say("Lost since 0"), WidthMm: 46), new(context.Say("Limit"), NamesTheRow: true)],
            [.. times.Select((at, i) => new CellRow(
            [
                new TextCell(Phrase.Strong(QuantityText.Span(at))),
                new Blank(context.Say("gauge"), unit),
                i == 0 ? "" : new Blank(context.Say("lost since the start"), unit),
                i == times.Length - 1 && RiseSaid(context) is { } rise
                    ? new BigCell(rise.Main, rise.Beside is { } beside ? context.Say($"at most; {beside}") : context.Say("at most"))
                    : new TextCell(i == 0 ? context.Say("write the level") : context.Say("falls less each minute?")),
            ]))],
            TableUse.Steps);
    }

    private static IfBox If(BenchContext context)
    {
        var where = context.IsWrapped ? context.Say("press the tape at pleats, port, ends") : context.Say("press the tape at pleats, port, corners");
        var by = context.Clock.FullVacuumBy is { } latest ? context.Say($"{where}; seal it before {WorkClock.Minute(context.Wording, latest)}; test again") : context.Say($"{where}; seal it; test again");
        return new IfBox(
        [
            new(context.Say("It leaks"), by),
            new(context.Say("No leak is found"), context.Say("take the hose off the bag; test pump and hose alone")),
            new(context.Say("It falls fast, then stops"), context.Say("air is still leaving the stack: draw on, test again")),
            new(context.Say("It never holds"), context.Process == Process.Infused ? context.Say("open no feed; write a deviation; decide at H9") : context.Say("write a deviation; decide at H9; heat nothing")),
        ]);
    }
}
