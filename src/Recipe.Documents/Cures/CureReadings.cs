using System.Collections.Immutable;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Shared;
using Recipe.Model;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Cures;

/// <summary>Spaces to write down what thermometers and gauge show, every half hour or, in a long cure, as often as a page has lines.</summary>
internal static class CureReadings
{
    private const int MostRows = 14;
    private const double HalfHour = 30;

    /// <summary>Time between two readings, minutes.</summary>
    public static double Interval(CurePlan cure) => Math.Max(HalfHour, Chart.NiceMinutes(cure.Total.Value.Minutes, MostRows));

    public static Station Build(BenchContext context, CurePlan cure) => new(
        context.Say("Readings"),
        [Table(context, cure), Watch(context)]);

    private static Table Table(BenchContext context, CurePlan cure)
    {
        var unit = context.Text.TemperatureUnit;
        var interval = Interval(cure);
        var rows = (int)Math.Ceiling(cure.Total.Value.Minutes / interval * (1 - 1e-9)) + 1;
        var vacuum = CureMoments.VacuumEnds(context, cure);
        var names = Names(context);
        return new Table(
            context.Say($"Every {QuantityText.Span(Duration.FromMinutes(interval))}, and whenever something changes. Put the probes on the part, one where it is coldest"),
            [
                new Column(context.Say("Time"), WidthMm: 37), .. names.Select(name => new Column(name)), new Column(context.Say("Oven")),
                .. vacuum is null ? ImmutableArray<Column>.Empty : [new Column(context.Say("Vacuum"))], new Column(context.Say("By")),
            ],
            [.. Enumerable.Range(0, rows).Select(i => Duration.FromMinutes(Math.Min(i * interval, cure.Total.Value.Minutes))).Select(at => new CellRow(
            [
                new TextCell(Phrase.Strong(CureStation.At(context, at)), Target(context, cure, at)),
                .. names.Select(name => (Cell)new Blank(name, unit)),
                new Blank(context.Say("oven"), unit),
                .. vacuum is { } end ? [at <= end ? new Blank(context.Say("vacuum"), context.Text.PressureUnit) : ""] : ImmutableArray<Cell>.Empty,
                new Blank(context.Say("initials")),
            ]))],
            TableUse.Steps);
    }

    // As many probes as the recipe has, two at least: one probe says nothing of the coldest place.
    private static ImmutableArray<string> Names(BenchContext context)
    {
        var count = Math.Clamp(context.Part.Cure?.Thermocouples?.Value ?? 2, 2, 4);
        return [.. Enumerable.Range(1, count).Select(i => "T" + Numbers.Whole(i))];
    }

    private static string? Target(BenchContext context, CurePlan cure, Duration at)
    {
        foreach (var step in cure.Steps.Where(step => step.Step.Action is CureAction.Hold or CureAction.Ramp or CureAction.Cool))
        {
            if (at >= step.Start.Value && at <= step.End.Value && step.End.Value > step.Start.Value)
            {
                var share = (at - step.Start.Value) / (step.End.Value - step.Start.Value);
                var planned = step.From.DegreesCelsius + (share * (step.To.DegreesCelsius - step.From.DegreesCelsius));

                // A hold as the steps say it; what lies between two of them in whole degrees of the paper's own scale.
                var shown = step.Step.Action == CureAction.Hold ? step.To : Temperature.FromDegreesCelsius(context.Text.IsUs ? planned : Math.Round(planned, MidpointRounding.AwayFromZero));
                return context.Say($"plan {context.Text.Temperature(shown).Main}");
            }
        }

        return null;
    }

    private static Facts Watch(BenchContext context) => new(
    [
        new Fact(context.Say("Night watch"), Phrase.Empty, new Blank(context.Say("who looks after it at night"))),
        new Fact(context.Say("Telephone"), Phrase.Empty, new Blank(context.Say("telephone of the night watch"))),
    ]);
}
