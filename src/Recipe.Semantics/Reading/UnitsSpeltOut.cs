using Recipe.Semantics.Findings;
using Recipe.Syntax;
using Recipe.Text.Units;

namespace Recipe.Semantics.Reading;

/// <summary>Units that are spelt out as they are spoken: <c>0.2 degC per min</c>, <c>2 degC an hour</c>.</summary>
internal static class UnitsSpeltOut
{
    /// <summary>Reports a unit that goes on behind <c>per</c>, and steps over the rest of it.</summary>
    /// <param name="line">The line, behind the value.</param>
    /// <param name="value">The value with the first half of its unit.</param>
    /// <returns>Whether there was one.</returns>
    public static bool Report(LineReader line, ValueSyntax value)
    {
        if (value is not (QuantitySyntax { UnitSpan: not null } or SignedSyntax { Quantity.UnitSpan: not null })
            || line.AtEnd || line.Peek is not WordSyntax { Text: "per" or "a" or "an" } per || line.IsClauseWord(per.Text)
            || line.Ahead(1) is not WordSyntax below)
        {
            return false;
        }

        var unitSpan = (value as QuantitySyntax ?? ((SignedSyntax)value).Quantity).UnitSpan!.Value;
        if (!UnitTable.TryParse($"{line.Slice(unitSpan)}/{below.Text}", out var whole))
        {
            return false;
        }

        line.Take();
        var where = line.Context.At(value.Span.Union(line.Take().Span));
        var number = where.Source.Text[value.Span.Start..unitSpan.Start].TrimEnd();
        line.Report(NotUnderstood.Habit(where, $"{number} {whole.Symbol}"));
        return true;
    }
}
