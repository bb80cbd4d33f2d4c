using System.Globalization;
using System.Text;

namespace Recipe.Documents.Quantities;

/// <summary>Numbers as text: decimal point, no thousands separators, the same in every country.</summary>
internal static class Numbers
{
    /// <summary>A difference this small, relative to the step, is noise of the arithmetic and does not round a limit away.</summary>
    private const double Noise = 1e-9;

    /// <summary>From here on a double holds no fractions, and nothing on a bench is so large: such numbers are written with an exponent.</summary>
    private const double Exact = 1e15;

    /// <summary>Below this a product by a power of ten is off by less than 1e-6.</summary>
    private const double SurelyRounded = 1e9;

    private static readonly double[] PowersOfTen = [1, 10, 100, 1e3, 1e4, 1e5, 1e6];

    /// <summary>A number to a multiple of a step (more than 0), with as many decimals as the step has.</summary>
    public static string ToStep(double value, double step, Rounding rounding = Rounding.Nearest) =>
        Fixed(Snap(value, step, rounding), DecimalsOf(step));

    /// <summary>The multiple of a step nearest to a value, or below or above it.</summary>
    public static double Snap(double value, double step, Rounding rounding = Rounding.Nearest) =>
        Math.Abs(value / step) < Exact ? (double)((decimal)Round(value / step, rounding) * (decimal)step) : value;

    /// <summary>A number to so many significant digits, without zeros at its end; whole digits are never dropped.</summary>
    public static string Significant(double value, int digits, Rounding rounding = Rounding.Nearest)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return Fixed(value, 0);
        }

        var decimals = Math.Clamp(digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 9);
        var step = Math.Pow(10, -decimals);
        return Trim(ToStep(value, step, rounding));
    }

    /// <summary>A number with so many decimals, the zeros at its end dropped.</summary>
    public static string AtMost(double value, int decimals) => Trim(Fixed(value, decimals));

    /// <summary>Writes the same to the end of a text.</summary>
    public static StringBuilder AppendAtMost(this StringBuilder text, double value, int decimals)
    {
        if (Scaled(value, decimals) is not { } scaled)
        {
            return text.Append(AtMost(value, decimals));
        }

        var left = decimals;
        for (; left > 0 && scaled % 10 == 0; left--)
        {
            scaled /= 10;
        }

        Span<char> digits = stackalloc char[24];
        return text.Append(digits[..Write(digits, scaled, left)]);
    }

    /// <summary>A number with exactly so many decimals.</summary>
    public static string Fixed(double value, int decimals)
    {
        if (!(Math.Abs(value) < Exact))
        {
            return value.ToString("G6", CultureInfo.InvariantCulture);
        }

        if (Scaled(value, decimals) is { } scaled)
        {
            Span<char> digits = stackalloc char[24];
            return digits[..Write(digits, scaled, decimals)].ToString();
        }

        var text = value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
        return text.StartsWith('-') && text.All(c => c is '-' or '0' or '.') ? text[1..] : text;
    }

    /// <summary>A number to the nearest sixteenth as a tape measure shows it: "19 1/2", "3/16", "7". Whole and fraction are held together.</summary>
    public static string Sixteenths(double value)
    {
        if (!(Math.Abs(value) < Exact / 16))
        {
            return Fixed(value, 0);
        }

        var sixteenths = (long)Math.Round(Math.Abs(value) * 16, MidpointRounding.AwayFromZero);
        var (whole, over) = (sixteenths / 16, sixteenths % 16);
        var under = 16L;
        for (; over > 0 && over % 2 == 0; under /= 2)
        {
            over /= 2;
        }

        var sign = value < 0 && sixteenths > 0 ? "-" : "";
        var fraction = over == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $"{over}/{under}");
        return sign + (whole == 0 && over > 0 ? fraction : whole.ToString(CultureInfo.InvariantCulture) + (over > 0 ? "\u00A0" + fraction : ""));
    }

    /// <summary>A whole number.</summary>
    public static string Whole(int value) => value.ToString(CultureInfo.InvariantCulture);

    /// <summary>A day as ISO 8601 writes it.</summary>
    public static string Day(DateOnly day) => day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);

    private static double Round(double value, Rounding rounding)
    {
        var slack = Math.Max(Math.Abs(value), 1) * Noise;
        return rounding switch
        {
            Rounding.Down => Math.Floor(value + slack),
            Rounding.Up => Math.Ceiling(value - slack),
            _ => Math.Round(value, MidpointRounding.AwayFromZero),
        };
    }

    // The number in units of its last decimal, where the product by a power of ten, which is off by less than 1e-6, leaves no doubt to
    // which side it is rounded; null for the rest, which the slower way decides by all its digits.
    private static long? Scaled(double value, int decimals)
    {
        if (decimals >= PowersOfTen.Length)
        {
            return null;
        }

        var product = Math.Abs(value) * PowersOfTen[decimals];
        var whole = Math.Floor(product);
        var over = product - whole;
        if (!(product < SurelyRounded) || Math.Abs(over - 0.5) < 1e-6)
        {
            return null;
        }

        var scaled = (long)whole + (over > 0.5 ? 1 : 0);
        return value < 0 ? -scaled : scaled;
    }

    // Digits from the last to the first, at least one before the point.
    private static int Write(Span<char> text, long scaled, int decimals)
    {
        Span<char> backwards = stackalloc char[24];
        var (count, rest) = (0, Math.Abs(scaled));
        for (var place = 0; place <= decimals || rest > 0; place++)
        {
            if (place == decimals && decimals > 0)
            {
                backwards[count++] = '.';
            }

            backwards[count++] = (char)('0' + (rest % 10));
            rest /= 10;
        }

        if (scaled < 0)
        {
            backwards[count++] = '-';
        }

        for (var i = 0; i < count; i++)
        {
            text[i] = backwards[count - 1 - i];
        }

        return count;
    }

    private static int DecimalsOf(double step)
    {
        var decimals = 0;
        for (var rest = (decimal)step; rest != decimal.Truncate(rest) && decimals < 9; decimals++)
        {
            rest *= 10;
        }

        return decimals;
    }

    private static string Trim(string number) => number.Contains('.', StringComparison.Ordinal) ? number.TrimEnd('0').TrimEnd('.') : number;
}
