using Recipe.Documents.Drawings;
using Recipe.Documents.Layout;
using Recipe.Engineering;

namespace Recipe.Documents.Shapes;

/// <summary>A flat piece with its size, its warp and where it is sheared.</summary>
internal static class FlatSketch
{
    private const double WidthMm = 180;
    private const double MostHeight = 80;
    private const double Around = 9;
    private const double LetterPt = 10;

    /// <summary>The drawing.</summary>
    /// <param name="name">Its short name.</param>
    /// <param name="title">Its caption.</param>
    /// <param name="description">What it shows.</param>
    /// <param name="outline">The piece, X along the warp, m.</param>
    /// <param name="net">The cloth, or null when it is a flattened pattern.</param>
    /// <param name="locking">Angle at which the cloth begins to wrinkle, degrees.</param>
    /// <param name="along">Its length in words.</param>
    /// <param name="across">Its width in words.</param>
    public static Drawing Of(string name, string title, string description, Outline outline, DrapeNet? net, double locking, string along, string across)
    {
        var scale = Math.Min((WidthMm - (2 * Around)) / outline.Along, (MostHeight - (2 * Around)) / outline.Across);
        var height = (outline.Across * scale) + (2 * Around);
        var left = (WidthMm - (outline.Along * scale)) / 2;
        Spot At(Point2 p) => new(Math.Round(left + ((p.X - outline.Least.X) * scale), 3), Math.Round(Around + ((outline.Most.Y - p.Y) * scale), 3));

        var canvas = new Canvas(WidthMm, height);
        canvas.Add(new PathShape([.. outline.Points.Select(At)], Pen.Firm, Closed: true, Fill.White));
        if (net is not null)
        {
            var step = net.Step.Meters;
            foreach (var cell in net.ShearBeyond(UnitsNet.Angle.FromDegrees(locking)).Cells)
            {
                var (x, y) = (cell.I * step, cell.J * step);
                canvas.Add(new PathShape([At(new(x, y)), At(new(x + step, y)), At(new(x + step, y + step)), At(new(x, y + step))], null, Closed: true, Fill.CrossHatched));
            }
        }

        // The arrow lies along the warp, which is along the roll.
        var middle = At((outline.Least + outline.Most) * 0.5);
        var half = Math.Min(outline.Along * scale / 4, 18);
        canvas.Line(middle.X - half, middle.Y, middle.X + half, middle.Y, Pen.Firm);
        canvas.Add(new PathShape([new(middle.X + half, middle.Y), new(middle.X + half - 3, middle.Y - 1.5), new(middle.X + half - 3, middle.Y + 1.5)], null, Closed: true, Fill.Black));
        canvas.Text(middle.X, middle.Y - 1.5, "warp", LetterPt, Anchor.Middle);
        canvas.Text(middle.X, height - 2, along, LetterPt, Anchor.Middle);
        canvas.Text(left - 3, height / 2, across, LetterPt, Anchor.Middle, upright: true);
        return canvas.Draw(name, title, description);
    }
}
