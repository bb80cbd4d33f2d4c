using Recipe.Semantics.Schema;
using Recipe.Syntax;

namespace Recipe.Semantics.Reading;

/// <summary>The phrases that would give a value without a place one.</summary>
internal static class FreeClauses
{
    /// <summary>Phrases that the line has not had and that take a quantity such as this one; none for a number without a unit.</summary>
    /// <param name="value">The value.</param>
    /// <param name="pattern">What the line takes.</param>
    /// <param name="reading">What it has had.</param>
    public static string[] For(ValueSyntax value, LinePattern pattern, LineReading reading)
    {
        var unit = value switch
        {
            QuantitySyntax quantity => quantity.Unit,
            CompoundSyntax compound => compound.Parts[0].Unit,
            SignedSyntax signed => signed.Quantity.Unit,
            _ => null,
        };
        return unit is null
            ? []
            : [.. pattern.Clauses.Where(c => c.Kind is QuantityKind kind && kind.Dimension == unit.Dimension && (c.IsRepeated || !reading.WasTried(c.Phrase))).Select(c => c.Phrase)];
    }
}
