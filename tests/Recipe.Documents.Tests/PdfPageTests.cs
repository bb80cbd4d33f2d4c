using CsCheck;
using Recipe.Documents.Layout;
using Recipe.Documents.Tests.Files;
using Recipe.Documents.Tests.Plans;
using Recipe.Documents.Writing.Pdf;
using Recipe.Model;

namespace Recipe.Documents.Tests;

/// <summary>Papers laid on pages, before any byte of a PDF is written.</summary>
public sealed class PdfPageTests
{
    internal static readonly PaperSize[] Sizes = [PaperSize.A4, PaperSize.Letter];

    [Fact]
    public void Every_text_of_every_paper_stands_on_a_page()
    {
        foreach (var (name, document) in Documents())
        {
            HoldsEverything(name, document);
        }
    }

    [Fact]
    public void No_two_texts_lie_on_each_other_and_none_leaves_the_page()
    {
        foreach (var (name, document) in Documents())
        {
            var paper = PdfPages.Of(document);
            Assert.All(paper.Pages, page => Assert.Empty(Boxes.Faults(page.Shapes, PdfPages.Left, 5, paper.WidthMm - PdfPages.Right, paper.HeightMm - 4).Select(fault => $"{name} {document.Kind}: {fault}")));
        }
    }

    [Fact]
    public void No_text_of_a_drawing_lies_on_another_or_leaves_the_drawing()
    {
        foreach (var (name, document) in Documents())
        {
            foreach (var drawing in document.Stations.SelectMany(station => station.Blocks).OfType<Drawing>())
            {
                Assert.Empty(Boxes.Faults(drawing.Shapes, 0, 0, drawing.WidthMm, drawing.HeightMm).Select(fault => $"{name} {document.Kind} {drawing.Name}: {fault}"));
                Assert.True(drawing.WidthMm <= 180 && drawing.HeightMm <= 230, $"{name} {document.Kind} {drawing.Name} is larger than a page holds");
            }
        }
    }

    [Fact]
    public void Any_text_in_any_place_still_gives_pages()
    {
        var words = Gen.OneOf(Hostile.Words, Gen.String, Gen.Const("\U0001F527\u05E9\u05DC\u05D5\u05DD \u0645\u0631\u062D\u0628\u0627"), Gen.Int[1, 800].Select(n => string.Concat(Enumerable.Range(0, n).Select(i => $"W{i}"))), Gen.Int[1, 400].Select(n => string.Join(' ', Enumerable.Range(0, n).Select(i => $"resin{i}"))));
        words.Sample(
            text =>
            {
                foreach (var document in Cases.Built(Hostile.With(text)))
                {
                    var paper = PdfPages.Of(document);
                    Assert.All(paper.Pages, page => Assert.Empty(Boxes.Faults(page.Shapes, PdfPages.Left, 5, paper.WidthMm - PdfPages.Right, paper.HeightMm - 4)));
                    HoldsEverything("hostile", document);
                }
            },
            iter: 12);
    }

    [Fact]
    public void A_station_of_a_bench_paper_begins_a_page_and_its_head_stands_on_each()
    {
        foreach (var (name, document) in Documents().Where(paper => paper.Document.ForTheBench && !paper.Case.Contains("hostile", StringComparison.Ordinal)))
        {
            var paper = PdfPages.Of(document);
            if (!document.OnePlace)
            {
                Assert.Equal(document.Stations.Length, paper.Starts.Distinct().Count());
            }

            foreach (var (page, i) in paper.Pages.Select((page, i) => (page, i)))
            {
                var about = $"station {page.Station + 1} of {document.Stations.Length}";
                Assert.Contains(page.Shapes.OfType<TextShape>(), text => text.Text == about);
                Assert.Contains(page.Shapes.OfType<TextShape>(), text => text.Text == $"{document.Kind} page {i + 1} of {paper.Pages.Count}");
            }

            Assert.NotEmpty(name);
        }
    }

