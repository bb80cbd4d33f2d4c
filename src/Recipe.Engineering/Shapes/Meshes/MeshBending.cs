using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Measures bends across edges and the angles that points take up.</summary>
internal static class MeshBending
{
    /// <summary>Share of the size within which a surface is flat.</summary>
    private const double FlatShare = 1e-4;

    /// <summary>Angle taken up by a surface that bends both ways, rad.</summary>
    private const double DoubleAngle = 0.01;

    /// <summary>Share of the area that the sharpest bends may have and still be noise.</summary>
    private const double NoiseShare = 1e-6;

    /// <summary>Turns below this are rounding, rad.</summary>
    private const double LeastTurn = 1e-6;

    internal static MeshBends Of(MeshFaces faces, MeshEdges edges)
    {
        ReadOnlySpan<Point3> points = faces.Mesh.Vertices.AsSpan();
        ReadOnlySpan<int> corners = faces.Corners;
        double sharp = MeshMeasures.SharpDegrees * Math.PI / 180;
        double size = (faces.Most - faces.Least).Norm;
        Tight inside = new();
        Tight outside = new();
        (double sharpInside, double sharpOutside, Point3 sharpAt, double longest) = (0, 0, default, 0);
        double smooth = 0;
        bool[] left = new bool[points.Length];
        for (int half = 0; half < corners.Length; half++)
        {
            int across = edges.Across[half];
            if (across < 0)
            {
                left[corners[half]] = left[corners[MeshEdges.Next(half)]] = true;
                continue;
            }

            if (across < half || corners[half] == corners[across])
            {
                continue;
            }

            (Point3 first, Point3 second) = (faces.Normals[half / 3], faces.Normals[across / 3]);
            Point3 a = points[corners[half]];
            Point3 edge = points[corners[MeshEdges.Next(half)]] - a;
            double turn = Math.Atan2(Point3.Cross(first, second).Norm, Point3.Dot(first, second));
            if (turn < LeastTurn)
            {
                continue;
            }

            double length = edge.Norm;
            bool isHollow = Point3.Dot(first, points[corners[MeshEdges.Previous(across)]] - a) > 0;
            if (turn > sharp)
            {
                left[corners[half]] = left[corners[MeshEdges.Next(half)]] = true;
                sharpInside += isHollow ? length : 0;
                sharpOutside += isHollow ? 0 : length;
                (sharpAt, longest) = isHollow && length > longest ? (a + (edge * 0.5), length) : (sharpAt, longest);
                continue;
            }

            double width = HalfChord(faces, half, length) + HalfChord(faces, across, length);
            smooth += turn * length;
            (isHollow ? inside : outside).Add(turn / width, width * length, half);
        }

        double noise = NoiseShare * faces.Area;
        (double hollow, int hollowAt) = inside.Greatest(noise);
        (double standing, _) = outside.Greatest(noise);
        (double taken, double most) = AngleTakenUp(faces, left);
        bool isSharpInside = sharpInside > 1e-3 * size;
        bool isFlat = FromPlane(faces) <= FlatShare * size;

        // All of the angle at one point is the tip of a cone, which is bent one way round it.
        Curvature kind = isFlat ? Curvature.Flat
            : taken - (most > 0.95 * taken ? most : 0) > DoubleAngle ? Curvature.Double
            : smooth > 1e-3 * size ? Curvature.Single
            : Curvature.Faceted;
        Point3? at = isSharpInside ? sharpAt : hollow > 0 ? EdgeMiddle(faces, hollowAt) : null;
        return new MeshBends(
            kind,
            isSharpInside ? Length.Zero : hollow > 0 ? Length.FromMeters(1 / hollow) : null,
            at,
            sharpOutside > 1e-3 * size ? Length.Zero : standing > 0 ? Length.FromMeters(1 / standing) : null,
            ReciprocalLength.FromInverseMeters(Math.Max(hollow, standing)),
            Length.FromMeters(sharpInside),
            Length.FromMeters(sharpOutside),
            Angle.FromRadians(taken));
    }

