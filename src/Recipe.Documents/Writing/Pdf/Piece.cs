namespace Recipe.Documents.Writing.Pdf;

/// <summary>How firmly a piece is kept on one page with the one after it.</summary>
internal enum Keep
{
    /// <summary>Not at all.</summary>
    None,

    /// <summary>When both fit on a page: rows of a short table.</summary>
    Together,

    /// <summary>Rather than the former: a hold point and what stands before it.</summary>
    Closely,

    /// <summary>Always: a heading.</summary>
    Firmly,
}

/// <summary>Something of a known width that stands on a page, mm.</summary>
internal abstract class Piece
{
    /// <summary>Its height.</summary>
    public abstract double Height { get; }

    /// <summary>Room before it; between two pieces the larger of what both want.</summary>
    public double Before { get; set; }

    /// <summary>Room after it.</summary>
    public double After { get; set; }

    /// <summary>How it is kept with the next.</summary>
    public Keep Keep { get; set; }

    /// <summary>What is said again before it on a new page: the head of its table.</summary>
    public Piece? Repeated { get; set; }

    /// <summary>Whether it is parted over two pages although a whole page would hold it.</summary>
    public virtual bool PartsEasily => false;

    /// <summary>Draws it with its upper left corner there.</summary>
    public abstract void Draw(Sheet sheet, double x, double y);

    /// <summary>A piece of at most the given height and the rest, or null when it cannot be parted there.</summary>
    public virtual (Piece Head, Piece Tail)? Part(double height) => null;

    /// <summary>The height of pieces one below the other.</summary>
    public static double HeightOf(IReadOnlyList<Piece> pieces)
    {
        var height = 0.0;
        for (var i = 0; i < pieces.Count; i++)
        {
            height += (i > 0 ? GapBetween(pieces[i - 1], pieces[i]) : 0) + pieces[i].Height;
        }

        return height;
    }

    /// <summary>The room between two pieces.</summary>
    public static double GapBetween(Piece upper, Piece lower) => Math.Max(upper.After, lower.Before);
}
