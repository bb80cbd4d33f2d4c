using System.Collections.Immutable;
using Recipe.Documents.Languages;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>Hold points, cautions, the box for when it goes wrong, lists.</summary>
internal static class PdfBoxes
{
    private const double Side = 3;

    public static Piece Hold(HoldPoint hold, double width, PdfMeasures measures, Wording say)
    {
        var inner = width - (2 * Side) - 1;
        var pieces = new List<Piece> { Title("● ", say.Say($"{hold.Id} HOLD: {hold.Title}"), inner, measures) };
        pieces.AddRange(Ticks(hold.Checks, inner, measures));
        pieces.AddRange(Blanks(hold.Blanks(say), inner, measures));
        return new FramedPiece(new StackPiece(pieces), Side + 0.5, 3 + measures.Gap(1.2), 1.5 + measures.Gap(1.2), (sheet, x, y, height) =>
        {
            sheet.Frame(x, y, width, height, new Pen(0.5));
            sheet.Area(x, y, width, 3, Fill.Black);
            sheet.Area(x, y + height - 1.5, width, 1.5, Fill.Black);
        })
        { After = measures.Gap(2.5) };
    }

    public static Piece Caution(Caution caution, double width, PdfMeasures measures)
    {
        var inner = width - (2 * Side) - 2;
        Piece content = caution.Lines is [var line]
            ? TextPiece.Of([new("▲ " + caution.Title + ": ", true, measures.Body), .. PdfLines.Inks(line, measures.Body)], inner, measures.Body, measures.Leading)
            : new StackPiece([Title("▲ ", caution.Title, inner, measures), .. caution.Lines.Select(item => Bullet(PdfLines.Inks(item, measures.Body), inner, measures.Body, measures))]);
        return new FramedPiece(content, Side + 1, 1 + measures.Gap(1.2), 1 + measures.Gap(1.2), (sheet, x, y, height) => sheet.Frame(x, y, width, height, new Pen(1))) { After = measures.Gap(2.5) };
    }

    public static Piece If(IfBox box, double width, PdfMeasures measures, Wording say)
    {
        var inner = width - (2 * Side) - 1.2;
        var lines = box.Lines.Select(line => Bullet([new(line.If + ": ", true, measures.Body), new(line.Then, false, measures.Body)], inner, measures.Body, measures));
        return new FramedPiece(
            new StackPiece([Title("? ", say.Say("If it goes wrong"), inner, measures), .. lines]), Side + 0.6, 0.6 + measures.Gap(1.2), 0.6 + measures.Gap(1.2),
            (sheet, x, y, height) => sheet.Frame(x, y, width, height, new Pen(0.6, Dashed: true)))
        { After = measures.Gap(2.5) };
    }

    /// <summary>Points one below the other; fine print at the bench in two columns.</summary>
    public static IEnumerable<Piece> List(BulletList list, double width, PdfMeasures measures)
    {
        if (measures.IsBench && list.Fine)
        {
            const double gap = 6;
            var column = (width - gap) / 2;
            yield return new ColumnsPiece([.. list.Items.Select(item => Bullet(PdfLines.Inks(item, PdfMeasures.FineList), column, PdfMeasures.FineList, measures, 4))], column, gap, 1) { After = measures.Gap(2) };
            yield break;
        }

        var size = list.Fine ? measures.Fine : measures.Body;
        for (var i = 0; i < list.Items.Length; i++)
        {
            var piece = Bullet(PdfLines.Inks(list.Items[i], size), width, size, measures);
            var isLast = i == list.Items.Length - 1;
            (piece.Keep, piece.After) = (!isLast && list.Items.Length <= 8 ? Keep.Together : Keep.None, isLast ? measures.Gap(2) : 0);
            yield return piece;
        }
    }

    /// <summary>Things to tick, two beside each other.</summary>
    public static IEnumerable<Piece> Ticks(ImmutableArray<Phrase> items, double width, PdfMeasures measures)
    {
        const double gap = 5;
        var column = items.Length == 1 ? width : (width - gap) / 2;
        foreach (var pair in items.Chunk(2))
        {
            var cells = pair.Select((item, i) => new Beside(i * (column + gap), new RowPiece([
                new Beside(0, PdfMarks.Tick(measures.TickSide)),
                new Beside(measures.TickSide + 3, TextPiece.Of(PdfLines.Inks(item, measures.Body), column - measures.TickSide - 3, measures.Body, Math.Min(measures.Leading, 1.15)))])));
            yield return new RowPiece([.. cells]) { After = 0.2 + measures.Gap(0.8) };
        }
    }

    private static IEnumerable<Piece> Blanks(ImmutableArray<Blank> blanks, double width, PdfMeasures measures)
    {
        var most = blanks.Length == 4 ? 4 : 3;
        const double gap = 3;
        var column = (width - ((most - 1) * gap)) / most;
        foreach (var row in blanks.Chunk(most))
        {
            var cells = row.Select((blank, i) => new Beside(i * (column + gap), new StackPiece([
                TextPiece.Of(blank.What, column, measures.Note, measures.Leading), PdfMarks.Blank(blank, column)])));
            yield return new RowPiece([.. cells], isTop: true) { After = measures.Gap(1) };
        }
    }

    private static TextPiece Title(string mark, string text, double width, PdfMeasures measures)
    {
        var title = TextPiece.Of(mark + text, width, measures.Heading, 1.15, strong: true);
        title.After = measures.Gap(1);
        return title;
    }

    private static RowPiece Bullet(IEnumerable<PdfLines.Ink> inks, double width, double size, PdfMeasures measures, double indent = 6) => new RowPiece(
        [
            new Beside(indent - (0.28 * size), TextPiece.Of("•", indent, size, measures.Leading)),
            new Beside(indent, TextPiece.Of(inks, width - indent, size, measures.Leading)),
        ],
        isTop: true);
}
