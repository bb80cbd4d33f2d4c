using Recipe.Documents.Layout;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>The vacuum and its proof, to H5.</summary>
internal static class VacuumStation
{
    public static Station Build(TravellerContext context)
    {
        var by = context.Clock.FullVacuumBy is { } latest ? $" before {WorkClock.Minute(latest)}" : "";
        return new Station(
            "Vacuum",
            [
                .. context.Caution(Danger.Vacuum),
                TravellerContext.Steps("", Vacuum(context)),
                Hold(context),
                new IfBox(
                [
                    new("It leaks", $"listen and press the tape: pleats first, then port, then corners; seal{by}; test again"),
                    new("No leak is found", "take the hose off at the bag and test pump and hose alone"),
                    new("It never holds", "write a deviation; decide at H9; heat nothing"),
                ]),
            ]);
    }

    private static IEnumerable<Row> Vacuum(TravellerContext context)
    {
        var vacuum = context.Part.Vacuum;
        var text = context.Text;
        yield return context.Step("Pump on. Seat the bag in the corners, pleats first.", context.Clock.PumpOnBy is { } by ? new BigCell(QuantityText.Minutes(by, Rounding.Down), "after first mix at the latest") : "", new Blank("time pump on"));
        if (context.Plan.Vacuum is not { } levels)
        {
            yield return context.Step("Draw the vacuum.", "no level is written", new Blank("vacuum below ambient"));
            yield break;
        }

        var below = text.Pressure(levels.BelowAmbient.Value, Rounding.Nearest);
        var written = vacuum?.Draw is { } draw ? $"written {QuantityText.Written(draw)}; " : "";
        var within = vacuum?.Within is { } time ? $" Within {QuantityText.Span(time.Value)}." : "";
        yield return context.Step(
            $"Draw down.{within}",
            new BigCell(below.Main, $"below ambient{(below.Beside is { } other ? $" ({other})" : "")}"),
            new Blank("vacuum below ambient", below.Main.EndsWith("mbar", StringComparison.Ordinal) ? "mbar" : "inHg"),
            $"{written}that is {text.Pressure(levels.Absolute.Value)} absolute; at this height {text.Pressure(levels.Ceiling.Value)} is all there is");
        if (vacuum?.Settle is { } settle)
        {
            yield return context.Tick("Let it settle.", new BigCell(QuantityText.Span(settle.Value)));
        }
    }

    private static HoldPoint Hold(TravellerContext context)
    {
        var text = context.Text;
        var levels = context.Plan.Vacuum;
        var check = context.Part.Vacuum?.LeakCheck ?? context.Part.Infusion?.DropTest;
        var time = levels?.LeakCheck?.Value ?? check?.Duration?.Value;
        var limit = levels?.RiseAtMost?.Value ?? check?.RiseAtMost?.Value;
        var wait = time is { } known ? QuantityText.Span(known) : "the time of the shop's rule";
        var rise = limit is { } most ? $"{text.Pressure(most, Rounding.Down)} at most" : "no limit is written: decide and write it down";
        return new HoldPoint(
            "H5",
            context.Process == Process.Infused ? "leak check: no resin without it" : "leak check: no cure without it",
            ["Level reached. Shut the bag off from the pump", (Phrase)"Wait " + Phrase.Strong(wait), (Phrase)"Rise of pressure: " + Phrase.Strong(rise)],
            [new Blank("Before", "mbar"), new Blank("After", "mbar"), new Blank("Rise", "mbar")]);
    }
}
