using Recipe.Model;
using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Semantics.Values;
using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Semantics.Reading;

/// <summary>Reads a vacuum level with the words that say how it is counted.</summary>
internal static class VacuumReader
{
    public static Argument? Read(LineReader line, string name, VacuumKind kind)
    {
        var value = line.Take();
        var pressure = Kinds.Pressure with { AtLeast = null };
        var read = QuantityReader.ReadSingle(line, pressure, value);
        var convention = TakeConvention(line, out var span);
        if (read is not { } level)
        {
            return null;
        }

        var whole = convention is null ? value.Span : value.Span.Union(span);
        var written = QuantityReader.Written(line, value, level, pressure.Units);
        if (level.Si < 0)
        {
            return ReadNegative(line, name, kind, value, level, convention, written);
        }

        if (convention is null)
        {
            // What is read quietly tells nobody; the height of the shop itself is read so.
            if (!line.Context.Sink.IsQuiet)
            {
                line.Report(VacuumWithoutConvention.Create(line.At(value), written, level, kind.OnlyAbsolute, new StandardAir(line.Context.Scope.Altitude)));
            }

            if (kind.OnlyAbsolute)
            {
                return null;
            }
        }
        else if (kind.OnlyAbsolute && convention == VacuumConvention.BelowAmbient)
        {
            ReportBelowAmbient(line, line.Context.At(whole), level, written);
            return null;
        }

        return Make(line, name, whole, level.Si, convention, written);
    }

    /// <summary>A minus sign says "below ambient" by custom; with words as well it says it twice.</summary>
    private static Argument? ReadNegative(LineReader line, string name, VacuumKind kind, ValueSyntax value, Value level, VacuumConvention? convention, string written)
    {
        if (convention is not null)
        {
            line.Report(OutOfRange.Create(line.At(value), line.Head, written, "0 or more, without a sign"));
            return null;
        }

        var plain = written.TrimStart('-', ' ');
        if (kind.OnlyAbsolute)
        {
            ReportBelowAmbient(line, line.At(value), level with { Si = -level.Si }, plain);
            return null;
        }

        line.Report(VacuumWithoutConvention.Signed(line.At(value), written));
        return Make(line, name, value.Span, -level.Si, VacuumConvention.BelowAmbient, plain);
    }

    /// <summary>The shop's gauge counts from the air around it, a maker's sheet from the standard atmosphere.</summary>
    private static void ReportBelowAmbient(LineReader line, SourceSpan whole, Value level, string written)
    {
        if (line.Context.Sink.IsQuiet)
        {
            return;
        }

        line.Report(NotUnderstood.BelowAmbient(
            whole,
            line.Head,
            written,
            level.Si,
            level.Unit ?? UnitTable.Get("mbar"),
            new StandardAir(line.Context.Scope.Altitude)));
    }

    private static Argument Make(LineReader line, string name, TextSpan whole, double si, VacuumConvention? convention, string written)
    {
        var words = convention switch
        {
            VacuumConvention.BelowAmbient => " below ambient",
            VacuumConvention.Absolute => " absolute",
            _ => "",
        };
        return new Argument(name, line.Context.At(whole), written + words)
        {
            Si = si,
            Payload = new VacuumLevel(Pressure.FromPascals(si), convention),
        };
    }

    private static VacuumConvention? TakeConvention(LineReader line, out TextSpan span)
    {
        span = default;
        if (line.AtEnd || line.Peek is not WordSyntax word)
        {
            return null;
        }

        span = word.Span;
        switch (word.Text)
        {
            case "absolute":
                line.Take();
                return VacuumConvention.Absolute;
            case "abs":
                line.Take();
                line.Report(RegionalWord.Create(line.At(word), "abs", "absolute"));
                return VacuumConvention.Absolute;
            case "gauge" or "gage":
                line.Take();
                line.Report(RegionalWord.Create(line.At(word), word.Text, "below ambient"));
                return VacuumConvention.BelowAmbient;
            case "below":
                line.Take();
                if (line.TakeWord("ambient"))
                {
                    span = span.Union(line.EndOfRead);
                }
                else
                {
                    line.Report(NotUnderstood.Phrase(line.At(word), "below ambient", "below"));
                }

                return VacuumConvention.BelowAmbient;
            default:
                return null;
        }
    }
}
