using System.Text;

namespace Recipe.Documents.Drawings;

/// <summary>Text broken into lines of a drawing.</summary>
internal static class TextLines
{
    /// <summary>Lines no wider than a width, mm, broken between words; a word that is too wide is broken where it must be.</summary>
    public static IReadOnlyList<string> Wrap(string text, double widthMm, double sizePt, bool strong = false)
    {
        var lines = new List<string>();
        var line = new StringBuilder();
        foreach (var word in text.Split(' ', StringSplitOptions.RemoveEmptyEntries))
        {
            var rest = word;
            if (line.Length > 0 && !Fits(line + " " + rest))
            {
                lines.Add(line.ToString());
                line.Clear();
            }

            while (!Fits(rest) && rest.Length > 1)
            {
                var length = rest.Length - 1;
                while (length > 1 && !Fits(rest[..length]))
                {
                    length--;
                }

                lines.Add(rest[..length]);
                rest = rest[length..];
            }

            line.Append(line.Length > 0 ? " " : "").Append(rest);
        }

        if (line.Length > 0)
        {
            lines.Add(line.ToString());
        }

        return lines;

        bool Fits(string piece) => Lettering.WidthMm(piece, sizePt, strong) <= widthMm;
    }
}
