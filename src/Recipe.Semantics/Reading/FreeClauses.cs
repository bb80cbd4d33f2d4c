using Recipe.Semantics.Schema;
using Recipe.Syntax;

namespace Recipe.Semantics.Reading;

/// <summary>The clauses that would give a value without a place one.</summary>
internal static class FreeClauses
{
    /// <summary>Clauses that the line has not had and that take a quantity such as this one; none for a number without a unit.</summary>
    /// <param name="value">The value.</param>
    /// <param name="pattern">What the line takes.</param>
    /// <param name="reading">What it has had.</param>
    public static ClausePattern[] For(ValueSyntax value, LinePattern pattern, LineReading reading)
    {
        var unit = value switch
        {
            QuantitySyntax quantity => quantity.Unit,
            CompoundSyntax compound => compound.Parts[0].Unit,
            SignedSyntax signed => signed.Quantity.Unit,
            ToleranceSyntax { Value: QuantitySyntax middle } => middle.Unit,
            _ => null,
        };
        return unit is null
            ? []
            : [.. pattern.Clauses.Where(c => c.Kind is QuantityKind kind && kind.Dimension == unit.Dimension && (value is not ToleranceSyntax || kind.TakesTolerance) && (c.IsRepeated || !reading.WasTried(c.Phrase)))];
    }
}
