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
            yield return BenchContext.Step("Stand the mixed resin under vacuum. Watch it froth.", new BigCell(QuantityText.Span(degas.Value)), new Blank("time degassed"));
        }

        yield return BenchContext.Tick("H5 signed? Put the feed under the resin, no air in it.", infusion?.FeedLine is { } line ? $"feed line {text.Written(line, value => text.Size(value))}" : null);
        if (infusion?.MouldTemperature is { } mould)
        {
            var warm = text.Written(mould, value => text.Temperature(value));
            yield return BenchContext.Step("Mould temperature", new BigCell(warm.Main, warm.Beside), new Blank("mould temperature", text.TemperatureUnit));
        }

        yield return BenchContext.Step("Open the feed. Write the time.", infusion?.Path is { } path ? $"resin runs {text.Written(path, value => text.Size(value))}" : (Cell)"", new Blank("time feed open"));
        var reserve = infusion?.Reserve is { } share ? $"keep {QuantityText.Written(share)} in the pot" : "never let the pot run dry";
        yield return BenchContext.Tick("Watch the front. Mark it every few minutes.", reserve);
        yield return BenchContext.Step("Clamp the feed.", infusion?.ClampFeed is { } when ? when : (Cell)"when the front has reached the vent", new Blank("time clamped"));
        yield return BenchContext.Tick("Leave the vacuum on until gel. Watch the catch pot.", infusion?.Vent is { } vent ? $"vent {vent}" : null);
    }

    /// <summary>What to do when air runs in.</summary>
    public static IfBox IfBox => new([new("Air runs in the feed line", "clamp the feed; find the leak; open it again"), new("The front stops", "open no bag; write how far it came; decide at H9")]);
}
