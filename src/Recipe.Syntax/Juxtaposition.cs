using System.Collections.Immutable;
using Recipe.Text.Units;

namespace Recipe.Syntax;

/// <summary>
/// Joins values that belong together because of what stands beside them: <c>1 h 30 min</c>, <c>140 g +/- 10 g</c>,
/// <c>18 to 25 degC</c>. One pass each over the values of a line; it needs more than one token of look-ahead, so it is not in the grammar.
/// </summary>
internal static class Juxtaposition
{
    public static ImmutableArray<ValueSyntax> Fold(ImmutableArray<ValueSyntax> values) =>
        values.Length < 2 ? values : Ranges(Tolerances(Compounds(values)));

    private static ImmutableArray<ValueSyntax> Compounds(ImmutableArray<ValueSyntax> values)
    {
        var result = ImmutableArray.CreateBuilder<ValueSyntax>(values.Length);
        for (var i = 0; i < values.Length; i++)
        {
            var parts = ImmutableArray.CreateBuilder<QuantitySyntax>();
            while (i + parts.Count < values.Length && values[i + parts.Count] is QuantitySyntax { Unit: { } unit } part && Joins(parts, unit))
            {
                parts.Add(part);
            }

            if (parts.Count < 2)
            {
                result.Add(values[i]);
                continue;
            }

            result.Add(new CompoundSyntax(parts.ToImmutable(), parts[0].Span.Union(parts[^1].Span)));
            i += parts.Count - 1;
        }

        return result.ToImmutable();
    }

    /// <summary>Smaller and smaller units of one dimension add up; equal ones are two values side by side.</summary>
    private static bool Joins(ImmutableArray<QuantitySyntax>.Builder parts, Unit unit) =>
        parts.Count == 0
        || (unit.Dimension == parts[0].Unit!.Dimension && unit.Scale == UnitScale.Proportional && unit.Factor < parts[^1].Unit!.Factor
            && unit.Dimension != Dimension.None);

    private static ImmutableArray<ValueSyntax> Tolerances(ImmutableArray<ValueSyntax> values)
    {
        var result = ImmutableArray.CreateBuilder<ValueSyntax>(values.Length);
        foreach (var value in values)
        {
            if (value is PlusMinusSyntax spread && result.Count > 0 && result[^1] is QuantitySyntax or CompoundSyntax or ParenthesisSyntax)
            {
                var middle = result[^1];
                result[^1] = new ToleranceSyntax(middle, spread.Quantity, middle.Span.Union(spread.Span));
            }
            else
            {
                result.Add(value);
            }
        }

        return result.ToImmutable();
    }

    private static ImmutableArray<ValueSyntax> Ranges(ImmutableArray<ValueSyntax> values)
    {
        var result = ImmutableArray.CreateBuilder<ValueSyntax>(values.Length);
        for (var i = 0; i < values.Length; i++)
        {
            if (i + 2 < values.Length && values[i + 1] is WordSyntax { Text: "to" } && SameUnit(values[i], values[i + 2]))
            {
                result.Add(new RangeSyntax(values[i], values[i + 2], values[i].Span.Union(values[i + 2].Span)));
                i += 2;
            }
            else
            {
                result.Add(values[i]);
            }
        }

        return result.ToImmutable();
    }

    private static bool SameUnit(ValueSyntax low, ValueSyntax high) =>
        Quantity(low) is { } a && Quantity(high) is { } b && (a.Unit is null || a.Unit.Symbol == b.Unit?.Symbol);

    private static QuantitySyntax? Quantity(ValueSyntax value) => value switch
    {
        QuantitySyntax quantity => quantity,
        SignedSyntax signed => signed.Quantity,
        _ => null,
    };
}
