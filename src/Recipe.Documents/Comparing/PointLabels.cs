using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Comparing;

/// <summary>Names beside points: near where there is room, farther off on a thin line, left out where there is none.</summary>
internal static class PointLabels
{
    private const double MostMm = 60;
    private const int Directions = 16;
    private static readonly double[] Distances = [2.2, 5, 9, 14, 20];

    /// <summary>Puts a name beside a point; false when there is no room for it. The drawing's table names it all the same.</summary>
    public static bool Place(Canvas canvas, double x, double y, string label, double sizePt)
    {
        var shown = Fitted.To(label, sizePt, MostMm);
        var half = Lettering.HeightMm(sizePt) / 2;
        foreach (var distance in Distances)
        {
            for (var i = 0; i < Directions; i++)
            {
                // To the right first, then up and down from there in turn: reading goes on behind the point.
                var turn = (i % 2 == 0 ? -1 : 1) * ((i + 1) / 2) * 2 * Math.PI / Directions;
                var (dx, dy) = (Math.Cos(turn) * distance, Math.Sin(turn) * distance);
                var anchor = dx > distance * 0.3 ? Anchor.Start : dx < -distance * 0.3 ? Anchor.End : Anchor.Middle;
                if (canvas.Text(x + dx, y + dy + half, shown, sizePt, anchor))
                {
                    if (distance > Distances[0])
                    {
                        canvas.Line(x, y, x + (dx * 0.85), y + (dy * 0.85), Pen.Thin);
                    }

                    return true;
                }
            }
        }

        return false;
    }
}
