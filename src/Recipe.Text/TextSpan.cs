namespace Recipe.Text;

/// <summary>A run of characters in one text: where it starts and how long it is, in UTF-16 code units.</summary>
/// <param name="Start">Offset of the first character, 0 or more.</param>
/// <param name="Length">Number of characters, 0 or more.</param>
public readonly record struct TextSpan(int Start, int Length)
{
    /// <summary>Offset just past the last character.</summary>
    public int End => Start + Length;

    /// <summary>The span from <paramref name="start"/> up to, not including, <paramref name="end"/>.</summary>
    public static TextSpan FromBounds(int start, int end) => new(start, end - start);

    /// <summary>The smallest span that holds both.</summary>
    public TextSpan Union(TextSpan other) => FromBounds(Math.Min(Start, other.Start), Math.Max(End, other.End));

    /// <summary>Whether the offset lies inside the span, its end included.</summary>
    public bool Touches(int offset) => offset >= Start && offset <= End;
}
