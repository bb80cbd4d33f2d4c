using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>What stands in the cells of a table, in the sizes of its use.</summary>
internal sealed class PdfCells(TableUse use, PdfMeasures measures)
{
    /// <summary>Room between the line of a cell and its content, mm.</summary>
    public double Side => IsSteps ? 1.5 : 1.2;

    /// <summary>Room above and below the content, mm.</summary>
    public double Pad => IsSteps ? measures.Gap(0.4) : 0.2 + measures.Gap(0.5);

    public double Size => IsSteps ? measures.Body : measures.IsBench ? 11 : 9.5;

    public double HeadSize => measures.IsBench ? 11 : 9.5;

    public bool IsSteps => use == TableUse.Steps && measures.IsBench;

    /// <summary>The widest piece of a column's head and the whole of it, lines of the cell included.</summary>
    public (double Least, double Whole) Head(Column column) => Padded(PdfLines.Widths([new(column.Title, true, HeadSize)]));

    /// <summary>The widest piece of a cell and the whole of it, lines of the cell included.</summary>
    public (double Least, double Whole) Widths(Cell cell, bool isStrong) => cell switch
    {
        TextCell text => Padded(Larger(PdfLines.Widths(PdfLines.Inks(text.Text, Size, isStrong)), Note(text.Note))),
        BigCell big => Padded(Larger(PdfLines.Widths(PdfNumbers.Inks(big.Value, measures.Big)), Note(big.Note))),
        BlankCell => (PdfMeasures.BlankWide, PdfMeasures.BlankWide),
        TickCell tick => Padded(Ticks(tick)),
        RingCell => Padded((15, 15)),
        DirectionCell directions => Padded(directions.Directions.IsDefaultOrEmpty ? (0, 0) : Larger([.. directions.Directions.Select(WidthOf)])),
        _ => throw new ArgumentException($"No PDF for {cell.GetType().Name}.", nameof(cell)),
    };

    /// <summary>The content of a cell in a width inside its lines.</summary>
    public Piece Of(Cell cell, double width, Align align, bool isStrong) => cell switch
    {
        TextCell text => Stack(text.Text.IsEmpty && text.Note is not null ? null : TextPiece.Of(PdfLines.Inks(text.Text, Size, isStrong), width, Size, measures.Leading, align), text.Note, width, align),
        BigCell big => Stack(PdfNumbers.Big(big.Value, width, measures, align), big.Note, width, align),
        BlankCell => new StackPiece([]),
        TickCell tick => new StackPiece([.. TickRows(tick, width, align)]),
        RingCell ring => PdfMarks.Ring(ring.Number, width),
        DirectionCell directions => new StackPiece([.. directions.Directions.Select(direction => PdfMarks.Direction(direction, measures, width))]),
        _ => throw new ArgumentException($"No PDF for {cell.GetType().Name}.", nameof(cell)),
    };

    private StackPiece Stack(Piece? first, string? note, double width, Align align) => new(
        [.. new[] { first, note is null ? null : TextPiece.Of(note, width, measures.Note, measures.Leading, align: align) }.OfType<Piece>()]);

    private IEnumerable<Piece> TickRows(TickCell tick, double width, Align align)
    {
        var rows = new List<List<Beside>>();
        var at = 0.0;
        var last = 0.0;
        foreach (var word in tick.Boxes)
        {
            var wide = word.Length == 0 ? measures.TickSide : Math.Min(measures.TickSide + 2 + PdfLines.Widths([new(word, false, Size)]).Whole, width);
            if (rows.Count == 0 || at + wide > width + 1e-6)
            {
                rows.Add([]);
                at = 0;
            }

            rows[^1].Add(new Beside(at, PdfMarks.Tick(measures.TickSide)));
            if (word.Length > 0)
            {
                var room = Math.Max(wide - measures.TickSide - 2, 5);
                rows[^1].Add(new Beside(at + measures.TickSide + 2, TextPiece.Of(word, room + 0.01, Size, measures.Leading)));
            }

            last = at + wide;
            at += wide + 1.5;
        }

        foreach (var row in rows)
        {
            var shift = align == Align.Centre && rows.Count == 1 ? Math.Max(0, (width - last) / 2) : align == Align.Right && rows.Count == 1 ? Math.Max(0, width - last) : 0;
            yield return new RowPiece([.. row.Select(item => item with { At = item.At + shift })]) { After = 0.5 };
        }
    }

    private (double, double) Ticks(TickCell tick)
    {
        var widths = tick.Boxes.Select(word => word.Length == 0 ? measures.TickSide : measures.TickSide + 2 + PdfLines.Widths([new(word, false, Size)]).Whole).ToList();
        return widths.Count == 0 ? (0, 0) : (widths.Max(), widths.Sum() + (1.5 * (widths.Count - 1)));
    }

    private (double, double) WidthOf(Direction direction)
    {
        var (least, whole) = Larger(PdfLines.Widths([new(Angles.Text(direction.Orientation), true, measures.Body)]), Note(direction.Label));
        return (13.5 + least, 13.5 + whole);
    }

    private (double, double) Note(string? note) => note is null ? (0, 0) : PdfLines.Widths([new(note, false, measures.Note)]);

    private static (double, double) Larger(params (double Least, double Whole)[] widths) => (widths.Max(w => w.Least), widths.Max(w => w.Whole));

    // A hair more than the content, so that it is not broken for the errors of adding up.
    private (double, double) Padded((double Least, double Whole) widths) => (widths.Least + (2 * Side) + 0.05, widths.Whole + (2 * Side) + 0.05);
}
