using System.Xml;
using System.Xml.Linq;
using CsCheck;
using Recipe.Documents.Tests.Plans;

namespace Recipe.Documents.Tests;

/// <summary>The HTML papers: well-formed XML that runs nothing, asks for nothing and keeps the measures of a sheet at the bench.</summary>
public sealed class HtmlTests
{
    [Fact]
    public void A_paper_is_well_formed_and_runs_and_fetches_nothing()
    {
        foreach (var (name, kind) in Kinds)
        {
            IsHarmless(Papers.Write(Cases.All[name], kind, PaperFormat.Html));
        }
    }

    [Fact]
    public void No_name_can_leave_its_place()
    {
        var elements = ElementsOf(Hostile.With("plain, `code`"));
        Gen.OneOf(Hostile.Words, Gen.String).Sample(
            text =>
            {
                var input = Hostile.With(text);
                foreach (var kind in Papers.All)
                {
                    IsHarmless(Papers.Write(input, kind, PaperFormat.Html));
                }

                // A sentence may come in more pieces, never as an element that the paper does not have.
                Assert.Subset(elements, ElementsOf(input));
            },
            iter: 40);
    }

    [Fact]
    public void Every_station_of_a_traveller_says_part_revision_serial_and_its_number()
    {
        foreach (var (name, input) in Cases.All)
        {
            var stations = Parse(Papers.Write(input, Papers.Traveller, PaperFormat.Html)).Descendants("section").Where(section => ClassOf(section) == "station").ToList();
            Assert.NotEmpty(stations);
            for (var i = 0; i < stations.Count; i++)
            {
                var head = stations[i].Elements("header").Single().Value;
                Assert.Contains($"station {i + 1} of {stations.Count}", head, StringComparison.Ordinal);
                Assert.Contains("revision", head, StringComparison.Ordinal);
                Assert.Contains("Serial", head, StringComparison.Ordinal);
                Assert.False(string.IsNullOrWhiteSpace(stations[i].Descendants("h2").Single().Value), name);
            }
        }
    }

