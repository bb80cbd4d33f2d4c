using System.Globalization;

namespace Recipe.Syntax.Parsing;

/// <summary>Recognises dates that are not written year-month-day: <c>10/01/2026</c>, <c>13.10.2026</c>, <c>2026/10/13</c>.</summary>
internal static class OtherDate
{
    /// <summary>The date that starts at a place of the text: how long it is, and the days that it can be.</summary>
    /// <param name="text">The text.</param>
    /// <param name="at">Where its first figure stands.</param>
    /// <param name="length">Its characters.</param>
    /// <param name="days">The days it can be, the day first before the month first; none when no calendar has a date with a year of four figures.</param>
    public static bool TryRead(string text, int at, out int length, out IReadOnlyList<DateOnly> days)
    {
        length = 0;
        days = [];
        var first = Figures(text, at);
        var separator = At(text, at + first);
        var second = Figures(text, at + first + 1);
        var third = Figures(text, at + first + second + 2);
        if (separator is not ('/' or '.' or '-') || At(text, at + first + 1 + second) != separator || second is 0 or > 2)
        {
            return false;
        }

        length = first + second + third + 2;
        var yearFirst = first == 4 && third is 1 or 2;
        var yearLast = first is 1 or 2 && (third == 4 || (third == 2 && separator == '/'));
        if (!(yearFirst || yearLast) || Continues(text, at + length))
        {
            return false;
        }

        var (a, b, c) = (Number(text, at, first), Number(text, at + first + 1, second), Number(text, at + first + second + 2, third));
        days = yearFirst ? Days((a, b, c)) : Days((Full(c), b, a), (Full(c), a, b));

        // Three short numbers that are no day are something else, 0/45/90 say. A year of four figures is a date in any case.
        return days.Count > 0 || yearFirst || third == 4;
    }

    private static int Figures(string text, int at)
    {
        var end = at;
        while (char.IsAsciiDigit(At(text, end)))
        {
            end++;
        }

        return end - at;
    }

    private static char At(string text, int at) => at < text.Length ? text[at] : '\0';

    /// <summary>Whether more of a number or a word follows.</summary>
    private static bool Continues(string text, int at) =>
        Characters.ContinuesWord(At(text, at)) || (At(text, at) is '/' or '.' or '-' && char.IsAsciiLetterOrDigit(At(text, at + 1)));

    private static int Number(string text, int at, int length) => int.Parse(text.AsSpan(at, length), NumberStyles.None, CultureInfo.InvariantCulture);

    /// <summary>Two figures are a year of this century: nothing on the shelf is older.</summary>
    private static int Full(int year) => year < 100 ? 2000 + year : year;

    private static DateOnly[] Days(params ReadOnlySpan<(int Year, int Month, int Day)> readings)
    {
        var days = new List<DateOnly>();
        foreach (var (year, month, day) in readings)
        {
            if (year is >= 1 and <= 9999 && month is >= 1 and <= 12 && day >= 1 && day <= DateTime.DaysInMonth(year, month))
            {
                days.Add(new DateOnly(year, month, day));
            }
        }

        return [.. days.Distinct()];
    }
}
