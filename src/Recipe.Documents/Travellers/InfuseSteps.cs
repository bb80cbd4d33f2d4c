using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Travellers;

/// <summary>From the mixed pot to the clamped feed.</summary>
internal static class InfuseSteps
{
    public static IEnumerable<Row> Of(BenchContext context)
    {
        var infusion = context.Part.Infusion;
        var text = context.Text;
        if (infusion?.Degas is { } degas)
        {
            yield return BenchContext.Step(context.Say("Stand the mixed resin under vacuum. Watch it froth."), new BigCell(QuantityText.Span(degas.Value)), new Blank(context.Say("time degassed")));
        }

        yield return BenchContext.Tick(context.Say("H5 signed? Put the feed under the resin, no air in it."), infusion?.FeedLine is { } line ? context.Say($"feed line {text.Written(line, value => text.Size(value))}") : null);
        if (infusion?.MouldTemperature is { } mould)
        {
            var warm = text.Written(mould, value => text.Temperature(value));
            yield return BenchContext.Step(context.Say("Mould temperature"), new BigCell(warm.Main, warm.Beside), new Blank(context.Say("mould temperature"), text.TemperatureUnit));
        }

        yield return BenchContext.Step(context.Say("Open the feed. Write the time."), infusion?.Path is { } path ? context.Say($"resin runs {text.Written(path, value => text.Size(value))}") : (Cell)"", new Blank(context.Say("time feed open")));
        var reserve = infusion?.Reserve is { } share ? context.Say($"keep {QuantityText.Written(share)} in the pot") : context.Say("never let the pot run dry");
        yield return BenchContext.Tick(context.Say("Watch the front. Mark it every few minutes."), reserve);
        yield return BenchContext.Step(context.Say("Clamp the feed."), infusion?.ClampFeed is { } when ? when : (Cell)context.Say("when the front has reached the vent"), new Blank(context.Say("time clamped")));
        yield return BenchContext.Tick(context.Say("Leave the vacuum on until gel. Watch the catch pot."), infusion?.Vent is { } vent ? context.Say($"vent {vent}") : null);
    }

    /// <summary>What to do when air runs in.</summary>
    public static IfBox IfBox(BenchContext context) => new([new(context.Say("Air runs in the feed line"), context.Say("clamp the feed; find the leak; open it again")), new(context.Say("The front stops"), context.Say("open no bag; write how far it came; decide at H9"))]);
}