    [Fact]
    public void Stations_in_one_place_share_a_sheet_only_where_they_stand_on_it_whole()
    {
        var shared = 0;
        foreach (var (_, document) in Documents().Where(paper => paper.Document.OnePlace && !paper.Case.Contains("hostile", StringComparison.Ordinal)))
        {
            var paper = PdfPages.Of(document);
            Assert.Equal(document.Stations.Length, paper.Starts.Count);
            foreach (var group in Enumerable.Range(0, document.Stations.Length).GroupBy(station => paper.Starts[station]).Where(group => group.Count() > 1))
            {
                // The next station begins the next page: none of these goes on there.
                var (page, last) = (paper.Pages[group.Key], group.Last());
                Assert.Equal(group.First(), page.Station);
                Assert.Equal(last + 1 < document.Stations.Length ? paper.Starts[last + 1] : paper.Pages.Count, group.Key + 1);
                var texts = string.Join(' ', page.Shapes.OfType<TextShape>().Select(text => text.Text));
                Assert.Contains($"stations {group.First() + 1} to {last + 1}", texts.Replace('\u00A0', ' '), StringComparison.Ordinal);
                var boxes = group.SelectMany(station => document.Stations[station].Blocks).OfType<IfBox>().ToList();
                Assert.Equal(boxes.DistinctBy(box => string.Join('|', box.Lines)).Count(), page.Shapes.OfType<TextShape>().Count(text => text.Text.EndsWith("If it goes wrong", StringComparison.Ordinal)));
                shared++;
            }
        }

        Assert.True(shared > 0);
    }

    // A value too long to stand beside the space to write in has it below; its label stays on its line, and not beside the space.
    [Fact]
    public void A_label_stands_on_the_line_of_its_value()
    {
        var document = Documents().First(paper => paper.Document.ForTheBench).Document with
        {
            Stations = [new Station("One", [new Facts([new Fact("Resin", "A resin of a long name, slow", new Blank("lot")), new Fact("Hardener", "short", new Blank("lot"))])])],
        };
        var texts = PdfPages.Of(document).Pages.Single().Shapes.OfType<TextShape>().ToList();
        Assert.InRange(Math.Abs(Line("Resin") - Line("A resin")), 0, 1);
        Assert.True(Line("Hardener") > 0);

        double Line(string begins) => texts.First(text => text.Text.StartsWith(begins, StringComparison.Ordinal)).At.Y;
    }

    // Measures of a sheet read at a metre with gloves on: common practice.
    [Fact]
    public void Type_and_spaces_at_the_bench_never_fall_below_their_measures()
    {
        foreach (var air in (double[])[1, 0.7, 0.4, 0.1])
        {
            var measures = new PdfMeasures(IsBench: true, air);
            Assert.True(measures.Body >= 14 && measures.Big >= 28 && measures.Station >= 24 && PdfMeasures.Ring >= 36);
            Assert.True(measures.StepRow(isWritten: true) >= 12 && measures.StepRow(isWritten: false) >= measures.TickSide && measures.TickSide >= 10);
        }

        Assert.True(PdfMeasures.BlankHigh >= 12 && PdfMeasures.BlankWide >= 40);
    }

    [Fact]
    public void A_number_and_its_unit_stay_on_one_line()
    {
        var text = string.Concat(Enumerable.Repeat("pour 118\u00A0g now ", 40));
        for (var width = 20.0; width < 120; width += 3.7)
        {
            var lines = PdfLines.Break([new PdfLines.Ink(text, false, 14)], width).Select(line => string.Concat(line.Stretches.Select(stretch => stretch.Text))).ToList();
            Assert.All(lines, line => Assert.False(line.EndsWith("118", StringComparison.Ordinal) || line.StartsWith('g'), line));
        }
    }

    [Fact]
    public void A_long_table_says_its_head_again_on_every_page_and_no_row_is_parted()
    {
        var table = new Table("Caption", [new Column("Head"), new Column("Other", Align.Right)], [.. Enumerable.Range(0, 200).Select(i => new CellRow([$"row {i}", "a text of\ntwo lines"]))]);
        var paper = PdfPages.Of(Of([table]));
        Assert.True(paper.Pages.Count > 2);
        Assert.All(paper.Pages, page => Assert.Single(page.Shapes.OfType<TextShape>(), text => text.Text == "Head"));
        Assert.Equal(200, paper.Pages.Sum(page => page.Shapes.OfType<TextShape>().Count(text => text.Text.StartsWith("row ", StringComparison.Ordinal))));
    }

