using System.Text;
using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;
using Recipe.Documents.Writing;
using Recipe.Documents.Writing.Pdf;
using Recipe.Model;

namespace Recipe.Documents.CutPlans;

/// <summary>A cut plan in true size on pages of paper, as PDF and as HTML.</summary>
internal static class CutPages
{
    /// <summary>The pages as PDF: for each sheet its page in front, then its tiles; a bookmark for each sheet.</summary>
    public static byte[] WritePdf(CutPlan plan, Identity identity, PaperSize paper)
    {
        var document = DocumentOf(plan, identity, paper);
        return PdfWriter.Write([document], Lay);

        PdfPaper Lay(Document laid)
        {
            var (width, height) = PdfPages.SizeOf(laid);
            var (pages, starts) = (new List<PdfPage>(), new List<int>());
            for (var i = 0; i < plan.Sheets.Length; i++)
            {
                starts.Add(pages.Count);
                var station = i;
                pages.AddRange(PagesOf(plan, plan.Sheets[i], width, height).Select(page => new PdfPage(page.Shapes, station)));
            }

            return new PdfPaper(laid, width, height, pages, starts);
        }
    }

    /// <summary>The same pages as one HTML file, each an SVG of the size of the paper.</summary>
    public static string WriteHtml(CutPlan plan, Identity identity, PaperSize paper)
    {
        var document = DocumentOf(plan, identity, paper);
        var (width, height) = PdfPages.SizeOf(document);
        var (wide, high) = (Numbers.AtMost(width, 3), Numbers.AtMost(height, 3));
        var html = new StringBuilder("<!DOCTYPE html>\n<html lang=\"en-GB\">\n<head>\n<meta charset=\"utf-8\" />\n")
            .Append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; style-src 'unsafe-inline'\" />\n")
            .Append($"<title>{HtmlText.Escape(document.Title)}</title>\n")
            .Append($"<style>\n@page {{ size: {wide}mm {high}mm; margin: 0 }}\nbody {{ margin: 0 }}\nsvg {{ display: block; break-after: page }}\n</style>\n</head>\n<body>\n");
        foreach (var sheet in plan.Sheets)
        {
            foreach (var (name, shapes) in PagesOf(plan, sheet, width, height))
            {
                html.Append(SvgWriter.Write(new Drawing("tile", $"{plan.Name}: {sheet.Roll}, {name}", CutShapes.Caution, width, height, [.. shapes]))).Append('\n');
            }
        }

        return html.Append("</body>\n</html>\n").ToString();
    }

    private static Document DocumentOf(CutPlan plan, Identity identity, PaperSize paper) => new()
    {
        Kind = "Cutting patterns",
        Identity = identity,
        Paper = paper,
        ForTheBench = false,
        Stations = [.. plan.Sheets.Select(sheet => new Station(sheet.Roll, []))],
    };

    private static IEnumerable<(string Name, IReadOnlyList<Shape> Shapes)> PagesOf(CutPlan plan, CutSheet sheet, double width, double height)
    {
        var tiles = new CutTiles(plan, sheet, width, height);
        yield return ("check square and map", tiles.Front());
        foreach (var tile in tiles.Tiles)
        {
            yield return ($"tile {CutTiles.NameOf(tile)}", tile.Shapes);
        }
    }
}
