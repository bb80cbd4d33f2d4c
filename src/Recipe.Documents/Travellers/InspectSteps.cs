using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;

namespace Recipe.Documents.Travellers;

/// <summary>Weighing against the target, thickness, and what the author wants inspected, to H8.</summary>
internal static class InspectSteps
{
    public static HoldPoint Hold(BenchContext context, FinishOrder order) => new(
        "H8",
        IsWeighed(context) ? context.Say("inspected and weighed") : context.Say("inspected"),
        [context.Say("Wait 10\u00A0min before you inspect your own work"), Cautions.Carbon(context.Plan) ? context.Say("Tapped, looked at under a low lamp, measured") : context.Say("Tapped, held to the light, measured"), .. order.BeforeInspection.Concat(order.AfterInspection).Where(line => line.Verb == "inspect").SelectMany(Items)],
        []);

    // "mass in its band; at most 1 pinhole per dm2" is two things to tick.
    private static IEnumerable<Phrase> Items(FinishStep line) =>
        line.Text.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
            .Select(item => WrittenText.ForReading(item)).Select(item => (Phrase)(char.ToUpperInvariant(item[0]) + item[1..]));

    /// <summary>The weighing, and the thickness where it is known.</summary>
    public static IEnumerable<Row> Weigh(BenchContext context) => [.. IsWeighed(context) ? Mass(context) : [], .. Thickness(context)];

    // What is left on its mould, or on a hull, is put on no scale unless the recipe says so.
    private static bool IsWeighed(BenchContext context) => !context.IsLeftOn || context.Part.Finish.Any(line => line.Verb == "weigh");

    private static IEnumerable<Row> Mass(BenchContext context)
    {
        var (part, text) = (context.Part, context.Text);
        var (wanted, expects, unknown) = context.StaysOn
            ? (context.Say("Weigh it, less what it weighed before. Target"), context.Say("Weigh it, less what it weighed before. Expected"), context.Say("Weigh it, less what it weighed before."))
            : (context.Say("Weigh the trimmed part. Target"), context.Say("Weigh the trimmed part. Expected"), context.Say("Weigh the trimmed part."));
        if (part.TargetMass is { } target)
        {
            var reading = text.AboutOnScale(target.Value);
            var band = part.TargetTolerance is { } tolerance
                ? context.Say($"{text.Weight(target.Value - tolerance.Value, Rounding.Up)} to {text.Weight(target.Value + tolerance.Value, Rounding.Down)}")
                : null;
            yield return BenchContext.Step(wanted, new BigCell(reading.Main, Join(reading.Beside, band)), new Blank(context.Say("trimmed mass"), text.ScaleUnit), Expected(context));
        }
        else if (context.Plan.TrimmedMass is { Value: var mass })
        {
            yield return BenchContext.Step(
                expects, new BigCell(text.AboutOnScale(mass.Value).Main, context.Say($"{text.AboutOnScale(mass.Low).Main} to {text.AboutOnScale(mass.High).Main}")), new Blank(context.Say("trimmed mass"), text.ScaleUnit));
        }
        else
        {
            yield return BenchContext.Step(unknown, context.Say("no target"), new Blank(context.Say("trimmed mass"), text.ScaleUnit));
        }
    }

    // A core of a given size covers not the whole part, and where it is the only thing laid there is no full stack.
    private static IEnumerable<Row> Thickness(BenchContext context)
    {
        var text = context.Text;
        if (context.Paper.Thickness is { } whole)
        {
            yield return BenchContext.Step(
                context.StaysOn ? context.Say("Measure at 3 marks how much thicker it is.") : context.Say("Measure the full stack at 3 marks."), new BigCell(text.Thickness(whole.Value).Main, context.Say("computed")), new Blank(context.Say("thickness at three marks"), text.ThicknessUnit));
        }
    }

    private static string? Expected(BenchContext context) => context.Plan.TrimmedMass is { Value: var mass }
        ? context.Say($"expected {context.Text.AboutOnScale(mass.Value).Main}, from {context.Text.AboutOnScale(mass.Low).Main} to {context.Text.AboutOnScale(mass.High).Main}")
        : null;

    private static string? Join(string? first, string? second) => first is null ? second : second is null ? first : $"{first}; {second}";
}
