using System.Globalization;
using System.Text;

namespace Recipe.Text.Units;

/// <summary>A number with its unit inside a text.</summary>
/// <param name="Start">Where its number begins.</param>
/// <param name="End">Behind its unit.</param>
/// <param name="Numbers">The number, or both ends of a range such as <c>18 to 25 degC</c>.</param>
/// <param name="Digits">The most figures that one of them has, zeros at the end of a whole number not counted.</param>
/// <param name="Unit">Its unit.</param>
public readonly record struct WrittenQuantity(int Start, int End, IReadOnlyList<double> Numbers, int Digits, Unit Unit);

/// <summary>Finds quantities in texts such as those of fixes and assumptions, and knows which units are those of a US shop.</summary>
public static class WrittenQuantities
{
    /// <summary>The unit of US shops for what this one measures, by the size of the amount; null where they have none of their own or none is wanted.</summary>
    /// <param name="unit">The unit to be replaced.</param>
    /// <param name="si">The largest of the amounts, in SI.</param>
    public static Unit? UsFor(Unit unit, double si)
    {
        ArgumentNullException.ThrowIfNull(unit);
        return UsForSymbol(unit.Symbol, si);
    }

    private static Unit? UsForSymbol(string symbol, double si) => symbol switch
    {
        "degC" => UnitTable.Get("degF"),
        "degC/min" => UnitTable.Get("degF/min"),
        "degC/h" => UnitTable.Get("degF/h"),
        "g" or "kg" => UnitTable.Get(Math.Abs(si) < UnitTable.Get("lb").Factor ? "oz" : "lb"),
        "mm" or "cm" or "m" => UnitTable.Get(Math.Abs(si) < 3 ? "in" : "ft"),
        "g/m2" => UnitTable.Get("oz/yd2"),
        "mbar" or "bar" => UnitTable.Get("inHg"),
        "mL" or "L" => UnitTable.Get("floz"),
        _ => null,
    };

    /// <summary>The quantities of a text in order; what stands in quotes is the reader's, and a tolerance is no quantity of its own.</summary>
    public static IEnumerable<WrittenQuantity> In(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return Found(text);
    }

    private static IEnumerable<WrittenQuantity> Found(string text)
    {
        var inQuotes = false;
        for (var i = 0; i < text.Length; i++)
        {
            inQuotes ^= text[i] == '"';
            if (inQuotes || !char.IsAsciiDigit(text[i]) || (i > 0 && UnitsInUse.IsOfAWord(text[i - 1]) && !IsMinus(text, i - 1)))
            {
                continue;
            }

            var start = i > 0 && IsMinus(text, i - 1) ? i - 1 : i;
            if (Read(text, start) is { } quantity)
            {
                if (!text[..start].EndsWith("+/- ", StringComparison.Ordinal) && !text[..start].EndsWith("+/", StringComparison.Ordinal))
                {
                    yield return quantity;
                }

                i = quantity.End - 1;
            }
            else
            {
                i = EndOfNumber(text, i) - 1;
            }
        }
    }

    /// <summary>The text with other words for some of its quantities.</summary>
    /// <param name="text">The text.</param>
    /// <param name="by">What stands for a quantity; null leaves it.</param>
    public static string Replace(string text, Func<WrittenQuantity, string?> by)
    {
        ArgumentNullException.ThrowIfNull(text);
        ArgumentNullException.ThrowIfNull(by);
        var result = new StringBuilder();
        var at = 0;
        foreach (var quantity in In(text))
        {
            if (by(quantity) is { } other)
            {
                result.Append(text, at, quantity.Start - at).Append(other);
                at = quantity.End;
            }
        }

        return at == 0 ? text : result.Append(text, at, text.Length - at).ToString();
    }

    private static bool IsMinus(string text, int at) => text[at] == '-' && (at == 0 || text[at - 1] == ' ');

    private static WrittenQuantity? Read(string text, int start)
    {
        var numbers = new List<double>();
        var digits = 0;
        var at = start;
        while (true)
        {
            var end = EndOfNumber(text, text[at] == '-' ? at + 1 : at);
            var number = text[at..end];
            numbers.Add(double.Parse(number, NumberStyles.Float, CultureInfo.InvariantCulture));
            digits = Math.Max(digits, number.Contains('.', StringComparison.Ordinal) ? number.Count(char.IsAsciiDigit) : number.TrimEnd('0').Count(char.IsAsciiDigit));
            const string to = " to ";
            if (numbers.Count == 1 && text.AsSpan(end).StartsWith(to) && end + to.Length < text.Length && char.IsAsciiDigit(text[end + to.Length]))
            {
                at = end + to.Length;
                continue;
            }

            var unitAt = end < text.Length && text[end] == ' ' ? end + 1 : end;
            return unitAt < text.Length && UnitTable.TryRead(text.AsSpan(unitAt), out var length, out var unit)
                ? new WrittenQuantity(start, unitAt + length, numbers, digits, unit)
                : null;
        }
    }

    private static int EndOfNumber(string text, int at)
    {
        while (at < text.Length && (char.IsAsciiDigit(text[at]) || (text[at] == '.' && at + 1 < text.Length && char.IsAsciiDigit(text[at + 1]))))
        {
            at++;
        }

        return at;
    }
}
