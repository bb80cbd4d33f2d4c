namespace Recipe.Text;

/// <summary>A place in a text as people count it, but from zero: line, and column in UTF-16 code units.</summary>
/// <param name="Line">Zero-based line.</param>
/// <param name="Column">Zero-based column.</param>
public readonly record struct LinePosition(int Line, int Column)
{
    /// <summary>As people write it, counted from one: <c>12:5</c>.</summary>
    public override string ToString() => string.Create(
        System.Globalization.CultureInfo.InvariantCulture, $"{Line + 1}:{Column + 1}");
}
