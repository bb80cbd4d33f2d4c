namespace Recipe.Documents.Drawings;

/// <summary>How much room letters take, so that texts of a drawing can be kept apart.</summary>
internal static class Lettering
{
    private const double MmPerPoint = 25.4 / 72;

    // A wide guess for any face; the writers of drawings measure with the face they embed.
    private const double WidthPerSize = 0.6;

    /// <summary>Height of capitals and digits of a size, mm.</summary>
    public static double HeightMm(double sizePt) => 0.73 * sizePt * MmPerPoint;

    /// <summary>Distance of the base lines of two lines of text, mm.</summary>
    public static double LineMm(double sizePt) => 1.2 * sizePt * MmPerPoint;

    /// <summary>Width of a line of text, mm.</summary>
    public static double WidthMm(string text, double sizePt, bool strong = false)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.Length * WidthPerSize * (strong ? 1.1 : 1) * sizePt * MmPerPoint;
    }
}
