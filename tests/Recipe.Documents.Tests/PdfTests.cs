using System.Globalization;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Tests.Files;
using Recipe.Documents.Tests.Plans;
using Recipe.Documents.Writing.Pdf;
using Xunit.Abstractions;

namespace Recipe.Documents.Tests;

/// <summary>The bytes of a PDF, read by Poppler (Debian package poppler-utils), which knows nothing of the program that wrote them.</summary>
public sealed partial class PdfTests(ITestOutputHelper output)
{
    private const string Package = "poppler-utils";

    private bool IsThere => Tool.IsThere("pdftotext", Package, output);

    [Fact]
    public void The_same_papers_give_the_same_bytes_in_any_thread()
    {
        var expected = Cases.All.ToDictionary(input => input.Key, input => Write(input.Value));
        Parallel.ForEach(Cases.All.Concat(Cases.All), input => Assert.Equal(expected[input.Key], Write(input.Value)));
        Assert.NotEqual(expected["hatch-lid"], Write(HatchLid.Input with { Serial = "7" }));
    }

    [Fact]
    public void What_a_reader_finds_on_each_page_is_what_was_laid_there()
    {
        if (!IsThere)
        {
            return;
        }

        foreach (var (name, input) in Cases.All)
        {
            var documents = Built(input);
            var pages = Tool.With(PdfWriter.Write(documents), "pdf", path => Tool.Run("pdftotext", "-raw", path, "-")).Split('\f');
            var laid = documents.SelectMany(document => PdfPages.Of(document).Pages).ToList();
            Assert.Equal(laid.Count, pages.Length - 1);
            for (var i = 0; i < laid.Count; i++)
            {
                // A reader may put the pieces of a line in another order: the letters are the same ones.
                var expected = laid[i].Shapes.OfType<TextShape>().SelectMany(text => Texts.Packed(PdfText.OneLine(text.Text, text.Strong))).Order();
                Assert.Equal(string.Concat(expected), string.Concat(Texts.Packed(pages[i]).Order()));
            }

            Assert.NotEmpty(name);
        }
    }

