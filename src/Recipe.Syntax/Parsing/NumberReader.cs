using System.Globalization;
using Recipe.Syntax.Findings;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Parsing;

/// <summary>Reads numbers, and answers those that are written in another manner.</summary>
internal sealed class NumberReader(SourceText source, List<Finding> findings)
{
    // Up to 15 digits are exact in a double, and so is their quotient by an exact power of ten rounded once.
    private const int ExactDigits = 15;

    private static readonly double[] PowersOfTen =
        [1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9, 1e10, 1e11, 1e12, 1e13, 1e14, 1e15];

    /// <summary>The number at a place of the text. False when it can be no number; the reason is among the findings then.</summary>
    public bool TryRead(TextSpan span, out double value)
    {
        var text = source.Text.AsSpan(span.Start, span.Length);
        return TryReadPlain(text, out value) || TryReadOther(span, text, out value);
    }

    /// <summary>Digits with at most one point among them.</summary>
    private static bool TryReadPlain(ReadOnlySpan<char> text, out double value)
    {
        value = 0;
        if (text.Length > ExactDigits || text[0] == '.')
        {
            return false;
        }

        long digits = 0;
        var decimals = -1;
        foreach (var c in text)
        {
            if (char.IsAsciiDigit(c))
            {
                digits = (digits * 10) + (c - '0');
                decimals += decimals >= 0 ? 1 : 0;
            }
            else if (c == '.' && decimals < 0)
            {
                decimals = 0;
            }
            else
            {
                return false;
            }
        }

        value = decimals > 0 ? digits / PowersOfTen[decimals] : digits;
        return true;
    }

    private bool TryReadOther(TextSpan span, ReadOnlySpan<char> text, out double value)
    {
        var commas = text.Count(',');
        var points = text.Count('.');
        var where = new SourceSpan(source, span);
        value = 0;
        if (commas + points > 1)
        {
            findings.Add(UnclearNumber.Create(where));
            return false;
        }

        var read = double.Parse(
            commas == 1 ? text.ToString().Replace(',', '.') : text,
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowExponent,
            CultureInfo.InvariantCulture);
        if (double.IsInfinity(read) || (read == 0 && HasDigit(text)))
        {
            findings.Add(NumberOutOfRange.Create(where, tooLarge: read != 0));
            return false;
        }

        if (commas == 1)
        {
            findings.Add(DecimalComma.Create(where));
        }
        else if (text[0] == '.')
        {
            findings.Add(LeadingPoint.Create(where));
        }

        value = read;
        return true;
    }

    /// <summary>Whether a digit other than zero stands before the exponent.</summary>
    private static bool HasDigit(ReadOnlySpan<char> text)
    {
        var exponent = text.IndexOfAny('e', 'E');
        return (exponent < 0 ? text : text[..exponent]).IndexOfAnyInRange('1', '9') >= 0;
    }
}
