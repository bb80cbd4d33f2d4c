using System.Collections.Frozen;
using System.Text.RegularExpressions;

namespace Recipe.Documents.Quantities;

/// <summary>
/// What an author wrote, set for reading: <c>0.5 degC/min</c> becomes "0.5 °C/min" with the unit held to its number. The units
/// and the digits stay the author's.
/// </summary>
internal static partial class WrittenText
{
    private static readonly FrozenSet<string> UsUnits = FrozenSet.ToFrozenSet(
        ["in", "ft", "yd", "mil", "in2", "ft2", "yd2", "in3", "ft3", "gal", "qt", "floz", "lb", "oz", "degF", "lbf", "psi", "ksi", "Msi", "inHg", "cfm"],
        StringComparer.Ordinal);

    /// <summary>The text set for reading.</summary>
    public static string ForReading(string written)
    {
        var text = written.Replace("+/-", "±", StringComparison.Ordinal);
        text = Difference().Replace(text, "°$1 difference");
        text = Degree().Replace(text, "°$1");
        text = Power().Replace(text, match => match.Groups[1].Value + (match.Groups[2].Value == "2" ? "²" : "³"));
        text = Times().Replace(text, "$1×$2");
        return BeforeUnit().Replace(text, "$1\u00A0");
    }

    /// <summary>
    /// A title or a sentence set for reading: only what can be nothing but a unit is touched, "80 g/m2" and "50 um".
    /// </summary>
    public static string InTitle(string title)
    {
        var text = PowerAfterSlash().Replace(title.Replace("+/-", "±", StringComparison.Ordinal), match => "/" + match.Groups[1].Value + (match.Groups[2].Value == "2" ? "²" : "³"));
        return NumberBeforeUnit().Replace(Micrometre().Replace(Degree().Replace(text, "°$1"), "\u00A0µm"), "\u00A0");
    }

    /// <summary>Whether any unit in the text is a US customary one.</summary>
    public static bool IsUs(string written) => Word().EnumerateMatches(written) is var words && AnyUs(written, words);

    /// <summary>A unit symbol set for reading: <c>oz/yd2</c> becomes "oz/yd²".</summary>
    public static string Symbol(string symbol) => ForReading(symbol);

    private static bool AnyUs(string written, Regex.ValueMatchEnumerator words)
    {
        foreach (var word in words)
        {
            if (UsUnits.Contains(written.Substring(word.Index, word.Length)))
            {
                return true;
            }
        }

        return false;
    }

    [GeneratedRegex(@"\bdeg([CF])-diff\b", RegexOptions.CultureInvariant)]
    private static partial Regex Difference();

    [GeneratedRegex(@"(?<![\p{L}_])deg([CF])\b", RegexOptions.CultureInvariant)]
    private static partial Regex Degree();

    [GeneratedRegex(@"(?<![\p{L}\d_])(m|cm|mm|dm|in|ft|yd)([23])(?![\p{L}\d_])", RegexOptions.CultureInvariant)]
    private static partial Regex Power();

    [GeneratedRegex(@"/(m|cm|mm|dm|in|ft|yd)([23])(?![\p{L}\d_])", RegexOptions.CultureInvariant)]
    private static partial Regex PowerAfterSlash();

    [GeneratedRegex(@"(?<=\d) um(?![\p{L}\d_])", RegexOptions.CultureInvariant)]
    private static partial Regex Micrometre();

    [GeneratedRegex(@"(?<=\d) (?=(?:g|kg|oz|lb|mm|cm|m|in|ft|mL|L|%|°C|°F)(?![\p{L}\d_]))", RegexOptions.CultureInvariant)]
    private static partial Regex NumberBeforeUnit();

    [GeneratedRegex(@"(\d[^\d]{0,6} )x( \d)", RegexOptions.CultureInvariant)]
    private static partial Regex Times();

    [GeneratedRegex(@"(\d) +(?=[\p{L}°%µ])", RegexOptions.CultureInvariant)]
    private static partial Regex BeforeUnit();

    [GeneratedRegex(@"(?<![\p{L}\d_-])[\p{L}]+[23]?(?![\p{L}\d_-])", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
