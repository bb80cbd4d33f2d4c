using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Writing.Pdf;

namespace Recipe.Documents.Tests.Files;

/// <summary>The room that a text takes on paper, mm.</summary>
internal readonly record struct TextBox(string Text, double Left, double Top, double Right, double Bottom)
{
    // Letters that touch are two texts too close; a hair is what adding up numbers costs.
    private const double Hair = 0.02;

    public static TextBox Of(TextShape text)
    {
        var shown = PdfText.OneLine(text.Text, text.Strong);
        var width = Lettering.WidthMm(shown, text.SizePt, text.Strong);
        var (height, depth) = (Lettering.HeightMm(text.SizePt), 0.9 * Lettering.DepthMm(text.SizePt));
        var back = text.Anchor switch
        {
            Anchor.Middle => width / 2,
            Anchor.End => width,
            _ => 0,
        };
        return text.Upright
            ? new TextBox(shown, text.At.X - height, text.At.Y - width + back, text.At.X + depth, text.At.Y + back)
            : new TextBox(shown, text.At.X - back, text.At.Y - height, text.At.X - back + width, text.At.Y + depth);
    }

    public bool Touches(TextBox other) =>
        Left < other.Right - Hair && other.Left < Right - Hair && Top < other.Bottom - Hair && other.Top < Bottom - Hair;

    public bool IsWithin(double left, double top, double right, double bottom) =>
        Left >= left - Hair && Top >= top - Hair && Right <= right + Hair && Bottom <= bottom + Hair;
}

/// <summary>What is wrong with where things stand on paper.</summary>
internal static class Boxes
{
    /// <summary>Pairs of texts that lie on each other, and texts beyond the edges.</summary>
    public static IEnumerable<string> Faults(IEnumerable<Shape> shapes, double left, double top, double right, double bottom)
    {
        var boxes = shapes.OfType<TextShape>().Where(text => text.Text.Trim().Length > 0).Select(TextBox.Of).ToList();
        foreach (var (box, i) in boxes.Select((box, i) => (box, i)))
        {
            if (!box.IsWithin(left, top, right, bottom))
            {
                yield return $"beyond the edge: {box}";
            }

            foreach (var other in boxes.Take(i).Where(box.Touches))
            {
                yield return $"on each other: {box} and {other}";
            }
        }
    }
}
