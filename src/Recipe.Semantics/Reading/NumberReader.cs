using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Semantics.Values;
using Recipe.Syntax;

namespace Recipe.Semantics.Reading;

/// <summary>Reads numbers without a unit: counts, plain numbers, times of day.</summary>
internal static class NumberReader
{
    public static Argument? ReadCount(LineReader line, string name, CountKind kind)
    {
        var value = line.Take();
        if (ReadPlain(line, value, kind.Noun) is not { } number)
        {
            return null;
        }

        if (number != Math.Floor(number))
        {
            return ValueReader.Wrong(line, value, kind.Noun);
        }

        if (number < kind.AtLeast || number > 1_000_000)
        {
            line.Report(OutOfRange.Create(line.At(value), line.Head, line.Slice(value.Span), number < kind.AtLeast ? $"at least {kind.AtLeast}" : "at most 1000000"));
            return null;
        }

        return new Argument(name, line.At(value), Numbers.Format(number)) { Si = number };
    }

    public static Argument? ReadNumber(LineReader line, string name, NumberKind kind)
    {
        var value = line.Take();
        if (ReadPlain(line, value, kind.Noun) is not { } number)
        {
            return null;
        }

        if (number < kind.AtLeast || number > kind.AtMost)
        {
            line.Report(OutOfRange.Create(line.At(value), line.Head, line.Slice(value.Span), $"{Numbers.Format(kind.AtLeast)} to {Numbers.Format(kind.AtMost)}"));
            return null;
        }

        return new Argument(name, line.At(value), QuantityReader.Written(line, value, Value.Of(number, null), [])) { Si = number };
    }

    public static Argument? ReadTimeOfDay(LineReader line, string name)
    {
        var value = line.Take();
        if (value is not RatioSyntax { Parts: [{ Unit: null } hours, { Unit: null } minutes] }
            || hours.Number != Math.Floor(hours.Number) || minutes.Number != Math.Floor(minutes.Number))
        {
            return ValueReader.Wrong(line, value, "a time of day");
        }

        if (hours.Number > 23 || minutes.Number > 59)
        {
            line.Report(OutOfRange.Create(line.At(value), line.Head, line.Slice(value.Span), "00:00 to 23:59"));
            return null;
        }

        return new Argument(name, line.At(value), line.Slice(value.Span)) { Payload = new TimeOnly((int)hours.Number, (int)minutes.Number) };
    }

    private static double? ReadPlain(LineReader line, ValueSyntax value, string noun)
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

        if (!read.IsBare && (read.Dimension != Recipe.Text.Units.Dimension.None || read.Unit is not null))
        {
            line.Report(WrongKindOfUnit.NoUnit(line.At(value), line.Head, noun, line.Slice(value.Span), value is QuantitySyntax { UnitSpan: { } unit } q
                ? line.Context.At(Recipe.Text.TextSpan.FromBounds(q.NumberSpan.End, unit.End))
                : null));
            return null;
        }

        return read.Si;
    }
}
