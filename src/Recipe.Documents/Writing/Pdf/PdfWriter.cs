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
    public static byte[] Write(IReadOnlyList<Document> documents) => Write(documents, PdfPages.Of);

    /// <summary>Papers that are laid on pages in another way than most.</summary>
    public static byte[] Write(IReadOnlyList<Document> documents, Func<Document, PdfPaper> lay)
    {
        if (documents.Count == 0)
        {
            throw new ArgumentException("A PDF holds at least one paper.", nameof(documents));
        }

        var about = PdfAbout.Of(documents);
        using var pdf = new PdfDocument();
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

        var (operators, faces, resources) = (new PdfOperators(), PdfFace.Both(), new PdfDictionary(pdf));
        pdf.Internals.AddObject(resources);
        foreach (var document in documents)
        {
            // One after the other: what is laid on pages takes much more room than what is written of it.
            Add(pdf, lay(document), operators, faces, resources);
        }

        var fonts = new PdfDictionary(pdf);
        fonts.Elements["/R"] = faces.Regular.AddTo(pdf);
        fonts.Elements["/B"] = faces.Bold.AddTo(pdf);
        resources.Elements["/Font"] = fonts;

        pdf.Internals.FirstDocumentID = about.Id;
        pdf.Internals.SecondDocumentID = about.Id;
        using var stream = new MemoryStream();
        pdf.Save(stream, closeStream: false);
        return PdfBytes.Settle(stream.ToArray(), about);
    }

    // Fonts are embedded by ourselves: the library keeps its own in tables of the whole process, which only one thread may use at a time.
    private static void Add(PdfDocument pdf, PdfPaper paper, PdfOperators operators, (PdfFace Regular, PdfFace Bold) faces, PdfDictionary resources)
    {
        var first = pdf.PageCount;
        foreach (var laid in paper.Pages)
        {
            var page = pdf.AddPage();
            page.Width = XUnit.FromMillimeter(paper.WidthMm);
            page.Height = XUnit.FromMillimeter(paper.HeightMm);
            var canvas = new PdfCanvas(operators, faces, paper.HeightMm);
            foreach (var shape in laid.Shapes)
            {
                canvas.Draw(shape);
            }

            var content = new PdfDictionary(pdf);
            content.CreateStream(operators.Take());
            content.Elements.SetName("/Filter", "/FlateDecode");
            pdf.Internals.AddObject(content);
            page.Elements["/Contents"] = content.Reference;
            page.Elements["/Resources"] = resources.Reference;
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
