using Recipe.Documents.Languages;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>Turns the blocks of a station into pieces for the pages.</summary>
internal static class PdfBlocks
{
    public static List<Piece> Of(IEnumerable<Block> blocks, double width, double height, PdfMeasures measures, Wording say)
    {
        var pieces = new List<Piece>();
        Block? before = null;
        foreach (var block in blocks)
        {
            // Two hold points in a row need not stand on one page.
            if ((block is IfBox || (block is HoldPoint && before is not HoldPoint)) && pieces.Count > 0 && pieces[^1].Keep < Keep.Closely)
            {
                pieces[^1].Keep = Keep.Closely;
            }

            pieces.AddRange(Of(block, width, height, measures, say));
            before = block;
        }

        return pieces;
    }

    private static IEnumerable<Piece> Of(Block block, double width, double height, PdfMeasures measures, Wording say) => block switch
    {
        Heading heading => [PdfNumbers.Heading(heading.Text, width, measures)],
        Paragraph paragraph => [Of(paragraph, width, measures)],
        Facts facts => PdfNumbers.Facts(facts.Items, width, measures),
        KeyNumbers numbers => PdfNumbers.Panel(numbers, width, measures),
        HoldPoint hold => [PdfBoxes.Hold(hold, width, measures, say)],
        Caution caution => [PdfBoxes.Caution(caution, width, measures)],
        IfBox box => [PdfBoxes.If(box, width, measures, say)],
        BulletList list => PdfBoxes.List(list, width, measures),
        TickList list => PdfBoxes.Ticks(list.Items, width, measures),
        Table table => PdfTables.Of(table, width, measures),
        Drawing drawing => Of(drawing, width, height, measures),
        _ => throw new ArgumentException($"No PDF for {block.GetType().Name}.", nameof(block)),
    };

    private static TextPiece Of(Paragraph paragraph, double width, PdfMeasures measures)
    {
        var size = paragraph.Fine ? measures.Fine : measures.Body;
        var text = TextPiece.Of(PdfLines.Inks(paragraph.Text, size), width, size, measures.Leading);
        text.After = measures.Gap(2);
        return text;
    }

    // In its own size; smaller only when it would not fit on a page.
    private static IEnumerable<Piece> Of(Drawing drawing, double width, double height, PdfMeasures measures)
    {
        var caption = TextPiece.Of(drawing.Title, width, measures.Body, measures.Leading, strong: true);
        (caption.After, caption.Keep) = (measures.Gap(1), Keep.Firmly);
        yield return caption;
        var room = height - caption.Height - 2;
        var scale = Math.Min(1, Math.Min(width / drawing.WidthMm, room / drawing.HeightMm));
        yield return new MarkPiece(drawing.HeightMm * scale, (sheet, x, y) => sheet.Within(x, y, scale, () =>
        {
            foreach (var shape in drawing.Shapes)
            {
                sheet.Add(shape);
            }
        }))
        { After = measures.Gap(3) };
    }
}
