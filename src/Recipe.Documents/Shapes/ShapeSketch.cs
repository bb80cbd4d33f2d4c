using System.Collections.Immutable;
using Recipe.Documents.Layout;
using Recipe.Engineering;

namespace Recipe.Documents.Shapes;

/// <summary>The surface seen from above its corner, with the cloth on it: an isometric view, its meshes filled by their shear.</summary>
internal static class ShapeSketch
{
    private const double WidthMm = 180;
    private const double MostHeight = 110;
    private const double Margin = 2;

    // More meshes than these are a grey haze on paper, and a heavy file.
    private const int MostMeshes = 900;

    /// <summary>The drawing.</summary>
    /// <param name="name">Its short name.</param>
    /// <param name="title">Its caption.</param>
    /// <param name="description">What it shows.</param>
    /// <param name="net">The cloth.</param>
    /// <param name="rims">The rims of the surface, m.</param>
    /// <param name="up">Which way the face looks.</param>
    /// <param name="locking">Angle at which the cloth begins to wrinkle, degrees.</param>
    public static Drawing Of(string name, string title, string description, DrapeNet net, ImmutableArray<ImmutableArray<Point3>> rims, Point3 up, double locking)
    {
        var view = View.Over(up);
        var meshes = Meshes(net, view);
        var lines = rims.Select(rim => rim.Select(view.On).ToImmutableArray()).Where(rim => rim.Length > 1).ToList();
        var all = meshes.SelectMany(mesh => mesh.Corners).Concat(lines.SelectMany(line => line)).ToList();
        if (all.Count == 0)
        {
            return new Drawing(name, title, description, WidthMm, 10, []);
        }

        var (left, right, low, high) = (all.Min(p => p.X), all.Max(p => p.X), all.Min(p => p.Y), all.Max(p => p.Y));
        var scale = Math.Min((WidthMm - (2 * Margin)) / Math.Max(right - left, 1e-9), (MostHeight - (2 * Margin)) / Math.Max(high - low, 1e-9));
        var start = (WidthMm - ((right - left) * scale)) / 2;
        Spot At(Point2 p) => new(Math.Round(start + ((p.X - left) * scale), 3), Math.Round(Margin + ((high - p.Y) * scale), 3));

        var shapes = ImmutableArray.CreateBuilder<Shape>();
        foreach (var mesh in meshes.OrderBy(mesh => mesh.Nearness))
        {
            shapes.Add(new PathShape([.. mesh.Corners.Select(At)], Pen.Thin, Closed: true, ShearBands.Of(mesh.Shear, locking)));
        }

        shapes.AddRange(lines.Select(line => new PathShape([.. line.Select(At)], Pen.Firm, Closed: true)));
        return new Drawing(name, title, description, WidthMm, ((high - low) * scale) + (2 * Margin), shapes.ToImmutable());
    }

    // Several meshes are drawn as one where there are many; it shows the greatest shear of them.
    private static List<Mesh> Meshes(DrapeNet net, View view)
    {
        var together = Math.Max(1, (int)Math.Ceiling(Math.Sqrt((double)net.Cells.Length / MostMeshes)));
        var nodes = net.Nodes.ToDictionary(node => (node.I, node.J), node => node.Place);
        var meshes = new List<Mesh>();
        foreach (var group in net.Cells.GroupBy(cell => (I: Below(cell.I, together), J: Below(cell.J, together))))
        {
            var (i, j) = group.Key;
            (int I, int J)[] corners = [(i, j), (i + together, j), (i + together, j + together), (i, j + together)];
            if (corners.All(nodes.ContainsKey))
            {
                var places = corners.Select(corner => nodes[corner]).ToArray();
                var normal = Point3.Cross(places[2] - places[0], places[3] - places[1]);
                if (Point3.Dot(normal, view.Towards) > 0)
                {
                    var shear = group.Max(cell => Math.Abs(cell.Shear)) * 180 / Math.PI;
                    meshes.Add(new Mesh([.. places.Select(view.On)], places.Average(place => Point3.Dot(place, view.Towards)), shear));
                }
            }
        }

        return meshes;
    }

    private static int Below(int at, int together) => (int)Math.Floor((double)at / together) * together;

    private sealed record Mesh(ImmutableArray<Point2> Corners, double Nearness, double Shear);

    /// <summary>Looks down on the face from over its near corner.</summary>
    private sealed record View(Point3 Right, Point3 Upwards, Point3 Towards)
    {
        // Steeper than the usual isometric view, so that the near wall of a bowl does not stand before its floor.
        private const double Steepness = 50 * Math.PI / 180;

        public static View Over(Point3 up)
        {
            var z = up.Norm > 0 ? up.Unit() : new Point3(0, 0, 1);
            var other = Math.Abs(z.X) < 0.9 ? new Point3(1, 0, 0) : new Point3(0, 1, 0);
            var x = (other - (z * Point3.Dot(other, z))).Unit();
            var y = Point3.Cross(z, x);
            var (sine, cosine) = Math.SinCos(Steepness);
            var towards = ((x * -0.5) + (y * (-Math.Sqrt(3) / 2))).Unit();
            var looking = (towards * cosine) + (z * sine);
            var right = Point3.Cross(z, looking).Unit();
            return new View(right, Point3.Cross(looking, right).Unit(), looking);
        }

        public Point2 On(Point3 place) => new(Point3.Dot(place, Right), Point3.Dot(place, Upwards));
    }
}
