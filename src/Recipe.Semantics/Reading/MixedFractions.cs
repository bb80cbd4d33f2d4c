using Recipe.Semantics.Findings;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Semantics.Reading;

/// <summary>Recognises <c>3 1/2 in</c>, which the grammar reads as a 3 and as half an inch.</summary>
internal static class MixedFractions
{
    /// <summary>Reports the fraction ahead as belonging to the number just taken, and steps over it.</summary>
    /// <param name="line">The line; the number was taken.</param>
    /// <param name="whole">The number.</param>
    /// <returns>Whether it was one.</returns>
    public static bool Report(LineReader line, ValueSyntax whole)
    {
        if (whole is QuantitySyntax { Unit: not null } or CompoundSyntax && line.Ahead(0) is QuantitySyntax { Unit: null } smaller && FractionOf(line.Ahead(1)) is not null)
        {
            // 3 ft 4 1/2 in
            line.Take();
            return Report(line, smaller);
        }

        if (whole is not QuantitySyntax { Unit: null } number || number.Number != Math.Floor(number.Number) || FractionOf(line.Ahead(0)) is not { } pair)
        {
            return false;
        }

        var text = line.Slice(pair.Span);
        var figures = FiguresOf(text);
        var where = line.Context.At(TextSpan.FromBounds(whole.Span.Start, pair.Span.Start + figures));
        line.Report(MixedFraction.Create(where, number.Number + (pair.Left / pair.Right), pair.Unit!.Symbol));
        line.Take();
        return true;
    }

    /// <summary>The part of a whole that a value is, with its unit, or null.</summary>
    private static PairSyntax? FractionOf(ValueSyntax? value)
    {
        var pair = value switch
        {
            PairSyntax alone => alone,
            ToleranceSyntax { Value: PairSyntax inside } => inside,
            _ => null,
        };
        return pair is { Unit: not null } && pair.Left > 0 && pair.Left < pair.Right && pair.Left == Math.Floor(pair.Left) && pair.Right == Math.Floor(pair.Right) ? pair : null;
    }

    /// <summary>How much of <c>1/2 in</c> is the fraction: up to the last figure of its second number.</summary>
    private static int FiguresOf(string text)
    {
        var end = text.IndexOf('/', StringComparison.Ordinal) + 1;
        while (end < text.Length && char.IsWhiteSpace(text[end]))
        {
            end++;
        }

        while (end < text.Length && char.IsAsciiDigit(text[end]))
        {
            end++;
        }

        return end;
    }
}