    [Fact]
    public void A_row_higher_than_a_page_is_parted_and_loses_nothing()
    {
        var words = string.Join(' ', Enumerable.Range(0, 3000).Select(i => $"w{i}"));
        var document = Of([new Table("", [new Column("Long")], [new CellRow([words])])]);
        var paper = PdfPages.Of(document);
        Assert.True(paper.Pages.Count > 1);
        HoldsEverything("long", document);
        Assert.All(paper.Pages, page => Assert.Empty(Boxes.Faults(page.Shapes, PdfPages.Left, 5, paper.WidthMm, paper.HeightMm)));
    }

    [Fact]
    public void A_box_is_not_parted_and_a_heading_stands_above_what_it_heads()
    {
        var box = new Caution("Mind", [.. Enumerable.Range(0, 20).Select(i => (Phrase)$"line {i}")]);
        for (var rows = 30; rows < 60; rows++)
        {
            var filler = Enumerable.Range(0, rows).Select(i => (Block)new Paragraph($"filler {i}"));
            var pages = PdfPages.Of(Of([.. filler, new Heading("Heading"), box])).Pages.Select(page => page.Shapes.OfType<TextShape>().Select(text => text.Text).ToList()).ToList();
            Assert.Single(pages, page => page.Any(text => text.StartsWith("line ", StringComparison.Ordinal)) && page.Contains("Heading"));
            Assert.Single(pages, page => page.Any(text => text.StartsWith("line ", StringComparison.Ordinal)));
        }
    }

    [Fact]
    public void The_test_of_boxes_sees_an_offender()
    {
        Shape Text(double x, double y, string text, bool upright = false) => new TextShape(new Spot(x, y), text, 10, Upright: upright);
        Assert.NotEmpty(Boxes.Faults([Text(10, 10, "resin"), Text(12, 10, "resin")], 0, 0, 100, 100));
        Assert.NotEmpty(Boxes.Faults([Text(95, 10, "hardener")], 0, 0, 100, 100));
        Assert.NotEmpty(Boxes.Faults([Text(10, 5, "hardener", upright: true)], 0, 0, 100, 100));
        Assert.Empty(Boxes.Faults([Text(10, 10, "resin"), Text(10, 15, "resin"), Text(50, 50, "resin", upright: true)], 0, 0, 100, 100));
    }

    internal static IEnumerable<(string Case, Document Document)> Documents() =>
        from input in Cases.All
        from size in Sizes
        from document in Cases.Built(input.Value with { Paper = size })
        select ($"{input.Key} {size}", document);

    private static Document Of(params Block[] blocks) => new()
    {
        Kind = "Test",
        Identity = new Identity("Part", "part", "abc", null, "part.recipe", OfOneBuild: false),
        Paper = PaperSize.A4,
        ForTheBench = false,
        Stations = [new Station("Station", [.. blocks])],
    };

    private static void HoldsEverything(string name, Document document)
    {
        var drawn = Texts.Packed(string.Concat(PdfPages.Of(document).Pages.SelectMany(Body)));
        foreach (var text in Texts.Of(document))
        {
            var wanted = Texts.Packed(PdfText.OneLine(text, strong: false));
            Assert.True(drawn.Contains(wanted, StringComparison.Ordinal) || InParts(drawn, wanted), $"{name} {document.Kind}: {text}");
        }
    }

    // What stands at the top and the foot of a page stands between the parts of a text that goes on.
    private static IEnumerable<string> Body(PdfPage page) => page.Shapes.OfType<TextShape>().Select(text => PdfText.OneLine(text.Text, strong: false));

    // A text that was parted over pages: each stretch of it stands somewhere, the longest that can be found first.
    private static bool InParts(string drawn, string wanted)
    {
        while (wanted.Length > 0)
        {
            var (low, high) = (0, wanted.Length);
            while (low < high)
            {
                var middle = (low + high + 1) / 2;
                (low, high) = drawn.Contains(wanted[..middle], StringComparison.Ordinal) ? (middle, high) : (low, middle - 1);
            }

            // Less than a word is no part of it.
            if (low == 0 || (low < wanted.Length && low < 8))
            {
                return false;
            }

            wanted = wanted[low..];
        }

        return true;
    }
}
