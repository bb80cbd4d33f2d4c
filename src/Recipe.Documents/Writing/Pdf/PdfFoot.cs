using Recipe.Documents.Layout;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>The foot of every page: what it belongs to, and its number of how many.</summary>
internal static class PdfFoot
{
    private const double Size = 9;

    /// <summary>Where the base line of the foot's first line stands above the edge of the paper, mm; printers reach to about 5 mm.</summary>
    private const double Above = 8.4;

    public static void Draw(Sheet sheet, Document document, int station, int last, int page, int pages, double width, double height)
    {
        var number = document.Identity.Wording.Say($"{document.Kind} page {Numbers.Whole(page)} of {Numbers.Whole(pages)}");
        var numberWide = PdfLines.WidthOf(number, false, Size);
        var room = width - PdfPages.Left - PdfPages.Right - numberWide - 5;
        var lines = PdfLines.Break([new(Text(document, station, last), false, Size)], room).Take(2).ToList();
        for (var i = 0; i < lines.Count; i++)
        {
            foreach (var stretch in lines[i].Stretches)
            {
                sheet.Text(PdfPages.Left + stretch.At, height - Above + (i * 3.6), stretch.Text, Size);
            }
        }

        sheet.Text(width - PdfPages.Right, height - Above, number, Size, anchor: Anchor.End);
    }

    /// <summary>The pieces of the foot; pairs of words that belong together are not parted.</summary>
    private static string Text(Document document, int station, int last)
    {
        var identity = document.Identity;
        var say = identity.Wording;
        var pieces = new List<string> { PdfHead.Short(identity.Part, 40) };
        if (identity.PartName.Length > 0 && identity.PartName != identity.Part)
        {
            pieces.Add(PdfHead.Short(identity.PartName, 30));
        }

        pieces.Add(Held(IdentityLine.Revision(identity, identity.Revision is { } revision ? PdfHead.Short(revision, 16) : null)));
        if (identity.Serial is not null || identity.OfOneBuild)
        {
            pieces.Add(Held(say.Say($"serial {PdfHead.Short(identity.Serial ?? "____________", 30)}")));
        }

        if (document.ForTheBench && document.Stations.Length > 0)
        {
            pieces.Add(Held(last > station ? say.Say($"stations {Numbers.Whole(station + 1)} to {Numbers.Whole(last + 1)}") : say.Say($"station {Numbers.Whole(station + 1)}")));
        }

        if (identity.Printed is { } day)
        {
            pieces.Add(Held(say.Say($"printed {Numbers.Day(day)}")));
        }

        if (identity.OfOneBuild)
        {
            pieces.Add(Held(say.Say("destroy after build")));
        }

        return string.Join(" · ", pieces);
    }

    private static string Held(string text) => text.Replace(' ', '\u00A0');
}
