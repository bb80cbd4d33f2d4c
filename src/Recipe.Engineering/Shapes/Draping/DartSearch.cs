using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Finds darts, and what shear remains with them.</summary>
internal static class DartSearch
{
    internal static DartAdvice Search(DrapeNet net, double limit)
    {
        DrapeCell[] locked = [.. net.Cells.Where(cell => cell.IsWhole && Math.Abs(cell.Shear) > limit)];
        if (locked.Length == 0 || net.Flat is null || !net.FlatFollowsRim)
        {
            return new DartAdvice([], null, locked.Length == 0);
        }

        Dart[] darts = [.. Regions(locked).Select(region => DartOf(net, region)).OrderBy(dart => Turn(dart.Tip))];
        double remaining = Remaining(net, darts);
        return new DartAdvice([.. darts], Angle.FromRadians(remaining), remaining <= limit);
    }

    private static Point2 Centre(DrapeCell cell) => new(cell.I + 0.5, cell.J + 0.5);

    private static double Turn(Point2 at)
    {
        double turn = Math.Atan2(at.Y, at.X);
        return turn < 0 ? turn + (2 * Math.PI) : turn;
    }

    private static List<List<DrapeCell>> Regions(DrapeCell[] locked)
    {
        var rest = locked.ToDictionary(cell => (cell.I, cell.J));
        List<List<DrapeCell>> regions = [];
        foreach (DrapeCell first in locked)
        {
            if (!rest.Remove((first.I, first.J)))
            {
                continue;
            }

            List<DrapeCell> region = [first];
            for (int next = 0; next < region.Count; next++)
            {
                for (int k = 0; k < 9; k++)
                {
                    if (rest.Remove((region[next].I + (k % 3) - 1, region[next].J + (k / 3) - 1), out DrapeCell near))
                    {
                        region.Add(near);
                    }
                }
            }

            regions.Add(region);
        }

        return regions;
    }

    private static Dart DartOf(DrapeNet net, List<DrapeCell> region)
    {
        double step = net.Step.Meters;
        Point2 tip = Centre(region.MinBy(cell => Centre(cell).Norm)) * step;
        Point2 mouth = OutlineShapes.NearestOnRim(net.Flat!, tip);
        Point2 way = tip - mouth;
        return new Dart(
            mouth,
            tip,
            net.PlaceOf(mouth),
            net.PlaceOf(tip),
            Length.FromMeters(way.Norm),
            Angle.FromRadians(Math.Atan2(way.Y, way.X)),
            Area.FromSquareMeters(region.Sum(cell => cell.SquareMetres)));
    }

    private static double Remaining(DrapeNet net, Dart[] darts)
    {
        // The lines that part the cloth, as angles round the start; one dart alone is drawn on through the start.
        List<(double Turn, double Reach)> lines = [.. darts.Select(dart => (Turn(dart.Tip), dart.Tip.Norm)).DistinctBy(line => line.Item1)];
        if (lines.Count == 1)
        {
            lines.Add(((lines[0].Turn + Math.PI) % (2 * Math.PI), lines[0].Reach));
            lines.Sort();
        }

        double step = net.Step.Meters;
        double worst = net.Cells
            .Where(cell => cell.IsWhole && Sector(lines, Centre(cell) * step) < 0)
            .Select(cell => Math.Abs(cell.Shear)).DefaultIfEmpty(0).Max();
        MeshTopology surface = net.Surface;
        var sectors = new int[surface.Count];
        for (int triangle = 0; triangle < surface.Count; triangle++)
        {
            sectors[triangle] = net.FlatOf(Middle(surface, triangle)) is { } flat ? Sector(lines, flat) : -1;
        }

        for (int sector = 0; sector < lines.Count; sector++)
        {
            MeshTopology all = surface.Only(triangle => sectors[triangle] == sector);
            int[] part = all.Parts(out int parts);
            for (int index = 0; index < parts; index++)
            {
                MeshTopology piece = parts == 1 ? all : all.Only(triangle => part[triangle] == index);
                if (piece.Area > 2 * step * step)
                {
                    worst = Math.Max(worst, Alone(net, piece));
                }
            }
        }

        return worst;
    }

    private static Point3 Middle(MeshTopology surface, int triangle) =>
        (surface.At(triangle, 0) + surface.At(triangle, 1) + surface.At(triangle, 2)) * (1.0 / 3);

    private static double Alone(DrapeNet net, MeshTopology piece)
    {
        Point3 sum = default;
        for (int triangle = 0; triangle < piece.Count; triangle++)
        {
            sum += Middle(piece, triangle) * (Point3.Cross(piece.At(triangle, 1) - piece.At(triangle, 0), piece.At(triangle, 2) - piece.At(triangle, 0)).Norm / 2);
        }

        ClothGround ground = new(piece);
        Point3 start = ground.Tree.Nearest(sum * (1 / piece.Area)).Foot;
        double step = net.Step.Meters;
        Point2 flat = net.FlatOf(start) ?? default;
        Point3 warp = (net.PlaceOf(flat + new Point2(step / 2, 0)) ?? start) - (net.PlaceOf(flat - new Point2(step / 2, 0)) ?? start);
        Point3 normal = ground.Tree.Nearest(start).Normal;
        return Point3.Cross(warp, normal).Norm > 1e-3 * warp.Norm && warp.Norm > 0
            ? Draping.Over(ground, start, warp, 0, step).GreatestShear.Radians
            : net.GreatestShear.Radians;
    }

    // The sector between two lines, or -1 within the reach of their tips.
    private static int Sector(List<(double Turn, double Reach)> lines, Point2 flat)
    {
        double turn = Turn(flat);
        int sector = lines.FindLastIndex(line => line.Turn <= turn);
        sector = sector < 0 ? lines.Count - 1 : sector;
        return flat.Norm < Math.Min(lines[sector].Reach, lines[(sector + 1) % lines.Count].Reach) ? -1 : sector;
    }
}
