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
        if (HalfDay(line, value) is { } time)
        {
            var where = line.Context.At(value.Span.Union(line.Take().Span));
            line.Report(NotUnderstood.Habit(where, time.ToString("HH:mm", System.Globalization.CultureInfo.InvariantCulture)));
            return new Argument(name, where, where.Text) { Payload = time };
        }

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

    // `6 pm`, `8:30 am`: the clock of twelve hours, in which 12 am is midnight.
    private static TimeOnly? HalfDay(LineReader line, ValueSyntax value)
    {
        if (line.AtEnd || line.Peek is not WordSyntax { Text: "am" or "pm" or "AM" or "PM" } half)
        {
            return null;
        }

        var (hours, minutes) = value switch
        {
            QuantitySyntax { Unit: null } whole => (whole.Number, 0.0),
            RatioSyntax { Parts: [{ Unit: null } hour, { Unit: null } minute] } => (hour.Number, minute.Number),
            _ => (0.0, 0.0),
        };
        return hours is >= 1 and <= 12 && minutes is >= 0 and <= 59 && hours == Math.Floor(hours) && minutes == Math.Floor(minutes)
            ? new TimeOnly(((int)hours % 12) + (half.Text is "pm" or "PM" ? 12 : 0), (int)minutes)
            : null;
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
