using PdfSharp.Fonts;
using Recipe.Documents.Fonts;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>Hands the two faces of this assembly to the PDF library; whatever it asks for, it gets one of them.</summary>
internal sealed class PdfFonts : IFontResolver
{
    public const string Family = "DejaVu Sans Condensed";
    private const string Regular = "regular";
    private const string Bold = "bold";

    private PdfFonts()
    {
    }

    /// <summary>Makes them known, once.</summary>
    public static void Install() => GlobalFontSettings.FontResolver ??= new PdfFonts();

    public FontResolverInfo ResolveTypeface(string familyName, bool isBold, bool isItalic) => new(isBold ? Bold : Regular);

    public byte[] GetFont(string faceName) => FontFile.Of(faceName == Bold).Bytes();
}
