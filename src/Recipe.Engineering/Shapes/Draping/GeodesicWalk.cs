namespace Recipe.Engineering;

/// <summary>
/// A straight line over a surface, found by unfolding triangle after triangle, and at a corner by leaving it with the same angle on
/// both sides.
/// </summary>
/// <remarks>Source: K. Polthier and M. Schmies, Straightest geodesics on polyhedral surfaces, 1998.</remarks>
internal sealed class GeodesicWalk
{
    private readonly MeshTopology _mesh;
    private int _triangle;
    private int _entry;
    private Point3 _at;
    private Point3 _along;

    internal GeodesicWalk(MeshTopology mesh, int triangle, Point3 at, Point3 along)
    {
        (_mesh, _triangle, _at) = (mesh, triangle, at);
        Point3 normal = mesh.FaceNormal(triangle);
        _along = (along - (normal * Point3.Dot(along, normal))).Unit();
        _entry = -1;
    }

    internal int Triangle => _triangle;

    internal bool PastRim { get; private set; }

    /// <summary>Four walks from a place: along a direction and at each quarter turn after it, counter-clockwise seen from the cloth's side.</summary>
    internal static GeodesicWalk[] Quarters(MeshTopology mesh, int triangle, Point3 at, Point3 along)
    {
        int corner = CornerAt(mesh, triangle, at);
        if (corner < 0 || mesh.OnRim(mesh.Vertex(corner)))
        {
            Point3 normal = mesh.FaceNormal(triangle);
            Point3 flat = (along - (normal * Point3.Dot(along, normal))).Unit();
            Point3 left = Point3.Cross(normal, flat);
            return [.. new[] { flat, left, flat * -1, left * -1 }.Select(way => new GeodesicWalk(mesh, triangle, at, way))];
        }

        // At a corner the quarter turns share the angle of all triangles round it.
        Point3 up = mesh.VertexNormal(mesh.Vertex(corner));
        Point3 wanted = (along - (up * Point3.Dot(along, up))).Unit();
        double round = 0;
        double before = 0;
        int half = corner;
        bool found = false;
        do
        {
            Point3 first = mesh.To(half) - at;
            Point3 last = mesh.From(MeshTopology.Before(half)) - at;
            double from = Angle(first, wanted, up);
            double span = Angle(first, last, up);
            double angle = mesh.AngleAt(half);
            if (!found && from <= span)
            {
                (found, before) = (true, round + (angle * from / span));
            }

            round += angle;
            half = mesh.Twin(MeshTopology.Before(half));
        }
        while (half != corner);

        return [.. Enumerable.Range(0, 4).Select(quarter => Leave(mesh, corner, (before + (round * quarter / 4)) % round))];
    }

    /// <summary>Walks on to the first point at a distance from the point before it, m.</summary>
    /// <returns>That point; null when the line has no end in sight.</returns>
    internal Point3? Next(Point3 previous, double distance)
    {
        for (int guard = 0; guard < (4 * _mesh.Count) + 100; guard++)
        {
            (int exit, double length) = PastRim ? (-1, double.PositiveInfinity) : Exit();
            Point3 step = _at - previous;
            double half = Point3.Dot(_along, step);
            double root = (half * half) + (distance * distance) - Point3.Dot(step, step);
            double ahead = Math.Sqrt(Math.Max(0, root)) - half;
            if (ahead <= length)
            {
                return _at += _along * ahead;
            }

            if (exit < 0)
            {
                return null;
            }

            _at += _along * length;
            Cross(exit);
        }

        return null;
    }

    private static double Angle(Point3 from, Point3 to, Point3 up)
    {
        Point3 a = from - (up * Point3.Dot(from, up));
        Point3 b = to - (up * Point3.Dot(to, up));
        double angle = Math.Atan2(Point3.Dot(Point3.Cross(a, b), up), Point3.Dot(a, b));
        return angle < -1e-12 ? angle + (2 * Math.PI) : Math.Max(0, angle);
    }

