using System.Globalization;
using PdfSharp.Drawing;
using PdfSharp.Pdf;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>
/// Writes papers into one PDF: each on its own pages with its own numbers, a bookmark for each paper and each station, text that can
/// be selected. The same papers give the same bytes.
/// </summary>
internal static class PdfWriter
{
    // The library keeps its fonts in tables of the whole process.
    private static readonly Lock Gate = new();

    public static byte[] Write(IReadOnlyList<Document> documents)
    {
        if (documents.Count == 0)
        {
            throw new ArgumentException("A PDF holds at least one paper.", nameof(documents));
        }

        var papers = documents.Select(PdfPages.Of).ToList();
        lock (Gate)
        {
            return Write(papers);
        }
    }

    private static byte[] Write(List<PdfPaper> papers)
    {
        PdfFonts.Install();
        var about = PdfAbout.Of([.. papers.Select(paper => paper.Document)]);
        using var pdf = new PdfDocument();
        pdf.Options.CompressContentStreams = true;
        pdf.Options.NoCompression = false;
        pdf.Info.Title = about.Title;
        pdf.Info.Subject = about.Subject;
        pdf.Info.Creator = "Recipe";
        if (about.Printed is { } day)
        {
            pdf.Info.CreationDate = day.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        }
        else
        {
            pdf.Info.Elements.Remove("/CreationDate");
        }

        var fonts = new Dictionary<(double, bool), XFont>();
        foreach (var paper in papers)
        {
            Add(pdf, paper, fonts);
        }

        pdf.Internals.FirstDocumentID = about.Id;
        pdf.Internals.SecondDocumentID = about.Id;
        using var stream = new MemoryStream();
        pdf.Save(stream, closeStream: false);
        return PdfBytes.Settle(stream.ToArray(), about);
    }

    private static void Add(PdfDocument pdf, PdfPaper paper, Dictionary<(double, bool), XFont> fonts)
    {
        var first = pdf.PageCount;
        foreach (var content in paper.Pages)
        {
            var page = pdf.AddPage();
            page.Width = XUnit.FromMillimeter(paper.WidthMm);
            page.Height = XUnit.FromMillimeter(paper.HeightMm);
            using var graphics = XGraphics.FromPdfPage(page);
            var canvas = new PdfCanvas(graphics, fonts);
            foreach (var shape in content.Shapes)
            {
                canvas.Draw(shape);
            }
        }

        var mark = pdf.Outlines.Add(Clean(paper.Document.Kind), pdf.Pages[first], opened: true);
        for (var i = 0; i < paper.Starts.Count; i++)
        {
            var title = paper.Document.Stations[i].Title;
            mark.Outlines.Add(Clean(paper.Document.ForTheBench ? $"{(i + 1).ToString(CultureInfo.InvariantCulture)}. {title}" : title), pdf.Pages[first + paper.Starts[i]], opened: false);
        }
    }

    private static string Clean(string text) => PlainText.Spaced(text);
}
