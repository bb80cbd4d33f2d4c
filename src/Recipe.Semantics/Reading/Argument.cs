using Recipe.Text;
using Recipe.Text.Units;

namespace Recipe.Semantics.Reading;

/// <summary>One value of a line, read and checked.</summary>
/// <param name="Name">The key of its pattern: <c>value</c>, or the phrase of its clause.</param>
/// <param name="Where">Its place.</param>
/// <param name="Written">As papers show it.</param>
internal sealed record Argument(string Name, SourceSpan Where, string Written)
{
    /// <summary>SI value of a quantity; the number of a count.</summary>
    public double Si { get; init; }

    /// <summary>What the quantity measures.</summary>
    public Dimension Dimension { get; init; }

    /// <summary>Upper end of a range.</summary>
    public (double Si, string Written, SourceSpan Where)? High { get; init; }

    /// <summary>Of a range, the unit that its upper end is written in; null where that is an expression without one.</summary>
    public Unit? RangeUnit { get; init; }

    /// <summary>Tolerance, plus and minus.</summary>
    public (double Si, string Written, SourceSpan Where)? Tolerance { get; init; }

    /// <summary>Word, name or text.</summary>
    public string? Word { get; init; }

    /// <summary>A date.</summary>
    public DateOnly? Date { get; init; }

    /// <summary>A value of a kind of its own: a mix ratio, a declaration.</summary>
    public object? Payload { get; init; }
}
