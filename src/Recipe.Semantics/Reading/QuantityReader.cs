using System.Collections.Immutable;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Semantics.Values;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;
using Recipe.Text.Units;

namespace Recipe.Semantics.Reading;

/// <summary>Reads quantities and checks that they are of the kind that is wanted.</summary>
internal static class QuantityReader
{
    /// <summary>A quantity, with a range or a tolerance where the kind takes one.</summary>
    public static Argument? Read(LineReader line, string name, QuantityKind kind)
    {
        var value = line.Take();
        switch (value)
        {
            case WordSyntax word when word.Text == kind.OrWord:
                return new Argument(name, line.At(word), word.Text) { Word = word.Text };
            case RangeSyntax range when kind.TakesRange:
                return ReadRange(line, name, kind, range.Low, range.High, range.Span);
            case ToleranceSyntax tolerance when kind.TakesTolerance:
                return ReadTolerance(line, name, kind, tolerance);
            case RangeSyntax or ToleranceSyntax or TextSyntax or DateSyntax or RatioSyntax or PlusMinusSyntax:
                return ValueReader.Wrong(line, value, kind.Noun);
            default:
                if (kind.TakesRange && !line.AtEnd && line.Peek is WordSyntax { Text: "to" })
                {
                    return ReadSpelledRange(line, name, kind, value);
                }

                if (kind.TakesRange && !line.AtEnd && line.Peek is SignedSyntax { Negative: true } upper && upper.Span.Start == value.Span.End && value is QuantitySyntax)
                {
                    // The dash of a data sheet: a second figure with a sign, right behind the first.
                    var where = line.Context.At(value.Span.Union(line.Take().Span));
                    line.Report(NotUnderstood.Habit(where, $"{line.Slice(value.Span)} to {line.Slice(upper.Quantity.Span)}", FixSafety.NeedsALook));
                    return null;
                }

                if (ReadSingle(line, kind, value) is not { } read)
                {
                    return null;
                }

                if (kind.NeedsRange)
                {
                    line.Report(MissingValue.Create(line.Context.At(line.EndOfRead), line.Head, $"`to` and {kind.Noun}", line.Example));
                    return null;
                }

                return ToArgument(line, name, kind, value, read);
        }
    }

    /// <summary>A percentage of one plain thing.</summary>
    public static Argument? ReadShare(LineReader line, string name, string noun, double atMost, double atLeast = 0)
    {
        var value = line.Take();
        var share = ReadPercent(line, value, noun);
        if (share is not { } si)
        {
            return null;
        }

        if (si < atLeast || si > atMost)
        {
            line.Report(OutOfRange.Create(line.At(value), line.Head, line.Slice(value.Span), $"{Numbers.Format(atLeast * 100)} % to {Numbers.Format(atMost * 100)} %"));
            return null;
        }

        return new Argument(name, line.At(value), Written(line, value, new Value(si, Dimension.None) { Unit = UnitTable.Get("%") }, ["%"])) { Si = si };
    }

    /// <summary>The share that a percentage is, or null when reported.</summary>
    public static double? ReadPercent(LineReader line, ValueSyntax value, string noun)
    {
        if (value is RangeSyntax or ToleranceSyntax or TextSyntax or DateSyntax or RatioSyntax or PlusMinusSyntax)
        {
            ValueReader.Wrong(line, value, noun);
            return null;
        }

        if (Evaluator.Evaluate(value, line.Context) is not { } read)
        {
            return null;
        }

        if (read.IsBare)
        {
            line.Report(BareNumber.Percentage(line.At(value), line.Head, line.Slice(value.Span), value is QuantitySyntax ? read.Si : null));
            return null;
        }

        if (read.Dimension != Dimension.None)
        {
            line.Report(WrongKindOfUnit.Create(line.At(value), line.Head, noun, ["%"], line.Slice(value.Span), read.Dimension.Name));
            return null;
        }

        return read.Si;
    }

