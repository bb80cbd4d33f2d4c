using Recipe.Text;

namespace Recipe.Model;

/// <summary>Who says so.</summary>
public enum Basis
{
    /// <summary>The author wrote it.</summary>
    Stated,

    /// <summary>The shipped book says it, with a source, or it defines a generic entry of the book.</summary>
    Book,

    /// <summary>Nobody measured it: a default of the program, or a figure marked <c>source assumed</c>.</summary>
    Assumed,
}

/// <summary>A value that knows who says so, how it was written and where.</summary>
/// <typeparam name="T">What kind of value: a UnitsNet quantity, a count, a choice.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="Basis">Who says so.</param>
/// <param name="Written">As the author or the book wrote it, units included: <c>5.8 oz/yd2</c>. Papers show this first.</param>
/// <param name="Where">Where it stands, or null for a default of the program.</param>
/// <param name="Source">Where the figure comes from, in words, or null when the author gave none.</param>
public sealed record Figure<T>(T Value, Basis Basis, string Written, SourceSpan? Where = null, string? Source = null)
{
    /// <summary>Whether nobody measured it: a finding that rests on it is a warning at most.</summary>
    public bool IsAssumed => Basis == Basis.Assumed;

    /// <summary>The same figure seen as another kind of value.</summary>
    public Figure<TOther> Map<TOther>(Func<T, TOther> map)
    {
        ArgumentNullException.ThrowIfNull(map);
        return new(map(Value), Basis, Written, Where, Source);
    }
}
