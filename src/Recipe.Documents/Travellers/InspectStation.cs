using System.Collections.Immutable;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Travellers;

/// <summary>Weighing, inspection and the decision, to H8 and H9; who signs.</summary>
internal static class InspectStation
{
    private const int DefectLines = 3;

    /// <summary>Defects that can be counted over many parts; common words of the trade, two letters each.</summary>
    private static readonly ImmutableArray<(string Code, string Meaning)> Defects =
    [
        ("DR", "dry"), ("BR", "bridge"), ("VD", "void"), ("PH", "pinholes"), ("RR", "resin-rich"), ("WR", "wrinkle"), ("PP", "print-through"), ("ST", "stuck or torn"), ("SO", "soft"),
        ("WP", "warp"), ("DL", "delaminated"), ("MS", "ply missing"), ("CN", "contaminated"), ("EX", "exotherm"), ("LK", "vacuum lost"), ("TR", "trim error"), ("HV", "heavy"), ("LT", "light"),
    ];

    public static Station Build(TravellerContext context)
    {
        return new Station(
            "Weigh and inspect",
            [
                TravellerContext.Steps("", Weigh(context)),
                new HoldPoint("H8", "inspected and weighed", ["Wait 10\u00A0min before you inspect your own work", "Tapped, held to the light, measured"], []),
                new Paragraph((Phrase)"Defects: " + string.Join(", ", Defects.Select(defect => $"{defect.Code}\u00A0{defect.Meaning}")) + ".", Fine: true),
                new Table(
                    "",
                    [new("Defect code", WidthMm: 26, NamesTheRow: true), new("Where, how large", WidthMm: 56), new("Cause", WidthMm: 56), new("Use, repair, scrap")],
                    [.. Enumerable.Range(0, DefectLines).Select(_ => new CellRow([new Blank("defect code"), new Blank("place and size"), new Blank("cause"), new Blank("use, repair or scrap")]))],
                    TableUse.Steps),
                new HoldPoint("H9", "decided: use, repair or scrap", [], [new Blank("Decision")]),
                new Facts(
                [
                    new("Laminator", Phrase.Empty, new Blank("name and signature of the laminator")),
                    new("Checked by", Phrase.Empty, new Blank("name and signature of the one who checked")),
                    new("Photos", Phrase.Empty, new Blank("numbers of the photos")),
                    new("Date", Phrase.Empty, new Blank("date")),
                ]),
            ]);
    }

    private static IEnumerable<Row> Weigh(TravellerContext context)
    {
        var (part, text) = (context.Part, context.Text);
        if (part.TargetMass is { } target)
        {
            var reading = text.Written(target, value => text.About(value));
            var band = part.TargetTolerance is { } tolerance
                ? $"{text.Weight(target.Value - tolerance.Value, Rounding.Up).Main} to {text.Weight(target.Value + tolerance.Value, Rounding.Down).Main}"
                : null;
            yield return context.Step("Weigh the trimmed part. Target", new BigCell(reading.Main, Join(reading.Beside, band)), new Blank("trimmed mass", "g"), Expected(context));
        }
        else if (context.Plan.Laminate is { } laminate)
        {
            var mass = laminate.TrimmedMass.Value;
            yield return context.Step(
                "Weigh the trimmed part. Expected", new BigCell(text.About(mass.Value).Main, $"{text.About(mass.Low).Main} to {text.About(mass.High).Main}"), new Blank("trimmed mass", "g"));
        }
        else
        {
            yield return context.Step("Weigh the trimmed part.", "no target", new Blank("trimmed mass", "g"));
        }

        if (context.Plan.Laminate is { } whole)
        {
            yield return context.Step("Thickness at 3 marks", text.Thickness(whole.Thickness.Value).ToString(), new Blank("thickness at three marks", "mm"), "full stack, computed");
        }
    }

    private static string? Expected(TravellerContext context) => context.Plan.Laminate is { } laminate
        ? $"expected {context.Text.About(laminate.TrimmedMass.Value.Value).Main}, from {context.Text.About(laminate.TrimmedMass.Value.Low).Main} to {context.Text.About(laminate.TrimmedMass.Value.High).Main}"
        : null;

    private static string? Join(string? first, string? second) => first is null ? second : second is null ? first : $"{first}; {second}";
}
