using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>The heads of papers and stations.</summary>
internal static class PdfHead
{
    /// <summary>The heading of a paper and what it says about itself.</summary>
    public static IReadOnlyList<Piece> Title(Document document, double width, PdfMeasures measures)
    {
        var title = TextPiece.Of(document.Title, width, measures.Title, 1.15, strong: true);
        title.Keep = Keep.Firmly;
        var identity = TextPiece.Of(IdentityLine.Of(document.Identity), width, 9, 1.2);
        identity.After = measures.Gap(1);
        return [title, identity];
    }

    /// <summary>The heading of a section at the desk; <paramref name="drawn"/> is called when its page is known.</summary>
    public static Piece Section(string title, double width, PdfMeasures measures, Action drawn)
    {
        var text = TextPiece.Of(title, width, measures.Station, 1.15, strong: true);
        return new FramedPiece(text, 0, 0, 1.2, (sheet, x, y, height) =>
        {
            drawn();
            sheet.Area(x, y + height - 0.8, width, 0.8, Fill.Black);
        })
        { Before = 5, After = 2, Keep = Keep.Firmly };
    }

    /// <summary>
    /// The head of a page at the bench: number and name of the station, the part and its revision, and the serial number or a space
    /// for it.
    /// </summary>
    public static Piece Of(Document document, int index, double width, PdfMeasures measures, bool isContinued)
    {
        const double identityWide = 30, serialWide = 52, gap = 3;
        var identity = document.Identity;
        var say = identity.Wording;
        var number = Number(index + 1, measures);
        var titleAt = number.Width + 3;
        var serialAt = width - serialWide;
        var identityAt = serialAt - gap - identityWide;
        var title = TextPiece.Of(isContinued ? say.Say($"{document.Stations[index].Title} (continued)") : document.Stations[index].Title, identityAt - titleAt - gap, measures.Station, 1.1, strong: true);
        string[] about =
        [
            Short(identity.Part, 60),
            IdentityLine.Revision(identity, identity.Revision is { } revision ? Short(revision, 24) : null),
            say.Say($"station {index + 1} of {document.Stations.Length}"),
        ];
        var lines = new StackPiece([.. about.Select(text => TextPiece.Of(text, identityWide, 9, 1.2, align: Align.Right))]);
        var row = new RowPiece([new(0, number.Piece), new(titleAt, title), new(identityAt, lines), new(serialAt, Serial(identity.Serial, serialWide, say.Say("Serial")))]);
        return new FramedPiece(row, 0, 0, measures.Gap(1.5) + 1, (sheet, x, y, height) => sheet.Area(x, y + height - 1, width, 1, Fill.Black)) { After = 0.5 + measures.Gap(2) };
    }

    /// <summary>The head of a further station on a sheet: number and name; the sheet has said the rest.</summary>
    public static Piece Below(Document document, int index, double width, PdfMeasures measures)
    {
        var number = Number(index + 1, measures);
        var titleAt = number.Width + 3;
        var title = TextPiece.Of(document.Stations[index].Title, width - titleAt, measures.Station, 1.1, strong: true);
        var row = new RowPiece([new(0, number.Piece), new(titleAt, title)]);
        return new FramedPiece(row, 0, 0, measures.Gap(1.5) + 1, (sheet, x, y, height) => sheet.Area(x, y + height - 1, width, 1, Fill.Black)) { Before = 2 + measures.Gap(4), After = 0.5 + measures.Gap(2) };
    }

    /// <summary>The beginning of a text that is too long for its place.</summary>
    public static string Short(string text, int most) => text.Length <= most ? text : text[..(most - 1)].TrimEnd() + "…";

    private static (Piece Piece, double Width) Number(int number, PdfMeasures measures)
    {
        var text = Quantities.Numbers.Whole(number);
        var wide = Math.Max(11, PdfLines.WidthOf(text, true, measures.Station) + 4.6);
        var high = measures.Station * 1.15 * 25.4 / 72 + 1;
        return (new MarkPiece(high, (sheet, x, y) =>
        {
            sheet.Frame(x, y, wide, high, new Pen(0.8));
            sheet.Text(x + (wide / 2), y + (high / 2) + (0.365 * measures.Station * 25.4 / 72), text, measures.Station, strong: true, Anchor.Middle);
        }), wide);
    }

    private static RowPiece Serial(string? serial, double width, string what)
    {
        const double word = 12;
        var wide = width - word;
        return new RowPiece([
            new Beside(0, TextPiece.Of(what, word, 9, 1.2)),
            new Beside(word, new MarkPiece(PdfMeasures.BlankHigh, (sheet, x, y) =>
            {
                sheet.Frame(x, y, wide, PdfMeasures.BlankHigh, new Pen(0.5));
                if (serial is not null)
                {
                    var text = PdfText.OneLine(Short(serial, 40), strong: true);
                    sheet.Text(x + (wide / 2), y + 7.8, text, PdfMarks.Fit(text, 14, wide - 3, strong: true), strong: true, Anchor.Middle);
                }
            })),
        ]);
    }
}
