using System.Globalization;
using System.Text.Json.Nodes;
using Recipe.Documents.Histories;
using Recipe.Documents.Tests.Plans;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Documents.Tests;

/// <summary>The history of a part and its run chart.</summary>
public sealed class HistoryTests
{
    // NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2: ten readings, here as grams. Printed there: mean 50.81, limits 45.8159 and 55.8041.
    private static readonly double[] Handbook = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];

    [Fact]
    public void The_chart_of_the_handbook_has_its_limits()
    {
        var chart = JsonNode.Parse(HistoryReport.AsJson(Log(Handbook)))!["mass_chart"]!;
        Assert.Equal(0.05081, (double)chart["mean_kg"]!, 1e-9);
        Assert.Equal(0.0558041, (double)chart["high_kg"]!, 5e-8);
        Assert.Equal(0.0458159, (double)chart["low_kg"]!, 5e-8);
        Assert.Empty(chart["signals"]!.AsArray());
        Assert.Contains("mean 50.8 g; while nothing changes it lies from 45.8 g to 55.8 g", Plain(HistoryReport.AsText(Log(Handbook), null)), StringComparison.Ordinal);
    }

    [Fact]
    public void A_part_beyond_the_limits_is_named_and_marked_by_shape()
    {
        var log = Log([.. Handbook, 70]);
        var text = HistoryReport.AsText(log, null);
        Assert.Contains("No. 11 lies beyond the limits: look for what was different.", text, StringComparison.Ordinal);
        Assert.Contains("\n  11 ", text, StringComparison.Ordinal);
        Assert.Contains('X', text.Split('\n').Single(line => line.StartsWith("  11  ", StringComparison.Ordinal) && line.Contains("70.0", StringComparison.Ordinal) && !line.Contains("2026", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData(2)]
    [InlineData(9)]
    [InlineData(60)]
    public void Letters_of_the_chart_never_meet(int builds)
    {
        var drawing = RunChart.DrawingOf(Log([.. Enumerable.Range(0, builds).Select(i => 120 + (7 * Math.Sin(i)) + (i == 4 ? 60 : 0))]), RunFigure.MassFigure, new QuantityText(null))!;
        DrawingRules.Check(drawing, $"{builds.ToString(CultureInfo.InvariantCulture)} builds");
    }

    [Fact]
    public void One_weighing_makes_no_chart()
    {
        Assert.Null(HistoryReport.AsSvg(Log([120]), null));
        Assert.DoesNotContain("mean", HistoryReport.AsText(Log([120]), null), StringComparison.Ordinal);
    }

    [Fact]
    public void What_stands_in_a_record_cannot_steer_a_terminal()
    {
        var log = Log([120, 121], new RecordedDefect("\u001b[2Jgone", null, null, null, Somewhere));
        Assert.DoesNotContain('\u001b', HistoryReport.AsText(log, null));
        Assert.DoesNotContain("<b>", HistoryReport.AsHtml(Log([120, 121], new RecordedDefect("<b>dry</b>", null, null, null, Somewhere)), null), StringComparison.Ordinal);
    }

    private static SourceSpan Somewhere => new(new SourceText("record.recipe", "build"), new TextSpan(0, 5));

    private static BuildLog Log(double[] grams, RecordedDefect? defect = null)
    {
        var part = HatchLid.Input.Plan.Part;
        return Assert.Single(BuildLog.Of(grams.Select((mass, i) => new LoggedBuild(
            new BuildRecord(part.Name, i + 1, new DateOnly(2026, 1, 1).AddDays(i), [], Somewhere)
            {
                Mass = new Figure<Mass>(Mass.FromGrams(mass), Basis.Stated, mass.ToString(CultureInfo.InvariantCulture) + " g"),
                Defects = defect is null ? [] : [defect],
            },
            part,
            "0123456789",
            new Lazy<PlannedFigures>(() => PlannedFiguresOf.Plan(HatchLid.Input.Plan))))));
    }

    private static string Plain(string text) => text.Replace('\u00A0', ' ');
}
