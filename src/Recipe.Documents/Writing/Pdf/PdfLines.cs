using System.Text;
using Recipe.Documents.Drawings;
using Recipe.Documents.Fonts;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Writing.Pdf;

/// <summary>A stretch of a line in one face.</summary>
/// <param name="Text">The text.</param>
/// <param name="Strong">Whether it is bold.</param>
/// <param name="SizePt">Size of type, points.</param>
/// <param name="At">Distance from the line's left end, mm.</param>
internal readonly record struct Stretch(string Text, bool Strong, double SizePt, double At);

/// <summary>A line that was broken from a text.</summary>
internal sealed record Line(IReadOnlyList<Stretch> Stretches, double WidthMm);

/// <summary>
/// Breaks text into lines: at spaces, after a hyphen between letters, and inside a word only when it is wider than the line. A
/// no-break space is no place to break.
/// </summary>
internal static class PdfLines
{
    /// <summary>A text of some faces and sizes.</summary>
    public readonly record struct Ink(string Text, bool Strong, double SizePt);

    private readonly record struct Word(Ink[] Inks, double Width, double Space);

    /// <summary>The runs of a phrase in one size.</summary>
    public static IEnumerable<Ink> Inks(Phrase phrase, double sizePt, bool strong = false) =>
        phrase.Runs.IsDefaultOrEmpty ? [] : phrase.Runs.Select(run => new Ink(run.Text, strong || run.Style == RunStyle.Strong, sizePt));

    /// <summary>Lines no wider than that; at least one when there is anything to read.</summary>
    public static List<Line> Break(IEnumerable<Ink> text, double widthMm)
    {
        var lines = new List<Line>();
        var line = new List<Word>();
        var width = 0.0;
        foreach (var word in Words(text))
        {
            if (word.Width <= widthMm)
            {
                Add(word);
                continue;
            }

            foreach (var part in Fitting(word, widthMm))
            {
                Add(part);
            }
        }

        if (line.Count > 0)
        {
            lines.Add(Join(line));
        }

        return lines;

        void Add(Word word)
        {
            var space = line.Count > 0 ? word.Space : 0;
            if (line.Count > 0 && width + space + word.Width > widthMm + 1e-6)
            {
                lines.Add(Join(line));
                line.Clear();
                (width, space) = (0, 0);
            }

            line.Add(word);
            width += space + word.Width;
        }
    }

    /// <summary>Width of the widest piece that is not broken, and of the whole in one line, mm.</summary>
    public static (double Least, double Whole) Widths(IEnumerable<Ink> text)
    {
        var (least, whole) = (0.0, 0.0);
        foreach (var word in Words(text))
        {
            least = Math.Max(least, word.Width);
            whole += word.Width + (whole > 0 ? word.Space : 0);
        }

        return (least, whole);
    }

    /// <summary>Width of a text, mm.</summary>
    public static double WidthOf(string text, bool strong, double sizePt) => FontFile.Of(strong).WidthOf(text) * sizePt * Lettering.MmPerPoint;

    private static List<Word> Words(IEnumerable<Ink> text)
    {
        var words = new List<Word>();
        var inks = new List<Ink>();
        var (width, space) = (0.0, 0.0);
        var last = '\0';
        foreach (var ink in text)
        {
            var clean = PdfText.Clean(ink.Text, ink.Strong);
            var start = 0;
            for (var i = 0; i <= clean.Length; i++)
            {
                var isSpace = i < clean.Length && clean[i] == ' ';
                var isHyphen = i > start && i < clean.Length && clean[i - 1] == '-' && char.IsLetter(clean[i]) && char.IsLetter(i > 1 ? clean[i - 2] : last);
                if (i < clean.Length && !isSpace && !isHyphen)
                {
                    continue;
                }

                if (i > start)
                {
                    var piece = ink with { Text = clean[start..i].Replace('\u00A0', ' ') };
                    inks.Add(piece);
                    width += WidthOf(piece.Text, piece.Strong, piece.SizePt);
                }

                if ((isSpace || isHyphen) && inks.Count > 0)
                {
                    words.Add(new Word([.. inks], width, space));
                    inks.Clear();
                    (width, space) = (0, 0);
                }

                if (isSpace)
                {
                    space = WidthOf(" ", ink.Strong, ink.SizePt);
                }

                start = isSpace ? i + 1 : i;
            }

            last = clean.Length > 0 ? clean[^1] : last;
        }

        if (inks.Count > 0)
        {
            words.Add(new Word([.. inks], width, space));
        }

        return words;
    }

    private static IEnumerable<Word> Fitting(Word word, double widthMm)
    {
        var piece = new StringBuilder();
        var space = word.Space;
        var inks = new List<Ink>();
        var width = 0.0;
        foreach (var ink in word.Inks)
        {
            piece.Clear();
            foreach (var rune in ink.Text.EnumerateRunes())
            {
                var advance = FontFile.Of(ink.Strong).WidthOf(rune) * ink.SizePt * Lettering.MmPerPoint;
                if (width > 0 && width + advance > widthMm)
                {
                    inks.Add(ink with { Text = piece.ToString() });
                    yield return new Word([.. inks], width, space);
                    piece.Clear();
                    inks.Clear();
                    (width, space) = (0, 0);
                }

                piece.Append(rune.ToString());
                width += advance;
            }

            inks.Add(ink with { Text = piece.ToString() });
        }

        yield return new Word([.. inks], width, space);
    }

    // Neighbours of one face become one text, so that a reader can select and search whole sentences.
    private static Line Join(List<Word> words)
    {
        var stretches = new List<Stretch>();
        var text = new StringBuilder();
        var (at, start) = (0.0, 0.0);
        Ink? open = null;
        void Close()
        {
            if (open is { } ink && text.Length > 0)
            {
                stretches.Add(new Stretch(text.ToString(), ink.Strong, ink.SizePt, start));
            }

            text.Clear();
        }

        for (var i = 0; i < words.Count; i++)
        {
            for (var k = 0; k < words[i].Inks.Length; k++)
            {
                var ink = words[i].Inks[k];
                var space = k == 0 && i > 0 ? words[i].Space : 0;
                var isSame = open is { } before && before.Strong == ink.Strong && before.SizePt == ink.SizePt
                    && (space == 0 || Math.Abs(space - WidthOf(" ", ink.Strong, ink.SizePt)) < 1e-9);
                if (!isSame)
                {
                    Close();
                    (open, start) = (ink, at + space);
                }
                else if (space > 0)
                {
                    text.Append(' ');
                }

                text.Append(ink.Text);
                at += space + WidthOf(ink.Text, ink.Strong, ink.SizePt);
            }
        }

        Close();
        return new Line(stretches, at);
    }
}
