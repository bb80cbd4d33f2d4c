using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>Lines of text.</summary>
internal sealed class TextPiece(IReadOnlyList<Line> lines, double width, double sizePt, double leading, Align align = Align.Left) : Piece
{
    // Ascent and descent of the font, to set a line in the middle of its height as a browser does.
    private const double Ascent = 0.928;
    private const double Descent = 0.236;

    private double LineHeight => leading * sizePt * Lettering.MmPerPoint;

    public override double Height => lines.Count * LineHeight;

    public override bool PartsEasily => lines.Count > 6;

    /// <summary>Where the base line of the first line stands, from the top.</summary>
    public double Baseline => ((leading - Ascent - Descent) / 2 * sizePt * Lettering.MmPerPoint) + (Ascent * sizePt * Lettering.MmPerPoint);

    public static TextPiece Of(IEnumerable<PdfLines.Ink> text, double width, double sizePt, double leading, Align align = Align.Left) =>
        new(PdfLines.Break(text, width), width, sizePt, leading, align);

    public static TextPiece Of(string text, double width, double sizePt, double leading, bool strong = false, Align align = Align.Left) =>
        Of([new PdfLines.Ink(text, strong, sizePt)], width, sizePt, leading, align);

    public override void Draw(Sheet sheet, double x, double y)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var left = align switch
            {
                Align.Right => x + width - lines[i].WidthMm,
                Align.Centre => x + ((width - lines[i].WidthMm) / 2),
                _ => x,
            };
            foreach (var stretch in lines[i].Stretches)
            {
                sheet.Text(left + stretch.At, y + (i * LineHeight) + Baseline, stretch.Text, stretch.SizePt, stretch.Strong);
            }
        }
    }

    // No single line is left behind or sent ahead when there is a choice.
    public override (Piece Head, Piece Tail)? Part(double height)
    {
        var count = Math.Min((int)Math.Floor(height / LineHeight), lines.Count > 3 ? lines.Count - 2 : lines.Count - 1);
        return count < (lines.Count > 3 ? 2 : 1)
            ? null
            : (new TextPiece([.. lines.Take(count)], width, sizePt, leading, align) { Before = Before },
                new TextPiece([.. lines.Skip(count)], width, sizePt, leading, align) { After = After, Keep = Keep });
    }
}

/// <summary>Pieces one below the other.</summary>
internal sealed class StackPiece(IReadOnlyList<Piece> pieces) : Piece
{
    public override double Height => HeightOf(pieces);

    public override void Draw(Sheet sheet, double x, double y)
    {
        for (var i = 0; i < pieces.Count; i++)
        {
            y += i > 0 ? GapBetween(pieces[i - 1], pieces[i]) : 0;
            pieces[i].Draw(sheet, x, y);
            y += pieces[i].Height;
        }
    }

    public override (Piece Head, Piece Tail)? Part(double height)
    {
        var used = 0.0;
        for (var i = 0; i < pieces.Count; i++)
        {
            used += i > 0 ? GapBetween(pieces[i - 1], pieces[i]) : 0;
            if (used + pieces[i].Height <= height)
            {
                used += pieces[i].Height;
            }
            else if (pieces[i].Part(height - used) is { } parts)
            {
                return (new StackPiece([.. pieces.Take(i), parts.Head]), new StackPiece([parts.Tail, .. pieces.Skip(i + 1)]));
            }
            else
            {
                return i == 0 ? null : (new StackPiece([.. pieces.Take(i)]), new StackPiece([.. pieces.Skip(i)]));
            }
        }

        return null;
    }
}

/// <summary>Where a piece of a row stands.</summary>
/// <param name="At">Its left edge from the row's, mm.</param>
/// <param name="Piece">The piece.</param>
internal readonly record struct Beside(double At, Piece Piece);

/// <summary>Pieces side by side, in the middle of the row's height or at its top.</summary>
internal sealed class RowPiece(IReadOnlyList<Beside> items, double least = 0, bool isTop = false) : Piece
{
    public override double Height => Math.Max(least, items.Count == 0 ? 0 : items.Max(item => item.Piece.Height));

    public override void Draw(Sheet sheet, double x, double y)
    {
        foreach (var item in items)
        {
            item.Piece.Draw(sheet, x + item.At, y + (isTop ? 0 : (Height - item.Piece.Height) / 2));
        }
    }

    public override (Piece Head, Piece Tail)? Part(double height)
    {
        var parts = items.Select(item => (item.At, item.Piece, Parts: item.Piece.Height <= height ? null : item.Piece.Part(height))).ToList();
        return parts.Any(part => part.Piece.Height > height && part.Parts is null)
            ? null
            : (new RowPiece([.. parts.Select(part => new Beside(part.At, part.Parts?.Head ?? part.Piece))], isTop: true),
                new RowPiece([.. parts.Where(part => part.Parts is not null).Select(part => new Beside(part.At, part.Parts!.Value.Tail))], isTop: true));
    }
}

/// <summary>Something drawn in a known size.</summary>
internal sealed class MarkPiece(double height, Action<Sheet, double, double> draw) : Piece
{
    public override double Height => height;

    public override void Draw(Sheet sheet, double x, double y) => draw(sheet, x, y);
}

/// <summary>A piece with a frame round it; <paramref name="frame"/> draws it for a height. Parted, each part has one.</summary>
internal sealed class FramedPiece(Piece inner, double left, double top, double bottom, Action<Sheet, double, double, double> frame, double least = 0) : Piece
{
    public override double Height => Math.Max(least, top + inner.Height + bottom);

    public override void Draw(Sheet sheet, double x, double y)
    {
        frame(sheet, x, y, Height);
        inner.Draw(sheet, x + left, y + top);
    }

    public override (Piece Head, Piece Tail)? Part(double height) => inner.Part(height - top - bottom) is { } parts
        ? (new FramedPiece(parts.Head, left, top, bottom, frame) { Before = Before }, new FramedPiece(parts.Tail, left, top, bottom, frame) { After = After, Keep = Keep })
        : null;
}
