using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Semantics.Values;
using Recipe.Syntax;
using Recipe.Text.Units;

namespace Recipe.Semantics.Reading;

/// <summary>Reads prices and amounts, whose dimension the author chooses among several.</summary>
internal static class AmountReader
{
    /// <summary>A price. The day stands in a clause of its own.</summary>
    public static Argument? ReadPrice(LineReader line, string name)
    {
        const string noun = "a price";
        string[] units = ["EUR/m2", "EUR/kg", "EUR/m"];
        var value = line.Take();
        if (Evaluate(line, value, noun) is not { } read)
        {
            return null;
        }

        if (read.IsBare)
        {
            line.Report(BareNumber.Create(line.At(value), line.Head, line.Slice(value.Span), noun, [.. units], value is QuantitySyntax));
            return null;
        }

        if (read.Currency is null || read.Dimension.Money != 1)
        {
            line.Report(WrongKindOfUnit.Create(line.At(value), line.Head, noun, [.. units], line.Slice(value.Span), read.Dimension.Name));
            return null;
        }

        if (read.Si < 0)
        {
            line.Report(OutOfRange.Create(line.At(value), line.Head, line.Slice(value.Span), "at least 0"));
            return null;
        }

        var unit = read.Unit is { } own && own.Dimension == read.Dimension ? own : null;
        var per = unit?.Symbol.IndexOf('/', StringComparison.Ordinal) is { } slash and > 0 ? UnitTable.Get(unit.Symbol[(slash + 1)..]) : null;
        var amount = unit is null ? read.Si : unit.FromSi(read.Si);
        if (amount > 1e15 || (unit is null && read.Dimension != DimensionNames.Money))
        {
            return ValueReader.Wrong(line, value, noun);
        }

        return new Argument(name, line.At(value), QuantityReader.Written(line, value, read, [])) { Payload = new Price((decimal)amount, read.Currency, per, null) };
    }

    /// <summary>An amount on the shelf.</summary>
    public static Argument? ReadAmount(LineReader line, string name)
    {
        const string noun = "an amount (a mass, an area, a length, a volume or pieces)";
        var value = line.Take();
        if (Evaluate(line, value, noun) is not { } read)
        {
            return null;
        }

        var isShare = read.Dimension == Dimension.None && !read.IsBare;
        if (isShare || (read.Dimension != Dimension.None && read.Dimension != DimensionNames.Mass && read.Dimension != DimensionNames.Area
            && read.Dimension != DimensionNames.Length && read.Dimension != DimensionNames.Volume))
        {
            line.Report(WrongKindOfUnit.Create(line.At(value), line.Head, noun, ["kg", "m2", "m", "L"], line.Slice(value.Span), isShare ? "percentage" : read.Dimension.Name));
            return null;
        }

        if (read.Si < 0)
        {
            line.Report(OutOfRange.Create(line.At(value), line.Head, line.Slice(value.Span), "at least 0"));
            return null;
        }

        return new Argument(name, line.At(value), QuantityReader.Written(line, value, read, []))
        {
            Si = read.Si,
            Dimension = read.Dimension,
            Payload = new StockAmount(read.Si, read.Dimension),
        };
    }

    /// <summary>A mass that hangs on something, or a force; more than 0.</summary>
    public static Argument? ReadWeight(LineReader line, string name, string noun)
    {
        string[] units = ["kg", "N", "lb"];
        var value = line.Take();
        if (Evaluate(line, value, noun) is not { } read)
        {
            return null;
        }

        if (read.IsBare)
        {
            line.Report(BareNumber.Create(line.At(value), line.Head, line.Slice(value.Span), noun, [.. units], value is QuantitySyntax));
            return null;
        }

        if (read.Dimension != DimensionNames.Mass && read.Dimension != DimensionNames.Force)
        {
            line.Report(WrongKindOfUnit.Create(
                line.At(value), line.Head, noun, [.. units], line.Slice(value.Span), read.Dimension == Dimension.None ? "percentage or ratio" : read.Dimension.Name));
            return null;
        }

        if (read.Si <= 0)
        {
            line.Report(OutOfRange.Create(line.At(value), line.Head, line.Slice(value.Span), "more than 0"));
            return null;
        }

        return new Argument(name, line.At(value), QuantityReader.Written(line, value, read, [])) { Si = read.Si, Dimension = read.Dimension };
    }

    /// <summary>An area, or a share of the surface.</summary>
    public static Argument? ReadCover(LineReader line, string name)
    {
        var value = line.Peek;
        return Evaluator.Evaluate(value, line.Context.Quietly()) is { IsBare: false } read && read.Dimension == Dimension.None
            ? QuantityReader.ReadShare(line, name, "a share of the surface", 1)
            : QuantityReader.Read(line, name, Kinds.Area with { Noun = "an area or a percentage", Units = ["%", "m2", "cm2"] });
    }

    /// <summary>Anything that has a number.</summary>
    public static Argument? ReadAny(LineReader line, string name)
    {
        var value = line.Take();
        return Evaluate(line, value, "a number or a quantity") is { } read
            ? new Argument(name, line.At(value), QuantityReader.Written(line, value, read, [])) { Si = read.Si, Dimension = read.Dimension }
            : null;
    }

    private static Value? Evaluate(LineReader line, ValueSyntax value, string noun)
    {
        if (value is RangeSyntax or ToleranceSyntax or TextSyntax or DateSyntax or RatioSyntax or PlusMinusSyntax)
        {
            ValueReader.Wrong(line, value, noun);
            return null;
        }

        return UnitsSpeltOut.Report(line, value) ? null : Evaluator.Evaluate(value, line.Context);
    }
}