    [Fact]
    public void Every_page_of_a_traveller_says_its_number_of_how_many_and_to_destroy_it_after_the_build()
    {
        var css = CssOf(HatchLid.Input);
        Assert.Contains("counter(page) \" of \" counter(pages)", css, StringComparison.Ordinal);
        Assert.Contains("destroy after build", css, StringComparison.Ordinal);
        Assert.Contains("serial \\00005f", css, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(Model.PaperSize.A4, "size: A4 ")]
    [InlineData(Model.PaperSize.Letter, "size: letter ")]
    public void The_shop_chooses_the_paper(Model.PaperSize size, string rule)
    {
        var input = HatchLid.Input;
        var chosen = input with { Plan = input.Plan with { Shop = input.Plan.Shop! with { Paper = size } } };
        foreach (var kind in Papers.All)
        {
            Assert.Contains(rule, Papers.Write(chosen, kind, PaperFormat.Html), StringComparison.Ordinal);
        }
    }

    // Measures of a sheet read at a metre with gloves on: common practice.
    [Theory]
    [InlineData("\n.blank {", "height", 12, "mm")]
    [InlineData("\n.blank {", "min-width", 40, "mm")]
    [InlineData("table.steps tbody td.write {", "height", 12, "mm")]
    [InlineData("\n.tick {", "width", 10, "mm")]
    [InlineData("\n.tick {", "height", 10, "mm")]
    [InlineData("\n.big {", "font-size", 28, "pt")]
    [InlineData("\n.ring {", "font-size", 36, "pt")]
    [InlineData("body { font-size: 14pt", "font-size", 14, "pt")]
    [InlineData("h2 { font-size: 24pt", "font-size", 24, "pt")]
    public void The_measures_suit_gloves_and_a_metre_of_distance(string rule, string property, double least, string unit)
    {
        var css = CssOf(HatchLid.Input);
        var at = css.IndexOf(rule, StringComparison.Ordinal);
        Assert.True(at >= 0, rule);
        var block = css[at..css.IndexOf('}', at)];
        var value = block[(block.IndexOf($"{property}: ", StringComparison.Ordinal) + property.Length + 2)..];
        Assert.InRange(double.Parse(value[..value.IndexOf(unit, StringComparison.Ordinal)], System.Globalization.CultureInfo.InvariantCulture), least, 300);
    }

    [Fact]
    public void Columns_to_write_in_are_at_least_40_mm_wide_and_a_table_fits_the_narrower_paper()
    {
        // A4 is 210 mm wide, Letter 8.5 in (215.9 mm); 20 mm are for holes on the left, 10 mm stay free on the right.
        foreach (var (name, kind) in Kinds.Where(paper => paper.Kind.Build(Cases.All[paper.Name]).ForTheBench))
        {
            foreach (var table in Parse(Papers.Write(Cases.All[name], kind, PaperFormat.Html)).Descendants("table").Where(table => ClassOf(table).StartsWith("steps", StringComparison.Ordinal)))
            {
                var widths = table.Element("colgroup")!.Elements("col").Select(Width).ToList();
                Assert.InRange(widths.Sum(), 0, 210 - 30 - 15);
                foreach (var row in table.Descendants("tr"))
                {
                    var cells = row.Elements().ToList();
                    for (var i = 0; i < cells.Count && cells.Count == widths.Count; i++)
                    {
                        Assert.True(ClassOf(cells[i]) != "write" || widths[i] is 0 or >= 40, $"{name}: {cells[i]}");
                    }
                }
            }
        }
    }

    [Fact]
    public void Numbers_that_matter_stand_alone_in_their_element()
    {
        foreach (var big in Parse(Papers.Write(HatchLid.Input, Papers.Traveller, PaperFormat.Html)).Descendants().Where(element => ClassOf(element) == "big"))
        {
            Assert.InRange(big.Value.Length, 1, 14);
            Assert.DoesNotContain(big.ElementsAfterSelf().Take(1), next => ClassOf(next) == "big");
        }
    }

    [Fact]
    public void Shapes_and_words_carry_what_a_photocopy_would_lose()
    {
        var html = Papers.Write(RudderHalves.Input, Papers.Traveller, PaperFormat.Html);
        Assert.Contains("▲", html, StringComparison.Ordinal);
        Assert.Contains("● ", html.Replace("</span>", "", StringComparison.Ordinal), StringComparison.Ordinal);
        Assert.DoesNotMatch("(?<!-)color: #(?!000|fff)", html);
        Assert.DoesNotMatch("background: #(?!000|fff)", html);
    }

    private static IEnumerable<(string Name, PaperKind Kind)> Kinds => from name in Cases.All.Keys from kind in Papers.All where kind.AppliesTo(Cases.All[name]) select (name, kind);

    private static void IsHarmless(string html)
    {
        var page = Parse(html);
        Assert.DoesNotContain(page.Descendants(), element => element.Name.LocalName is "script" or "iframe" or "object" or "embed" or "link" or "img" or "a" or "form" or "base");
        Assert.DoesNotContain(page.Descendants().Attributes(), attribute =>
            attribute.Name.LocalName.StartsWith("on", StringComparison.OrdinalIgnoreCase) || attribute.Name.LocalName is "href" or "src" or "srcset" or "action" or "data");
        var style = page.Descendants("style").Single().Value;
        Assert.DoesNotContain("url(", style, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("@import", style, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("</", style, StringComparison.Ordinal);
        var policy = page.Descendants("meta").Single(meta => meta.Attribute("http-equiv")?.Value == "Content-Security-Policy");
        Assert.StartsWith("default-src 'none'", policy.Attribute("content")!.Value, StringComparison.Ordinal);
    }

    private static HashSet<string> ElementsOf(PaperInput input) =>
        [.. Papers.All.SelectMany(kind => Parse(Papers.Write(input, kind, PaperFormat.Html)).Descendants().Select(element => element.Name.LocalName))];

    private static string CssOf(PaperInput input) => Parse(Papers.Write(input, Papers.Traveller, PaperFormat.Html)).Descendants("style").Single().Value;

    private static string ClassOf(XElement element) => element.Attribute("class")?.Value ?? "";

    private static double Width(XElement column) =>
        column.Attribute("style")?.Value is { } style ? double.Parse(style["width:".Length..^"mm".Length], System.Globalization.CultureInfo.InvariantCulture) : 0;

    // The document type names no DTD; a reader that follows none must still take every page.
    private static XElement Parse(string html)
    {
        using var reader = XmlReader.Create(new StringReader(html), new XmlReaderSettings { DtdProcessing = DtdProcessing.Ignore, XmlResolver = null });
        return XDocument.Load(reader).Root!;
    }
}