    private static int CornerAt(MeshTopology mesh, int triangle, Point3 at)
    {
        for (int half = 3 * triangle; half < (3 * triangle) + 3; half++)
        {
            if ((mesh.From(half) - at).Norm <= 1e-7 * (mesh.To(half) - mesh.From(half)).Norm)
            {
                return half;
            }
        }

        return -1;
    }

    // Leaves a corner at an angle, counter-clockwise from the edge of its half-edge through the triangles round it.
    private static GeodesicWalk Leave(MeshTopology mesh, int corner, double angle)
    {
        int half = corner;
        double rest = angle;
        for (double here = mesh.AngleAt(half); rest > here; here = mesh.AngleAt(half))
        {
            rest -= here;
            half = mesh.Twin(MeshTopology.Before(half));
            if (half == corner)
            {
                rest = 0;
            }
        }

        Point3 along = (mesh.To(half) - mesh.From(half)).Unit();
        Point3 left = Point3.Cross(mesh.FaceNormal(half / 3), along);
        (double sine, double cosine) = Math.SinCos(rest);
        return new GeodesicWalk(mesh, half / 3, mesh.From(half), (along * cosine) + (left * sine)) { _entry = Opposed(half) };
    }

    // From a corner the line leaves by the edge opposite: the code of a triangle entered at its corner is below -1.
    private static int Opposed(int half) => -2 - half;

    private (int Half, double Length) Exit()
    {
        if (_entry < -1)
        {
            int opposite = MeshTopology.Next(-2 - _entry);
            return (opposite, Ahead(opposite));
        }

        (int exit, double length) = (-1, double.PositiveInfinity);
        for (int half = 3 * _triangle; half < (3 * _triangle) + 3; half++)
        {
            double ahead = half == _entry ? double.PositiveInfinity : Ahead(half);
            if (ahead < length)
            {
                (exit, length) = (half, ahead);
            }
        }

        return (exit, length);
    }

    private double Ahead(int half)
    {
        Point3 outward = Point3.Cross(_mesh.To(half) - _mesh.From(half), _mesh.FaceNormal(_triangle)).Unit();
        double speed = Point3.Dot(_along, outward);
        return speed > 1e-12 ? Math.Max(0, Point3.Dot(_mesh.From(half) - _at, outward) / speed) : double.PositiveInfinity;
    }

    private void Cross(int exit)
    {
        int corner = CornerAt(_mesh, _triangle, _at);
        if (corner >= 0 && !_mesh.OnRim(_mesh.Vertex(corner)))
        {
            CrossCorner(corner);
            return;
        }

        int twin = _mesh.Twin(exit);
        if (twin < 0)
        {
            PastRim = true;
            return;
        }

        // The part along the edge stays, and so does the part across it.
        Point3 edge = (_mesh.To(exit) - _mesh.From(exit)).Unit();
        Point3 outward = Point3.Cross(edge, _mesh.FaceNormal(_triangle));
        Point3 inward = Point3.Cross(edge, _mesh.FaceNormal(twin / 3));
        _along = ((edge * Point3.Dot(_along, edge)) + (inward * Point3.Dot(_along, outward))).Unit();
        (_triangle, _entry) = (twin / 3, twin);
    }

    private void CrossCorner(int corner)
    {
        double round = 0;
        int half = corner;
        do
        {
            round += _mesh.AngleAt(half);
            half = _mesh.Twin(MeshTopology.Before(half));
        }
        while (half != corner);

        Point3 edge = _mesh.To(corner) - _mesh.From(corner);
        double back = Math.Max(0, Angle(edge, _along * -1, _mesh.FaceNormal(_triangle)));
        GeodesicWalk on = Leave(_mesh, corner, (back + (round / 2)) % round);
        (_triangle, _entry, _at, _along) = (on._triangle, on._entry, on._at, on._along);
    }
}