    /// <summary>From an edge to the circumcentre of a triangle on it, kept within the triangle.</summary>
    private static double HalfChord(MeshFaces faces, int half, double length)
    {
        ReadOnlySpan<int> corners = faces.Corners;
        Point3 apex = faces.Mesh.Vertices[corners[MeshEdges.Previous(half)]];
        Point3 p = faces.Mesh.Vertices[corners[half]] - apex;
        Point3 q = faces.Mesh.Vertices[corners[MeshEdges.Next(half)]] - apex;
        double twice = 2 * faces.Areas[half / 3];
        double height = twice / length;
        return twice > 0 ? Math.Clamp(length / 2 * Point3.Dot(p, q) / twice, height / 4, height * 3 / 4) : 0;
    }

    private static Point3 EdgeMiddle(MeshFaces faces, int half) =>
        (faces.Mesh.Vertices[faces.Corners[half]] + faces.Mesh.Vertices[faces.Corners[MeshEdges.Next(half)]]) * 0.5;

    private static (double Sum, double Most) AngleTakenUp(MeshFaces faces, bool[] left)
    {
        ReadOnlySpan<Point3> points = faces.Mesh.Vertices.AsSpan();
        double[] lacks = new double[points.Length];
        foreach ((int a, int b, int c) in faces.Mesh.Triangles.AsSpan())
        {
            (Point3 ab, Point3 bc, Point3 ca) = (points[b] - points[a], points[c] - points[b], points[a] - points[c]);
            double twice = Point3.Cross(ab, ca).Norm;
            double atA = Math.Atan2(twice, -Point3.Dot(ab, ca));
            double atB = Math.Atan2(twice, -Point3.Dot(ab, bc));
            lacks[a] += atA;
            lacks[b] += atB;
            lacks[c] += Math.PI - atA - atB;
        }

        (double sum, double most) = (0, 0);
        for (int i = 0; i < lacks.Length; i++)
        {
            if (!left[i] && lacks[i] > 0)
            {
                double lack = Math.Abs((2 * Math.PI) - lacks[i]);
                (sum, most) = (sum + lack, Math.Max(most, lack));
            }
        }

        return (sum, most);
    }

    /// <summary>Greatest distance from the plane through the middle of the area, across its mean normal.</summary>
    private static double FromPlane(MeshFaces faces)
    {
        Point3 normal = faces.NormalSum.Unit();
        if (normal == default)
        {
            return double.PositiveInfinity;
        }

        (double low, double high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (Point3 point in faces.Mesh.Vertices)
        {
            double height = Point3.Dot(point - faces.Least, normal);
            (low, high) = (Math.Min(low, height), Math.Max(high, height));
        }

        return (high - low) / 2;
    }

    /// <summary>Keeps bends by curvature, in steps of an eighth of a power of two, so that the greatest that is no noise can be told.</summary>
    private sealed class Tight
    {
        private const int Steps = 8;
        private const int Offset = 512;
        private readonly double[] _area = new double[2 * Offset];
        private readonly double[] _greatest = new double[2 * Offset];
        private readonly int[] _where = new int[2 * Offset];

        internal void Add(double curvature, double area, int where)
        {
            if (!double.IsFinite(curvature) || curvature <= 0)
            {
                return;
            }

            int step = Math.Clamp((int)Math.Floor(Math.Log2(curvature) * Steps) + Offset, 0, (2 * Offset) - 1);
            _area[step] += area;
            if (curvature > _greatest[step])
            {
                (_greatest[step], _where[step]) = (curvature, where);
            }
        }

        internal (double Curvature, int Where) Greatest(double noise)
        {
            double above = 0;
            for (int step = _area.Length - 1; step >= 0; step--)
            {
                above += _area[step];
                if (above > noise && _greatest[step] > 0)
                {
                    return (_greatest[step], _where[step]);
                }
            }

            return (0, 0);
        }
    }
}
