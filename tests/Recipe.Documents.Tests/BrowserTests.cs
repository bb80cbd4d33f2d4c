using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Recipe.Documents.Layout;
using Recipe.Documents.Tests.Files;
using Recipe.Documents.Writing;
using Recipe.Model;
using Xunit.Abstractions;

namespace Recipe.Documents.Tests;

/// <summary>The HTML papers in a browser (Debian package chromium), each as wide as the paper it is printed on.</summary>
public sealed partial class BrowserTests(ITestOutputHelper output)
{
    private const double DotsPerMm = 96 / 25.4;

    // One start of the browser for all papers: each lies in a frame of its own, and the program of the outer page measures it.
    private const string Measure = """
        addEventListener('load', () => {
          const found = [];
          for (const frame of document.querySelectorAll('iframe')) {
            const page = frame.contentDocument, wide = page.documentElement.clientWidth, over = [];
            for (const element of page.querySelectorAll('body *')) {
              const box = element.getBoundingClientRect();
              if (box.width > 0 && box.right > wide + 1 && !element.closest('svg *')) over.push(element.tagName + ' ' + element.className + ' ' + element.textContent.slice(0, 40));
            }
            const heights = [...page.querySelectorAll('section.station')].map(station => station.getBoundingClientRect().height);
            if (heights.length > 0) heights[0] += page.querySelector('section.station').getBoundingClientRect().top;
            // Words of a table at the bench that stand on two lines; what is longer than names are may be parted.
            const parted = [];
            const walker = page.createTreeWalker(page.body, NodeFilter.SHOW_TEXT);
            for (let node = walker.nextNode(); node; node = walker.nextNode()) {
              if (!node.parentElement.closest('table.steps td')) continue;
              for (const match of node.data.matchAll(/[\p{L}\d.]{2,12}/gu)) {
                const range = page.createRange();
                range.setStart(node, match.index);
                range.setEnd(node, match.index + match[0].length);
                if (new Set([...range.getClientRects()].map(box => Math.round(box.top))).size > 1) parted.push(match[0]);
              }
            }
            found.push({ id: frame.id, over, heights, parted });
          }
          document.body.textContent = '';
          const pre = document.createElement('pre');
          pre.textContent = JSON.stringify(found);
          document.body.append(pre);
        });
        """;

    [Fact]
    public void No_paper_is_wider_than_its_page()
    {
        if (!Tool.IsThere("chromium", "chromium", output))
        {
            return;
        }

        foreach (var measured in Measured([.. PdfPageTests.Documents()]))
        {
            Assert.True(measured.Over.Count == 0, $"{measured.About}: {string.Join("; ", measured.Over)}");
        }
    }

    [Fact]
    public void No_word_of_a_table_at_the_bench_is_parted()
    {
        if (!Tool.IsThere("chromium", "chromium", output))
        {
            return;
        }

        foreach (var measured in Measured([.. PdfPageTests.Documents().Where(paper => paper.Document.ForTheBench && !paper.Case.Contains("hostile", StringComparison.Ordinal))]))
        {
            Assert.True(measured.Parted.Count == 0, $"{measured.About}: {string.Join("; ", measured.Parted)}");
        }
    }

    [Fact]
    public void A_station_of_a_whole_plan_that_fits_its_page_in_the_pdf_fits_it_in_the_browser()
    {
        if (!Tool.IsThere("chromium", "chromium", output))
        {
            return;
        }

        foreach (var measured in Measured([.. PdfPageTests.Documents().Where(paper => paper.Document.ForTheBench && !paper.Case.Contains("hostile", StringComparison.Ordinal))]))
        {
            var (_, height) = Room(measured.Document);
            var laid = Writing.Pdf.PdfPages.Of(measured.Document);
            for (var i = 0; i < measured.Heights.Count; i++)
            {
                var pages = (i + 1 < laid.Starts.Count ? laid.Starts[i + 1] : laid.Pages.Count) - laid.Starts[i];
                output.WriteLine($"{measured.About}, {measured.Document.Stations[i].Title}: {measured.Heights[i] / DotsPerMm:F0} of {height:F0} mm in the browser, {pages} pages in the PDF");

                // Another face and wider letters: a browser may need some more room, and breaks where it may.
                Assert.True(pages > 1 || measured.Heights[i] <= 1.25 * height * DotsPerMm, $"{measured.About}: {measured.Document.Stations[i].Title}");
            }
        }
    }

    private sealed record Measurement(string About, Document Document, IReadOnlyList<string> Over, IReadOnlyList<double> Heights, IReadOnlyList<string> Parted);

    private static List<Measurement> Measured(List<(string Case, Document Document)> papers)
    {
        var page = new StringBuilder("<!DOCTYPE html><meta charset=\"utf-8\"><body>");
        foreach (var (document, i) in papers.Select((paper, i) => (paper.Document, i)))
        {
            // As printed: what is for the screen only is switched off.
            var html = HtmlWriter.Write(document).Replace("@media screen", "@media speech", StringComparison.Ordinal);
            var (width, _) = Room(document);
            page.Append(CultureInfo.InvariantCulture, $"<iframe id=\"{i}\" style=\"width:{width * DotsPerMm:F1}px;height:100px;border:0\" srcdoc=\"{html.Replace("&", "&amp;", StringComparison.Ordinal).Replace("\"", "&quot;", StringComparison.Ordinal)}\"></iframe>");
        }

        page.Append("<script>").Append(Measure).Append("</script>");
        var dom = Tool.With(Encoding.UTF8.GetBytes(page.ToString()), "html", path => Tool.Run(
            "chromium", "--headless", "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--hide-scrollbars", $"--user-data-dir={path}.profile", "--dump-dom", $"file://{path}"));
        using var json = JsonDocument.Parse(System.Net.WebUtility.HtmlDecode(Result().Match(dom).Groups[1].Value));
        var found = json.RootElement.EnumerateArray().ToList();
        Assert.Equal(papers.Count, found.Count);
        return [.. found.Select((item, i) => new Measurement(
            $"{papers[i].Case} {papers[i].Document.Kind}",
            papers[i].Document,
            [.. item.GetProperty("over").EnumerateArray().Select(text => text.GetString()!)],
            [.. item.GetProperty("heights").EnumerateArray().Select(height => height.GetDouble())],
            [.. item.GetProperty("parted").EnumerateArray().Select(text => text.GetString()!)]))];
    }

    // Without the margins of the page boxes.
    private static (double Width, double Height) Room(Document document)
    {
        var (width, height) = document.Paper == PaperSize.Letter ? (215.9, 279.4) : (210.0, 297.0);
        (width, height) = document.Landscape ? (height, width) : (width, height);
        return (width - 29, height - 19);
    }

    [GeneratedRegex("<pre>(.*?)</pre>", RegexOptions.Singleline | RegexOptions.CultureInvariant)]
    private static partial Regex Result();
}
