using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Documents.Shared;

namespace Recipe.Documents.Records;

/// <summary>
/// The outside of a tube or cone, cut open along the lap of its last ply and laid flat, end A on the left: nobody sees the inside. The hours of a
/// clock stand down its side: 12 is the lap, at both edges, and they run clockwise to who looks at end A.
/// </summary>
internal static class TubeMap
{
    private const double Width = 180;
    private const double Left = 26;
    private const double Longest = 128;
    private const double Highest = 84;
    private const double HourPt = 10;

    public static Drawing Of(PaperContext context, TubeEnds tube)
    {
        var say = context.Wording;
        var (length, high, highB) = Sizes(context, tube);
        var middle = 3 + (Math.Max(high, highB) / 2);
        var tall = (2 * middle) + 10;
        var canvas = new Canvas(Width, tall);
        var (right, top, bottom) = (Left + length, middle - (high / 2), middle + (high / 2));
        canvas.Add(new PathShape([new(Left, top), new(right, middle - (highB / 2)), new(right, middle + (highB / 2)), new(Left, bottom)], Pen.Bold, Closed: true));
        for (var hour = 0; hour <= 12; hour++)
        {
            var (a, b) = (top + (high * hour / 12), middle + (highB * ((hour / 12.0) - 0.5)));
            if (hour is 3 or 6 or 9)
            {
                canvas.Line(Left, a, right, b, Pen.Thin);
            }

            canvas.Line(Left, a, Left - 2, a, Pen.Firm);
            _ = canvas.Text(Left - 3, a + (Lettering.HeightMm(HourPt) / 2), Quantities.Numbers.Whole(hour == 0 ? 12 : hour), HourPt, Anchor.End);
        }

        canvas.Line(Left + (length / 2), middle - 3, Left + (length / 2), middle + 3, Pen.Thin);
        _ = canvas.Ring(Left - 16, middle, "A", HourPt + 2);
        _ = canvas.Ring(right + 6, middle, "B", HourPt + 2);
        _ = canvas.Text(right + 2, middle - (highB / 2) + 1.5, say.Say("lap"), HourPt);
        _ = canvas.Text(right + 2, middle + (highB / 2) + 1.5, say.Say("lap"), HourPt);
        canvas.Arrow(Left, tall - 4, Left + Math.Min(40, length), tall - 4, Pen.Firm);
        _ = canvas.Text(Left + Math.Min(40, length) + 2, tall - 2.5, say.Say("0°, along the part"), HourPt);
        return canvas.Draw(
            "part-map",
            say.Say("Tap map and light map: unrolled, seen from outside, cut open along the lap"),
            say.Say($"The outside of the part laid flat, end A on the left, end B on the right. Hours of a clock down its side: 12 at both edges is the lap of the last ply, and they run clockwise, looking at end A."));
    }

    // Its proportions, no more, and nothing so slender that the hours find no room.
    private static (double Length, double HighAtA, double HighAtB) Sizes(PaperContext context, TubeEnds tube)
    {
        var length = context.Plan.Geometry!.DevelopedLength.Meters;
        var (a, b) = (Math.PI * tube.A.Meters, Math.PI * tube.B.Meters);
        var round = Math.Max(a, b);
        if (!(length > 0 && round > 0 && double.IsFinite(length) && double.IsFinite(round)))
        {
            return (Longest, Highest, Highest);
        }

        var scale = Math.Min(Longest / length, Highest / round);
        var high = Math.Clamp(round * scale, Highest * 0.6, Highest);
        return (Math.Clamp(length * scale, Longest / 4, Longest), high * a / round, high * b / round);
    }
}
