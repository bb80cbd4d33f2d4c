using Recipe.Documents.Fonts;
using Recipe.Documents.Quantities;

namespace Recipe.Documents.Drawings;

/// <summary>
/// How much room letters take, so that texts of a drawing can be kept apart: the widths of the font that a PDF embeds and that a
/// drawing names first. No pair of letters is moved together, so that a face which does so takes less room and never more.
/// </summary>
internal static class Lettering
{
    /// <summary>A point of type is a 72nd of an inch.</summary>
    public const double MmPerPoint = 25.4 / 72;

    /// <summary>Height of capitals and digits of a size, mm.</summary>
    public static double HeightMm(double sizePt) => 0.73 * sizePt * MmPerPoint;

    /// <summary>Distance of the base lines of two lines of text, mm.</summary>
    public static double LineMm(double sizePt) => 1.2 * sizePt * MmPerPoint;

    /// <summary>How far letters such as g reach below the base line, mm.</summary>
    public static double DepthMm(double sizePt) => 0.24 * sizePt * MmPerPoint;

    /// <summary>Width of a line of text, mm.</summary>
    public static double WidthMm(string text, double sizePt, bool strong = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        return FontFile.Of(strong).WidthOf(PlainText.Clean(text)) * sizePt * MmPerPoint;
    }
}