    /// <summary>Evaluates one quantity and checks it; null when reported.</summary>
    public static Value? ReadSingle(LineReader line, QuantityKind kind, ValueSyntax value, Unit? borrowed = null)
    {
        if (value is RangeSyntax or ToleranceSyntax or TextSyntax or DateSyntax or RatioSyntax or PlusMinusSyntax)
        {
            ValueReader.Wrong(line, value, kind.Noun);
            return null;
        }

        if (borrowed is null && MixedFractions.Report(line, value))
        {
            return null;
        }

        if (kind.Dimension == DimensionNames.Temperature && value is QuantitySyntax { Unit: { } degrees } turn && degrees.Dimension == DimensionNames.Angle
            && !line.AtEnd && line.Peek is WordSyntax { Text: "C" or "F" } scale)
        {
            line.Take();
            line.Report(NotUnderstood.Habit(line.Context.At(value.Span.Union(scale.Span)), $"{line.Slice(turn.NumberSpan)} deg{scale.Text}"));
            return null;
        }

        if (UnitsSpeltOut.Report(line, value))
        {
            return null;
        }

        if (value is WordSyntax name && line.Context.Scope.FindLet(name.Text) is null && Spelling.Nearest(name.Text, line.Context.Scope.NamesOf(NameKind.Value)) is null)
        {
            line.Context.Sink.Use(NameKind.Value, name.Text, line.At(name), null);
            line.Report(NotUnderstood.WordForQuantity(line.At(name), line.Head, kind.Noun, line.Example));
            return null;
        }

        if (IsLoneNumber(value) && borrowed is null && StrayUnit(line, value) is { } stray)
        {
            line.Report(UnknownUnit.Create(line.At(stray), line.Slice(value.Span), stray.Text, UnitGuess.For(stray.Text, kind.Dimension), kind));
            line.Take();
            return null;
        }

        var read = Evaluator.EvaluateWithUnit(value, borrowed, line.Context);
        return read is { } v && Check(line, kind, value, v) ? v : null;
    }

    /// <summary>The text that papers show for a value.</summary>
    public static string Written(LineReader line, ValueSyntax node, Value value, ImmutableArray<string> units) => node switch
    {
        WordSyntax word => line.Context.Scope.FindLet(word.Text)?.Value?.Written ?? Numbers.Format(value, units),
        ParenthesisSyntax or BinarySyntax or NegateSyntax => Numbers.Format(value, units),
        _ => line.Slice(node.Span),
    };

    private static Argument ToArgument(LineReader line, string name, QuantityKind kind, ValueSyntax node, Value value) =>
        new(name, line.At(node), Written(line, node, value, kind.Units)) { Si = value.Si, Dimension = value.Dimension };

    private static Argument? ReadSpelledRange(LineReader line, string name, QuantityKind kind, ValueSyntax low)
    {
        line.Take();
        if (line.AtEnd)
        {
            line.Report(MissingValue.Create(line.Context.At(line.EndOfRead), line.Head, kind.Noun, line.Example));
            return null;
        }

        var high = line.Take();
        return ReadRange(line, name, kind, low, high, low.Span.Union(high.Span));
    }

    private static Argument? ReadRange(LineReader line, string name, QuantityKind kind, ValueSyntax low, ValueSyntax high, TextSpan span)
    {
        var upper = ReadSingle(line, kind, high);
        if (upper is null && IsLoneNumber(low))
        {
            // It takes its unit from the upper end, about which enough is said.
            return null;
        }

        var lower = ReadSingle(line, kind, low, upper?.Unit);
        if (upper is not { } h || lower is not { } l)
        {
            return null;
        }

        if (l.Si > h.Si && !kind.RangeRunsEitherWay)
        {
            line.Report(OutOfRange.Create(line.Context.At(span), line.Head, line.Slice(span), "the smaller value first"));
            return null;
        }

        var lowWritten = IsLoneNumber(low) ? Numbers.Format(l, kind.Units) : Written(line, low, l, kind.Units);
        return new Argument(name, line.Context.At(span), lowWritten)
        {
            Si = l.Si,
            Dimension = l.Dimension,
            High = (h.Si, Written(line, high, h, kind.Units), line.At(high)),
            RangeUnit = h.Unit,
        };
    }

