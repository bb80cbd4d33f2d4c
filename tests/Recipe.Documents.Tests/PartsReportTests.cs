using System.Text.Json.Nodes;
using System.Xml.Linq;
using CsCheck;
using Recipe.Documents.Changes;
using Recipe.Documents.Comparing;
using Recipe.Documents.Layout;
using Recipe.Documents.Tests.Plans;
using Recipe.Model;

namespace Recipe.Documents.Tests;

/// <summary>Parts side by side: tables, the picture, and what programs get.</summary>
public sealed class PartsReportTests
{
    private static readonly PartOnReport[] Parts =
    [
        new("hatch-lid", HatchLid.Input), new("rudder", RudderHalves.Input), new("tube", TubeInfused.Input), new("bare", Bare.Input), new("a | \"b\" <c>", Hostile.With("<script>alert(1)</script> =cmd() \"a\" | b")),
    ];

    /// <summary>The files kept of it.</summary>
    internal static string[] Kept { get; } = [.. ((string[])["csv", "html", "json", "md", "svg", "txt"]).Select(ending => $"comparison/comparison.{ending}")];

    [Fact]
    public void Every_figure_has_one_way_to_be_said()
    {
        Assert.Equal(Enum.GetValues<PartFigure>(), Figures.All.Select(figure => figure.Kind));
        Assert.Equal(Figures.All.Length, Figures.All.Select(figure => figure.Key).Distinct(StringComparer.Ordinal).Count());
    }

    [Theory]
    [InlineData("comparison.txt")]
    [InlineData("comparison.md")]
    [InlineData("comparison.html")]
    [InlineData("comparison.csv")]
    [InlineData("comparison.json")]
    [InlineData("comparison.svg")]
    public void It_is_as_it_was_kept(string file) => Golden.Check("comparison/" + file, Path.GetExtension(file) switch
    {
        ".txt" => PartsReport.AsText(Parts),
        ".md" => PartsReport.AsMarkdown(Parts),
        ".html" => PartsReport.AsHtml(Parts),
        ".csv" => PartsReport.AsCsv(Parts),
        ".json" => PartsReport.AsJson(Parts),
        _ => PartsReport.AsSvg(Parts)!,
    });

    [Fact]
    public void What_no_stiffness_counts_is_said_in_one_line()
    {
        PartOnReport With(string name, params string[] lines) => new(name, HatchLid.Input with { Plan = HatchLid.Input.Plan with { Stiffness = HatchLid.Input.Plan.Stiffness! with { LeftOut = [.. lines] } } });
        const string said = "No stiffness here counts stiffener: it covers only part of the surface.";
        Assert.EndsWith("\n\n" + said + "\n", PartsReport.AsText([With("one", "stiffener"), With("two", "stiffener")]), StringComparison.Ordinal);
        var apart = PartsReport.AsText([With("one", "stiffener", "pad"), With("two")]);
        Assert.EndsWith("\n\none: no stiffness here counts stiffener, pad: they cover only part of the surface.\n", apart, StringComparison.Ordinal);
        Assert.DoesNotContain("No stiffness", PartsReport.AsText([With("one"), With("two")]), StringComparison.Ordinal);
        Assert.Contains(said, PartsReport.AsHtml([With("one", "stiffener"), With("two", "stiffener")]), StringComparison.Ordinal);
    }

    [Fact]
    public void Differences_are_those_to_the_first()
    {
        var json = JsonNode.Parse(PartsReport.AsJson(Parts))!["parts"]!.AsArray();
        var (first, third) = (json[0]!["figures"]!["trimmed_mass_kg"]!.GetValue<double>(), json[2]!["figures"]!["trimmed_mass_kg"]!.GetValue<double>());
        Assert.Equal(third - first, json[2]!["more_than_first"]!["trimmed_mass_kg"]!.GetValue<double>());
        Assert.Equal(0, json[0]!["more_than_first"]!["trimmed_mass_kg"]!.GetValue<double>());
    }

    [Fact]
    public void Each_table_of_the_text_fits_a_terminal_and_begins_with_the_first_part()
    {
        var text = PartsReport.AsText([Parts[0], .. Enumerable.Range(1, 8).Select(i => new PartOnReport($"tube-{i}", TubeInfused.Input))]);
        Assert.All(text.Split('\n'), line => Assert.InRange(line.Length, 0, 100));
        var tables = text.Split("\n\n");
        Assert.True(tables.Length > 1, text);
        Assert.All(tables, table => Assert.StartsWith("hatch-lid", table.TrimStart(), StringComparison.Ordinal));
    }

    [Fact]
    public void The_picture_stands_in_the_page_and_is_well_formed()
    {
        var page = XDocument.Parse(PartsReport.AsHtml(Parts).Replace("<!DOCTYPE html>", "", StringComparison.Ordinal));
        Assert.Contains(page.Descendants(), node => node.Name.LocalName == "svg");
        Assert.Contains("better: upper left", PartsReport.AsSvg(Parts), StringComparison.Ordinal);
    }

    [Fact]
    public void Without_figures_there_is_no_picture() => Assert.Null(PartsReport.AsSvg([new("bare", Bare.Input)]));

    [Fact]
    public void Pictures_of_any_points_keep_the_rules_of_drawings() =>
        Gen.Select(Gen.Double[-1e6, 1e6], Gen.Double[1e-9, 1e6], Gen.Double[0, 1], Gen.Double[0, 1], Gen.Bool, Gen.Bool, Gen.Int[0, Figures.All.Length - 1], Gen.Int[0, Figures.All.Length - 1]).Array[1, 40].Sample(
            points =>
            {
                var (low, size, _, _, leastX, leastY, x, y) = points[0];
                var drawing = ScatterDrawing.Of(
                    new("points", "Points", "part", (Figures.All[x], leastX), (Figures.All[y], leastY)),
                    [.. points.Select((p, i) => new ScatterPoint(low + (size * p.Item3), low + (size * p.Item4), (PointMark)(i % 3), i % 3 == 0 ? "" : $"part-with-a-name-{i}"))],
                    new QuantityText(null));
                DrawingRules.Check(drawing!, "random points");
            },
            iter: 200);

    [Fact]
    public void A_name_keeps_off_other_names_and_points()
    {
        var drawing = ScatterDrawing.Of(
            new("points", "Points", "part", (Figures.Of(PartFigure.Mass), true), (Figures.Of(PartFigure.BendingAlong), false)),
            [.. Enumerable.Range(0, 6).Select(i => new ScatterPoint(0.1 + (i * 1e-4), 1, PointMark.Full, $"alike-{i}")), new ScatterPoint(0.2, 2, PointMark.Square, "first")],
            new QuantityText(null))!;
        Assert.Equal(7, drawing.Shapes.OfType<TextShape>().Count(text => text.Text.StartsWith("alike", StringComparison.Ordinal) || text.Text == "first"));
    }
}