    [Fact]
    public void Every_sentence_can_be_searched_for()
    {
        if (!IsThere)
        {
            return;
        }

        var documents = Built(HatchLid.Input);
        var text = Texts.Packed(Tool.With(PdfWriter.Write(documents), "pdf", path => Tool.Run("pdftotext", "-raw", path, "-")));
        foreach (var paragraph in documents.SelectMany(document => document.Stations).SelectMany(station => station.Blocks).OfType<Paragraph>())
        {
            Assert.Contains(Texts.Packed(paragraph.Text.Plain), text, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Every_page_says_which_page_of_its_paper_it_is_and_bookmarks_lead_to_papers_and_stations()
    {
        if (!IsThere)
        {
            return;
        }

        var documents = Built(HatchLid.Input);
        var pdf = PdfWriter.Write(documents);
        var pages = Tool.With(pdf, "pdf", path => Tool.Run("pdftotext", path, "-")).Split('\f');
        var xml = Tool.With(pdf, "pdf", path => Tool.Run("pdftohtml", "-xml", "-i", "-stdout", path));
        var items = BookmarkOfXml().Matches(xml).Select(item => (int.Parse(item.Groups[1].Value, CultureInfo.InvariantCulture), System.Net.WebUtility.HtmlDecode(item.Groups[2].Value))).ToList();
        var expected = new List<(int, string)>();
        var first = 1;
        foreach (var document in documents)
        {
            var paper = PdfPages.Of(document);
            expected.Add((first, document.Kind));
            expected.AddRange(document.Stations.Select((station, i) => (first + paper.Starts[i], document.ForTheBench ? $"{i + 1}. {station.Title}" : station.Title)));
            for (var i = 0; i < paper.Pages.Count; i++)
            {
                Assert.Contains($"{document.Kind} page {i + 1} of {paper.Pages.Count}", pages[first - 1 + i], StringComparison.Ordinal);
            }

            first += paper.Pages.Count;
        }

        Assert.Equal(expected, items);
    }

    [Fact]
    public void It_says_what_it_is_and_when_it_was_printed_and_no_more_than_it_knows()
    {
        if (!IsThere)
        {
            return;
        }

        var dated = Info(HatchLid.Input with { Printed = new DateOnly(2026, 3, 9), Revision = "abc1234" });
        Assert.Contains("revision abc1234", dated, StringComparison.Ordinal);
        Assert.Matches(@"CreationDate:\s+Mon Mar  9 00:00:00 2026 UTC", dated);
        Assert.Matches(@"Title:\s+\S", dated);
        var undated = Info(HatchLid.Input with { Printed = null, Revision = null });
        Assert.Contains("no revision", undated, StringComparison.Ordinal);
        Assert.DoesNotContain("Date:", undated, StringComparison.Ordinal);

        static string Info(PaperInput input) => Tool.With(Write(input), "pdf", path =>
        {
            var start = Tool.Run("env", "TZ=UTC", "pdfinfo", path);
            XDocument.Parse(Tool.Run("pdfinfo", "-meta", path));
            return start;
        });
    }

    [Fact]
    public void Its_data_about_itself_is_xml_whatever_a_name_holds()
    {
        if (!IsThere)
        {
            return;
        }

        foreach (var text in (string[])["</dc:title>&<x>", "\U0001F527 \u05E9", "\u0001]]>", new string('&', 300)])
        {
            var meta = Tool.With(PdfWriter.Write(Built(Hostile.With(text))), "pdf", path => Tool.Run("pdfinfo", "-meta", path));
            Assert.NotNull(XDocument.Parse(meta).Root);
        }
    }

    [Fact]
    public void A_reader_sees_no_two_words_on_each_other_and_none_beyond_the_edge()
    {
        if (!IsThere)
        {
            return;
        }

        foreach (var size in (Model.PaperSize[])[Model.PaperSize.A4, Model.PaperSize.Letter])
        {
            foreach (var (name, input) in Cases.All)
            {
                var html = Tool.With(Write(input with { Paper = size }), "pdf", path => Tool.Run("pdftotext", "-bbox", path, "-"));
                foreach (var page in XDocument.Parse(html).Descendants().Where(element => element.Name.LocalName == "page"))
                {
                    var (width, height) = (Number(page, "width"), Number(page, "height"));
                    var words = page.Elements().Select(word => (Text: word.Value, Left: Number(word, "xMin"), Top: Number(word, "yMin"), Right: Number(word, "xMax"), Bottom: Number(word, "yMax"))).ToList();
                    Assert.NotEmpty(words);
                    for (var i = 0; i < words.Count; i++)
                    {
                        var a = words[i];
                        if (a.Left < 50 || a.Top < 0 || a.Right > width - 20 || a.Bottom > height)
                        {
                            Assert.Fail($"{name} {size}: {a}");
                        }

                        for (var k = 0; k < i; k++)
                        {
                            // The box of a word is as high as the font, higher than its letters: lines may share a third of it.
                            var b = words[k];
                            var shared = Math.Min(a.Bottom, b.Bottom) - Math.Max(a.Top, b.Top);
                            if (Math.Min(a.Right, b.Right) - Math.Max(a.Left, b.Left) > 0.5 && shared > 0.35 * Math.Min(a.Bottom - a.Top, b.Bottom - b.Top))
                            {
                                Assert.Fail($"{name} {size}: {a} and {b}");
                            }
                        }
                    }
                }
            }
        }
    }

    [Fact]
    public void Letters_are_as_wide_as_the_font_makes_them()
    {
        if (!IsThere)
        {
            return;
        }

        // Poppler takes the widths from the font in the file.
        string[] words = ["mmmmmmmm", "iiiiiiii", "118.25", "Wet-lay-up", "\u00B145\u00B0", "Ma\u00DFband"];
        var document = PaperOf([.. words.Select(word => (Block)new Heading(word))]);
        var html = Tool.With(PdfWriter.Write([document]), "pdf", path => Tool.Run("pdftotext", "-bbox", path, "-"));
        var seen = XDocument.Parse(html).Descendants().Where(element => element.Name.LocalName == "word").ToList();
        foreach (var word in words)
        {
            var box = seen.Single(element => element.Value == word);

            // The file holds widths in thousandths of the size of type, cut off.
            Assert.Equal(Number(box, "xMax") - Number(box, "xMin"), Lettering.WidthMm(word, 12, strong: true) * 72 / 25.4, word.Length * 0.012);
        }
    }

    [Fact]
    public void What_the_font_lacks_is_seen_to_be_missing()
    {
        if (!IsThere)
        {
            return;
        }

        var document = PaperOf(new Paragraph("fix \U0001F527 now"), new Paragraph("a\u0007b"), new Paragraph("\u4E2D"));
        var text = Tool.With(PdfWriter.Write([document]), "pdf", path => Tool.Run("pdftotext", path, "-"));
        Assert.Contains("fix \uFFFD now", text, StringComparison.Ordinal);
        Assert.Contains("a\uFFFDb", text, StringComparison.Ordinal);
        Assert.Equal(3, text.Count(c => c == '\uFFFD'));
        Assert.True(Fonts.FontFile.Regular.Has(new System.Text.Rune(0xFFFD)) && Fonts.FontFile.Bold.Has(new System.Text.Rune(0xFFFD)));
    }

    [Fact]
    public void A_drawing_is_drawn_with_every_fill_and_pen()
    {
        if (!IsThere)
        {
            return;
        }

        var fills = Enum.GetValues<Fill>();
        var shapes = fills.SelectMany((fill, i) => (Shape[])
        [
            PathShape.Box(i * 12, 5, 10, 10, Pen.Thin, fill),
            new CircleShape(new Spot((i * 12) + 5, 25), 5, new Pen(0.4, Dashed: true), fill),
            new TextShape(new Spot((i * 12) + 5, 40), fill.ToString(), 7, Anchor.Middle),
        ]);
        var drawing = new Drawing("fills", "Fills", "All fills.", 100, 60, [.. shapes, new TextShape(new Spot(98, 50), "upright", 9, Upright: true)]);
        var paper = PaperOf(drawing);
        var pdf = PdfWriter.Write([paper]);
        var top = PdfPages.Of(paper).Pages[0].Shapes.OfType<PathShape>().First(path => path.Fill == Fill.Pale).Points.Min(point => point.Y);
        var text = Tool.With(pdf, "pdf", path => Tool.Run("pdftotext", path, "-"));
        Assert.All(fills, fill => Assert.Contains(fill.ToString(), text, StringComparison.Ordinal));
        Assert.Contains("upright", text, StringComparison.Ordinal);

        // Read back as grey dots: what is filled is darker than what is not, by its order of darkness.
        var dots = Tool.With(pdf, "pdf", path =>
        {
            var root = path[..^".pdf".Length];
            Tool.Run("pdftoppm", "-gray", "-r", "254", "-singlefile", path, root);
            return File.ReadAllBytes(root + ".pgm");
        });
        var darkness = fills.Select((_, i) => Darkness(dots, PdfPages.Left + (i * 12) + 1, top + 1, 8)).ToList();
        Assert.Equal(0, darkness[(int)Fill.None], 0.001);
        Assert.Equal(0, darkness[(int)Fill.White], 0.001);
        Assert.InRange(darkness[(int)Fill.Pale], 0.05, 0.09);
        Assert.InRange(darkness[(int)Fill.Mid], 0.24, 0.30);
        Assert.InRange(darkness[(int)Fill.Black], 0.99, 1);

        // Lines of 0.2 mm every 2 mm along an axis are 0.2 / 1.414 = 14 % of the area; twice that but for the crossings both ways; dots
        // of radius 0.22 mm, two to a square of 1.6 mm, are 12 %.
        Assert.InRange(darkness[(int)Fill.Hatched], 0.10, 0.18);
        Assert.InRange(darkness[(int)Fill.CrossHatched], 0.20, 0.32);
        Assert.InRange(darkness[(int)Fill.Dotted], 0.08, 0.16);
    }

    // Mean darkness, 0 to 1, of a square at 10 dots a millimetre.
    private static double Darkness(byte[] pgm, double leftMm, double topMm, double sideMm)
    {
        var header = HeaderOfPgm().Match(System.Text.Encoding.Latin1.GetString(pgm, 0, 30));
        var width = int.Parse(header.Groups[1].Value, CultureInfo.InvariantCulture);
        var (left, top, side) = ((int)(leftMm * 10), (int)(topMm * 10), (int)(sideMm * 10));
        var sum = 0.0;
        for (var y = top; y < top + side; y++)
        {
            for (var x = left; x < left + side; x++)
            {
                sum += 255 - pgm[header.Length + (y * width) + x];
            }
        }

        return sum / 255 / side / side;
    }

    private static byte[] Write(PaperInput input) => PdfWriter.Write(Built(input));

    private static List<Document> Built(PaperInput input) => [.. Cases.Built(input)];

    private static double Number(XElement element, string name) => double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static Document PaperOf(params Block[] blocks) => new()
    {
        Kind = "Test",
        Identity = new Identity("Part", "part", null, null, "part.recipe", OfOneBuild: false),
        Paper = Model.PaperSize.A4,
        ForTheBench = false,
        Stations = [new Station("Station", [.. blocks])],
    };

    [GeneratedRegex("<item page=\"([0-9]+)\">(.*?)</item>", RegexOptions.CultureInvariant)]
    private static partial Regex BookmarkOfXml();

    [GeneratedRegex(@"^P5\s+([0-9]+)\s+([0-9]+)\s+255\s", RegexOptions.CultureInvariant)]
    private static partial Regex HeaderOfPgm();
}
