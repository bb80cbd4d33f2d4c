using System.Collections.Immutable;
using Recipe.Text.Units;

namespace Recipe.Model;

/// <summary>A fact that a house rule may ask for.</summary>
/// <param name="Word">What rules call it: <c>areal-weight</c>.</param>
/// <param name="Kind">What kind of thing it is.</param>
/// <param name="Unit">The unit that messages show it in; null for what has none.</param>
/// <param name="Doc">What it is, in a few words.</param>
public sealed record FactWord(string Word, FactKind Kind, Unit? Unit, string Doc)
{
    /// <summary>What it measures; of a word, a text, yes or no: nothing.</summary>
    public Dimension Dimension => Kind == FactKind.Money ? DimensionNames.Money : Unit?.Dimension ?? Dimension.None;

    /// <summary>Whether it is a temperature and not a difference of two.</summary>
    public bool IsTemperature => Unit is { Scale: UnitScale.Offset };

    /// <summary>The words that it may be; empty when any word may stand there.</summary>
    public ImmutableArray<string> Choices { get; init; } = [];

    /// <summary>Whether it is the name of a material.</summary>
    public bool NamesMaterial { get; init; }

    /// <summary>Whether it can be reckoned with.</summary>
    public bool IsNumeric => Kind is FactKind.Quantity or FactKind.Number or FactKind.Money;
}