    private static Argument? ReadTolerance(LineReader line, string name, QuantityKind kind, ToleranceSyntax node)
    {
        if (ReadSingle(line, kind, node.Value) is not { } value)
        {
            return null;
        }

        var argument = ToArgument(line, name, kind, node.Value, value);
        if (Evaluator.EvaluateTolerance(node.Tolerance, line.Context) is not { } tolerance)
        {
            return argument;
        }

        // `140 g +/- 5 %` is five percent of the 140 g.
        var isShare = tolerance.Dimension == Dimension.None && !tolerance.IsBare;
        var si = isShare ? tolerance.Si * value.Si : tolerance.Si;
        if (!isShare && !Check(line, kind with { AtLeast = 0, MoreThan = null, AtMost = null }, node.Tolerance, tolerance))
        {
            return argument;
        }

        return argument with { Tolerance = (si, Written(line, node.Tolerance, tolerance, kind.Units), line.At(node.Tolerance)) };
    }

    private static bool Check(LineReader line, QuantityKind kind, ValueSyntax node, Value value)
    {
        var where = line.At(node);
        if (value.IsBare && kind.Dimension != Dimension.None)
        {
            line.Report(BareNumber.Create(where, line.Head, line.Slice(node.Span), kind.Noun, kind.Units, IsLoneNumber(node)));
            return false;
        }

        if (value.Dimension != kind.Dimension)
        {
            line.Report(kind.Dimension == DimensionNames.ArealWeight && node is QuantitySyntax { Unit.Symbol: "oz", UnitSpan: { } unitSpan } ounces
                ? ClothInOunces.Create(where, line.Head, line.Context.At(unitSpan), ounces.Number)
                : WrongKindOfUnit.Create(where, line.Head, kind.Noun, kind.Units, line.Slice(node.Span), NameOf(value), UnitSpanOf(line, node)));
            return false;
        }

        var isTemperature = kind.Dimension == DimensionNames.Temperature;
        if (isTemperature && !value.IsAbsoluteTemperature)
        {
            line.Report(WrongKindOfUnit.Difference(where, line.Head, line.Slice(node.Span), value.Si, node is QuantitySyntax));
            return false;
        }

        return CheckRange(line, kind, node, value);
    }

    private static bool CheckRange(LineReader line, QuantityKind kind, ValueSyntax node, Value value)
    {
        var limit = value.Si < kind.AtLeast ? $"at least {Show(kind.AtLeast.Value)}"
            : value.Si <= kind.MoreThan ? $"more than {Show(kind.MoreThan.Value)}"
            : value.Si > kind.AtMost ? $"at most {Show(kind.AtMost.Value)}"
            : null;
        if (limit is not null)
        {
            line.Report(OutOfRange.Create(line.At(node), line.Head, line.Slice(node.Span), limit));
        }

        return limit is null;

        string Show(double si) => si == 0 && kind.Dimension != DimensionNames.Temperature
            ? "0"
            : Numbers.Format(value with { Si = si }, kind.Units);
    }

    private static string NameOf(Value value) => value.Dimension == Dimension.None ? "percentage or ratio" : value.Dimension.Name;

    private static bool IsLoneNumber(ValueSyntax node) => node is QuantitySyntax { Unit: null } or SignedSyntax { Quantity.Unit: null };

    private static SourceSpan? UnitSpanOf(LineReader line, ValueSyntax node) =>
        node is QuantitySyntax { UnitSpan: { } span } ? line.Context.At(span) : null;

    /// <summary>The word behind a bare number when it can only be meant as its unit.</summary>
    private static WordSyntax? StrayUnit(LineReader line, ValueSyntax number) =>
        !line.AtEnd && line.Peek is WordSyntax word
        && word.Span.Start > number.Span.Start
        && !line.IsClauseWord(word.Text) && word.Text is not ("x" or "×" or "to" or "by" or "of" or "below" or "absolute")
        && Counts.Of(word.Text) is null
        && line.Context.Scope.FindLet(word.Text) is null
            ? word
            : null;
}
