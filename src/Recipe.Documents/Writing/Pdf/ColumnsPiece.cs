namespace Recipe.Documents.Writing.Pdf;

/// <summary>Pieces in two columns of about the same height, read down the left one first.</summary>
internal sealed class ColumnsPiece(IReadOnlyList<Piece> pieces, double column, double gap, double between) : Piece
{
    private readonly int _left = Balance(pieces, between);

    public override double Height => Math.Max(HeightOfRange(0, _left), HeightOfRange(_left, pieces.Count));

    public override bool PartsEasily => pieces.Count > 2;

    public override void Draw(Sheet sheet, double x, double y)
    {
        var top = y;
        for (var i = 0; i < pieces.Count; i++)
        {
            if (i == _left)
            {
                (x, y) = (x + column + gap, top);
            }

            pieces[i].Draw(sheet, x, y);
            y += pieces[i].Height + between;
        }
    }

    /// <summary>As many from the beginning as fit into that height in two columns.</summary>
    public override (Piece Head, Piece Tail)? Part(double height)
    {
        var count = 0;
        while (count < pieces.Count && new ColumnsPiece([.. pieces.Take(count + 1)], column, gap, between).Height <= height)
        {
            count++;
        }

        if (count > 0 && count < pieces.Count)
        {
            return (Of(0, count), Of(count, pieces.Count));
        }

        return count == 0 && pieces.Count > 0 && pieces[0].Part(height) is { } parts
            ? (new ColumnsPiece([parts.Head], column, gap, between), new ColumnsPiece([parts.Tail, .. pieces.Skip(1)], column, gap, between) { After = After })
            : null;
    }

    // The shortest left column that is not shorter than the right one: the eye goes on to the right only once.
    private static int Balance(IReadOnlyList<Piece> pieces, double between)
    {
        var all = pieces.Sum(piece => piece.Height + between);
        var left = 0.0;
        for (var i = 0; i < pieces.Count; i++)
        {
            left += pieces[i].Height + between;
            if (left >= all - left)
            {
                return i + 1;
            }
        }

        return pieces.Count;
    }

    private ColumnsPiece Of(int from, int to) => new([.. pieces.Skip(from).Take(to - from)], column, gap, between) { After = to == pieces.Count ? After : 0 };

    private double HeightOfRange(int from, int to) => pieces.Skip(from).Take(to - from).Sum(piece => piece.Height) + (between * Math.Max(0, to - from - 1));
}
