using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing;

/// <summary>How many large numbers of a panel stand beside each other at the bench: two, or three where all of them fit, so that none stands alone under two others.</summary>
internal static class PanelColumns
{
    /// <summary>Width of a panel on the smaller paper, mm: 210 less the margins.</summary>
    public const double PanelMm = 180;

    /// <summary>Room between the edge of a card and what stands in it, mm.</summary>
    public const double Side = 2.5;

    private const double BigPt = 28;
    private const double UnitShare = 0.65;

    /// <summary>Two or three. A number with a space to write in wants half of the paper.</summary>
    public static int AtTheBench(KeyNumbers numbers) =>
        numbers.Items.Length == 3 && numbers.Items.All(number => number.Blank is null && WidthOf(number.Value) <= (PanelMm / 3) - (2 * Side)) ? 3 : 2;

    // As it is set: digits large, words and units less so.
    private static double WidthOf(string value)
    {
        var words = value.Split(' ', '\u00A0');
        return words.Sum(word => Lettering.WidthMm(word, Size(word), strong: true)) + (Lettering.WidthMm(" ", BigPt, strong: true) * (words.Length - 1));
    }

    private static double Size(string word) => word.Length > 0 && (char.IsAsciiDigit(word[0]) || word[0] == '-') ? BigPt : BigPt * UnitShare;
}
