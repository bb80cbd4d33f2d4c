using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using UnitsNet;

namespace Recipe.Documents.Travellers;

/// <summary>From the mixed pot to the clamped feed.</summary>
internal static class InfuseSteps
{
    private const int MostBoxes = 8;

    // Marks every 3 min: in less than 6 min there are no two of them to tell a speed by, and whoever draws lines misses the moment to clamp.
    private const double MinutesOfTwoMarks = 6;

    public static IEnumerable<Row> Of(BenchContext context)
    {
        var infusion = context.Part.Infusion;
        var text = context.Text;
        if (infusion?.Degas is { } degas)
        {
            yield return BenchContext.Step(context.Say("Stand the mixed resin under vacuum. Watch it froth."), new BigCell(QuantityText.Span(degas.Value)), new Blank(context.Say("time degassed")));
        }

        yield return BenchContext.Tick(context.Say("H5 signed? Put the feed under the resin, no air in it."), Line(context) is { } line ? Lines(context, line) : null, boxes: Math.Clamp(context.Plan.Feed?.Lines.Value ?? 1, 1, MostBoxes));
        if (infusion?.MouldTemperature is { } mould)
        {
            var warm = text.Written(mould, value => text.Temperature(value));
            yield return BenchContext.Step(context.IsWrapped ? context.Say("Mandrel temperature") : context.Say("Mould temperature"), new BigCell(warm.Main, warm.Beside), new Blank(context.IsWrapped ? context.Say("mandrel temperature") : context.Say("mould temperature"), text.TemperatureUnit));
        }

        var several = context.Plan.Feed?.Lines.Value > 1;
        var runs = infusion?.Path is { } path ? context.Say($"resin runs {text.Written(path, value => text.Size(value))}") : (Cell)"";
        var reserve = infusion?.Reserve is { } share ? context.Say($"keep {QuantityText.Written(share)} in the pot") : context.Say("never let the pot run dry");
        var clamp = infusion?.ClampFeed is { } when ? when : (Cell)context.Say("when the front has reached the vent");
        if (ShortFill(context) is { } soon)
        {
            yield return BenchContext.Tick(context.Say("Have the clamp in hand, and all eyes on the vent. Full in about"), new BigCell(StartStation.Short(soon), context.Say("too short to mark the front")));
        }

        yield return BenchContext.Step(several ? context.Say("Open every feed. Write the time.") : context.Say("Open the feed. Write the time."), runs, new Blank(context.Say("time feed open")));
        yield return ShortFill(context) is null
            ? BenchContext.Tick(context.Say("Watch the front. Mark it every few minutes."), reserve)
            : BenchContext.Tick(context.Say("Do not leave. Watch for the first resin at the vent."), reserve);
        yield return BenchContext.Step(several ? context.Say("Clamp every feed.") : context.Say("Clamp the feed."), clamp, new Blank(context.Say("time clamped")));
        yield return BenchContext.Tick(context.Say("Leave the vacuum on until gel. Watch the catch pot."), infusion?.Vent is { } vent ? context.Say($"vent {vent}") : null);
    }

    // The time of a fill that is over before its front could be marked twice; null for a longer one, and where it is not known.
    private static Duration? ShortFill(BenchContext context) =>
        context.Plan.Flow?.Fill?.Value is { Minutes: < MinutesOfTwoMarks } fill ? fill : null;

    private static Cell Lines(BenchContext context, Reading line) => context.Plan.Feed?.Lines.Value is { } count and > 1
        ? context.Say($"{Numbers.Whole(count)} feed lines, each {line}")
        : context.Say($"feed line {line}");

    // As written, else as the plan takes it.
    private static Reading? Line(BenchContext context) =>
        context.Part.Infusion?.FeedLine is { } line ? context.Text.Written(line, value => context.Text.Size(value))
        : context.Plan.Feed?.Length is { } taken ? context.Text.Size(taken.Value)
        : null;

    /// <summary>What to do when air runs in.</summary>
    public static IfBox IfBox(BenchContext context) => new([new(context.Say("Air runs in the feed line"), context.Say("clamp the feed; find the leak; open it again")), new(context.Say("The front stops"), context.Say("open no bag; write how far it came; decide at H9"))]);
}
