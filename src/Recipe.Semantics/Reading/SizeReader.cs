using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Units;

namespace Recipe.Semantics.Reading;

/// <summary>One side of a size.</summary>
internal readonly record struct Side(double Si, string Written, SourceSpan Where);

/// <summary>Reads two or three lengths with <c>x</c> between them.</summary>
internal static class SizeReader
{
    public static Argument? Read(LineReader line, string name, SizeKind kind)
    {
        var start = line.Peek.Span;
        var end = start;
        var sides = new Side[kind.Sides];
        var read = 0;
        var complete = true;
        while (true)
        {
            var node = line.Take();
            end = node.Span;
            if (QuantityReader.ReadSingle(line, LikeTheNext(line, node), node) is { } value)
            {
                if (read < sides.Length)
                {
                    sides[read] = new Side(value.Si, QuantityReader.Written(line, node, value, Kinds.PositiveLength.Units), line.At(node));
                }
            }
            else
            {
                complete = false;
            }

            read++;
            if (read < kind.Sides && ReportTogether(line))
            {
                return null;
            }

            if (line.AtEnd || line.Peek is not WordSyntax { Text: "x" or "×" })
            {
                break;
            }

            line.Take();
            if (line.AtEnd)
            {
                line.Report(MissingValue.Create(line.Context.At(line.EndOfRead), line.Head, "a length", line.Example));
                return null;
            }
        }

        var span = start.Union(end);
        if (!complete)
        {
            return null;
        }

        if (read != kind.Sides)
        {
            line.Report(NotUnderstood.Shape(line.Context.At(span), line.Head, kind.Noun, line.Example));
            return null;
        }

        return new Argument(name, line.Context.At(span), string.Join(" x ", sides.Select(s => s.Written))) { Payload = sides };
    }

    /// <summary>A count where another side is wanted, <c>x40 mm</c>: reported and stepped over with what is behind it.</summary>
    private static bool ReportTogether(LineReader line)
    {
        if (line.Ahead(0) is not WordSyntax word || Counts.Of(word.Text) is null || line.Ahead(1) is not WordSyntax unit || !UnitTable.TryParse(unit.Text, out _))
        {
            return false;
        }

        line.Report(NotUnderstood.SizeTogether(line.At(word), word.Text[1..]));
        line.Take();
        line.Take();
        return true;
    }

    /// <summary>In <c>60 x 40 mm</c> the likeliest unit of the 60 is that of the 40.</summary>
    private static QuantityKind LikeTheNext(LineReader line, ValueSyntax node)
    {
        for (var i = 0; node is QuantitySyntax { Unit: null } && line.Ahead(i) is WordSyntax { Text: "x" or "×" }; i += 2)
        {
            if (line.Ahead(i + 1) is QuantitySyntax { Unit: { } unit })
            {
                return Kinds.PositiveLength with { Units = [unit.Symbol, .. Kinds.PositiveLength.Units.Where(u => u != unit.Symbol)] };
            }
        }

        return Kinds.PositiveLength;
    }
}
