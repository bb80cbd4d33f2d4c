using System.Globalization;

namespace Recipe.Documents.Drawings;

/// <summary>Text of a drawing cut to the room there is: a drawing is no place for a long name, and the text beside it says it in full.</summary>
internal static class Fitted
{
    /// <summary>The text, or its beginning and an ellipsis.</summary>
    /// <param name="text">The text.</param>
    /// <param name="sizePt">Size of its letters.</param>
    /// <param name="roomMm">Width that it may take.</param>
    /// <param name="strong">Whether it stands out.</param>
    public static string To(string text, double sizePt, double roomMm, bool strong = false)
    {
        if (Lettering.WidthMm(text, sizePt, strong) <= roomMm)
        {
            return text;
        }

        var letters = new StringInfo(text);
        for (var count = letters.LengthInTextElements - 1; count > 0; count--)
        {
            var cut = letters.SubstringByTextElements(0, count) + "\u2026";
            if (Lettering.WidthMm(cut, sizePt, strong) <= roomMm)
            {
                return cut;
            }
        }

        return "";
    }
}
