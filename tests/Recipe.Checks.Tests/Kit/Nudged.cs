using System.Globalization;
using System.Text.RegularExpressions;
using Recipe.Text.Units;

namespace Recipe.Checks.Tests;

/// <summary>A recipe with one thing changed: a line or block left out, or one number another.</summary>
internal static partial class Nudged
{
    /// <summary>Every line and every block of the text in turn, a block before its lines, with the text that is left without it.</summary>
    public static IEnumerable<(int Line, int End, string What, string Without)> Gaps(string text)
    {
        var lines = text.Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            var line = lines[i].Trim();
            if (line.Length == 0 || line == "}" || line.StartsWith('#'))
            {
                continue;
            }

            var end = i;
            if (line.EndsWith('{'))
            {
                var indent = lines[i].Length - lines[i].TrimStart().Length;
                end = Array.FindIndex(lines, i, l => l.TrimEnd() == new string(' ', indent) + "}");
            }

            if (end >= i)
            {
                yield return (i + 1, end + 1, line, string.Join('\n', lines[..i].Concat(lines[(end + 1)..])));
            }
        }
    }

    /// <summary>Every quantity of the text in turn.</summary>
    public static IEnumerable<Number> Numbers(string text) => Quantity().Matches(text)
        .Where(m => double.Parse(m.Groups[1].ValueSpan, CultureInfo.InvariantCulture) > 0)
        .Select(m => new Number(text, m.Groups[1].Index, m.Groups[1].Value, UnitTable.TryRead(m.Groups[2].ValueSpan, out _, out _) ? m.Value : m.Groups[1].Value));

    // A number and the unit or "%" behind it, or a count at the end of a line. A day, a name with digits and an angle such as +-45 are none.
    [GeneratedRegex(@"(?<=[ (])([0-9]+(?:\.[0-9]+)?)(?=[ \n])(?: ([a-zA-Z][a-zA-Z0-9/.]*|%))?(?![-0-9:])", RegexOptions.CultureInvariant)]
    private static partial Regex Quantity();

    /// <summary>One number of a text.</summary>
    internal sealed record Number(string Text, int Start, string Written, string What)
    {
        public double Value { get; } = double.Parse(Written, CultureInfo.InvariantCulture);

        public int Line => Text.AsSpan(0, Start).Count('\n') + 1;

        /// <summary>Whether only whole numbers make sense here: a count of coats or plies.</summary>
        public bool IsCount { get; } = What == Written && !Written.Contains('.', StringComparison.Ordinal);

        /// <summary>The text with another number in its place.</summary>
        public string With(double value) => string.Concat(Text.AsSpan(0, Start), Show(value), Text.AsSpan(Start + Written.Length));

        public string Show(double value) => IsCount ? Math.Round(value).ToString("0", CultureInfo.InvariantCulture) : Rounded(value).ToString("0.##########", CultureInfo.InvariantCulture);

        /// <summary>Three significant digits: as fine as anybody writes a limit.</summary>
        public static double Rounded(double value)
        {
            var step = (decimal)Math.Pow(10, Math.Floor(Math.Log10(value)) - 2);
            return (double)(Math.Round((decimal)value / step) * step);
        }
    }
}
