namespace Recipe.Documents.Writing.Pdf;

/// <summary>Lays pieces on pages, from the top of the first to wherever they end.</summary>
/// <param name="left">Left edge of the pieces, mm.</param>
/// <param name="top">Top of the pieces, mm.</param>
/// <param name="height">Height of the room for them, mm.</param>
/// <param name="head">What stands at the top of each page after the first, or null.</param>
internal sealed class PageFlow(double left, double top, double height, Func<Piece>? head)
{
    // A little more than the errors of adding up.
    private const double Slack = 1e-6;

    private readonly List<Sheet> _sheets = [];
    private Piece? _last;
    private double _y;

    /// <summary>The pages so far.</summary>
    public List<Sheet> Sheets => _sheets;

    /// <summary>The page that the last piece came on.</summary>
    public int Current => _sheets.Count - 1;

    /// <summary>Starts a page, the first or another.</summary>
    public void Turn()
    {
        var isFirst = _sheets.Count == 0;
        _sheets.Add(new Sheet());
        (_last, _y) = (null, top);
        if (!isFirst && head is not null)
        {
            Lay(head());
        }
    }

    /// <summary>Lays pieces one below the other.</summary>
    public void Add(IReadOnlyList<Piece> pieces) => Place(pieces, Keep.Together);

    private double Room => top + height - _y + Slack;

    private double Whole => height - (head is null ? 0 : head().Height + head().After) + Slack;

    private static IEnumerable<List<Piece>> Chunks(IReadOnlyList<Piece> pieces, Keep level)
    {
        var chunk = new List<Piece>();
        foreach (var piece in pieces)
        {
            chunk.Add(piece);
            if (piece.Keep < level)
            {
                yield return chunk;
                chunk = [];
            }
        }

        if (chunk.Count > 0)
        {
            yield return chunk;
        }
    }

    private void Place(IReadOnlyList<Piece> pieces, Keep level)
    {
        foreach (var chunk in Chunks(pieces, level))
        {
            if (Needed(chunk) <= Room)
            {
                chunk.ForEach(Lay);
            }
            else if (Parted(chunk) is { } parts)
            {
                parts.Head.ForEach(Lay);
                Turn();
                Place([parts.Tail], level);
            }
            else if (HeightOnNewPage(chunk) <= Whole && _last is not null)
            {
                Turn();
                chunk.ForEach(Lay);
            }
            else if (level < Keep.Firmly)
            {
                Place(chunk, level + 1);
            }
            else if (chunk.Count > 1)
            {
                foreach (var piece in chunk)
                {
                    Place([piece], level);
                }
            }
            else
            {
                Force(chunk[0], level);
            }
        }
    }

    private double Needed(List<Piece> chunk) =>
        Piece.HeightOf(chunk) + (_last is null ? (chunk[0].Repeated?.Height ?? 0) : Piece.GapBetween(_last, chunk[0]));

    private static double HeightOnNewPage(List<Piece> chunk) => Piece.HeightOf(chunk) + (chunk[0].Repeated?.Height ?? 0);

    // The last piece of what stays together may begin here and end on the next page.
    private (List<Piece> Head, Piece Tail)? Parted(List<Piece> chunk)
    {
        if (!chunk[^1].PartsEasily || chunk.Any(piece => piece.Repeated is not null))
        {
            return null;
        }

        var room = Room - Needed(chunk) + chunk[^1].Height;
        return room > 0 && chunk[^1].Part(room) is { } parts ? ([.. chunk.Take(chunk.Count - 1), parts.Head], parts.Tail) : null;
    }

    // Higher than a page: parted at its lines; and what cannot be parted is drawn smaller rather than beyond the edge.
    private void Force(Piece piece, Keep level)
    {
        var head = piece.Repeated?.Height ?? 0;
        if (_last is not null && Room < Whole / 3)
        {
            Turn();
        }

        var room = Room - (_last is null ? head : Piece.GapBetween(_last, piece));
        if (piece.Part(room) is { } parts)
        {
            (parts.Head.Repeated, parts.Tail.Repeated) = (piece.Repeated, piece.Repeated);
            Lay(parts.Head);
            Turn();
            Place([parts.Tail], level);
            return;
        }

        if (_last is not null)
        {
            Turn();
        }

        var scale = (Room - head) / piece.Height;
        Lay(scale >= 1 ? piece : new MarkPiece(piece.Height * scale, (sheet, x, y) => sheet.Within(x, y, scale, () => piece.Draw(sheet, 0, 0))) { Repeated = piece.Repeated });
    }

    private void Lay(Piece piece)
    {
        if (_last is null && piece.Repeated is { } repeated)
        {
            repeated.Draw(_sheets[^1], left, _y);
            _y += repeated.Height;
        }

        _y += _last is null ? 0 : Piece.GapBetween(_last, piece);
        piece.Draw(_sheets[^1], left, _y);
        _y += piece.Height;
        _last = piece;
    }
}
