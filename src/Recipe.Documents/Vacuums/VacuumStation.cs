using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Planning;

namespace Recipe.Documents.Vacuums;

/// <summary>The vacuum and its proof, to H5.</summary>
internal static class VacuumStation
{
    public static Station Build(BenchContext context)
    {
        var by = context.Clock.FullVacuumBy is { } latest ? $" before {WorkClock.Minute(latest)}" : "";
        return new Station(
            "Vacuum",
            [
                .. context.Caution(Danger.Vacuum),
                BenchContext.Steps("", [.. Draw(context), .. LeakCheck(context)]),
                new IfBox(
                [
                    new("It leaks", $"press the tape at pleats, port, corners; seal it{by}; test again"),
                    new("No leak is found", "take the hose off the bag; test pump and hose alone"),
                    new("It never holds", "write a deviation; decide at H9; heat nothing"),
                ]),
                .. context.Foot("H5"),
            ]);
    }

    private static IEnumerable<Row> Draw(BenchContext context)
    {
        var vacuum = context.Part.Vacuum;
        var text = context.Text;
        yield return BenchContext.Step("Pump on. Seat the bag in the corners, pleats first.", context.Clock.PumpOnBy is { } by ? new BigCell(QuantityText.Minutes(by, Rounding.Down), "after first mix at the latest") : "", new Blank("time pump on"));
        if (context.Plan.Vacuum is not { } levels)
        {
            yield return BenchContext.Step("Draw the vacuum.", "no level is written", new Blank("vacuum below ambient", text.PressureUnit));
            yield break;
        }

        var below = text.Pressure(levels.BelowAmbient.Value, Rounding.Nearest);
        var written = vacuum?.Draw is { } draw ? $"written {QuantityText.Written(draw)}; " : "";
        var within = vacuum?.Within is { } time ? $" within {QuantityText.Span(time.Value)}" : "";
        var settle = vacuum?.Settle is { } pause ? $" Let it settle {QuantityText.Span(pause.Value)}." : "";
        yield return BenchContext.Step(
            $"Draw down{within}.{settle}",
            new BigCell(below.Main, $"below ambient{(below.Beside is { } other ? $", {other}" : "")}"),
            new Blank("vacuum below ambient", text.PressureUnit),
            $"{written}{text.Pressure(levels.Absolute.Value).Main} absolute; the air here gives {text.Pressure(levels.Ceiling.Value).Main}");
    }

    private static IEnumerable<Row> LeakCheck(BenchContext context)
    {
        var text = context.Text;
        var levels = context.Plan.Vacuum;
        var check = context.Part.Vacuum?.LeakCheck ?? context.Part.Infusion?.DropTest;
        var time = levels?.LeakCheck?.Value ?? check?.Duration?.Value;
        var limit = levels?.RiseAtMost?.Value ?? check?.RiseAtMost?.Value;
        yield return BenchContext.Step(
            "Shut the bag off from the pump. Read the gauge. Wait.",
            time is { } known ? new BigCell(QuantityText.Span(known)) : "the time of the shop's rule",
            new Blank("before", text.PressureUnit));
        yield return BenchContext.Step(
            "Read again. The pressure may rise by",
            limit is { } most ? new BigCell(text.Pressure(most, Rounding.Down).Main, "at most" + (text.Pressure(most, Rounding.Down).Beside is { } other ? $", {other}" : "")) : "no limit is written: decide one and write it down",
            new Blank("after", text.PressureUnit),
            Meaning(levels));
    }

    // A rise says little; a hole that one can look for says more.
    private static string? Meaning(VacuumLevels? levels) => levels is { LeakOfAir: { } air, Hole: { } hole }
        ? $"that is about {Numbers.Significant(air.Value.MillilitersPerMinute, 2)}\u00A0mL of air a minute: one hole of {Numbers.Significant(hole.Value.Millimeters, 1)}\u00A0mm"
        : null;
}
