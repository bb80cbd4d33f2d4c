using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Meshes of simple shapes as the cloth side of a female mould: the inside of a bowl looks up along +Z, its rim lies in the plane z = 0
/// and its depth goes down. The axis of revolution is Z. Points lie on the true surface; between them the mesh is off it by no more
/// than the tolerance in each direction, so that areas come out a little small, with the square of the spacing.
/// </summary>
public static class SurfaceMeshes
{
    /// <summary>A flat rectangle with its middle at the origin, length along X.</summary>
    /// <param name="length">Along X, more than zero.</param>
    /// <param name="width">Along Y, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero.</exception>
    public static TriangleMesh FlatRectangle(Length length, Length width)
    {
        double a = Size(length, nameof(length)) / 2;
        double b = Size(width, nameof(width)) / 2;
        return MeshSheet.Of(2, 2, false, (i, j) => new Point3(i == 0 ? -a : a, j == 0 ? -b : b, 0));
    }

    /// <summary>A flat disc round the origin.</summary>
    /// <param name="diameter">More than zero.</param>
    /// <param name="tolerance">Height of the rim's arc over its chords, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero, or the tolerance too fine.</exception>
    public static TriangleMesh Disc(Length diameter, Length tolerance) =>
        Revolved([default, new Point2(Size(diameter, nameof(diameter)) / 2, 0)], Angle.FromDegrees(360), tolerance);

    /// <summary>The inside of a tube, open at both ends.</summary>
    /// <param name="diameter">Inside diameter, more than zero.</param>
    /// <param name="length">Along Z, downwards from z = 0, more than zero.</param>
    /// <param name="tolerance">Height of arcs over their chords, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero, or the tolerance too fine.</exception>
    public static TriangleMesh Cylinder(Length diameter, Length length, Length tolerance)
    {
        double r = Size(diameter, nameof(diameter)) / 2;
        return Revolved([new Point2(r, -Size(length, nameof(length))), new Point2(r, 0)], Angle.FromDegrees(360), tolerance);
    }

    /// <summary>The inside wall of a cone or of a part of one, without a floor.</summary>
    /// <param name="rimDiameter">At z = 0, not below zero.</param>
    /// <param name="floorDiameter">At the lower end, not below zero; one of the two is more than zero.</param>
    /// <param name="height">Downwards, more than zero.</param>
    /// <param name="tolerance">Height of arcs over their chords, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is out of its range, or the tolerance too fine.</exception>
    public static TriangleMesh Frustum(Length rimDiameter, Length floorDiameter, Length height, Length tolerance)
    {
        double rim = Guard.NotNegative(rimDiameter.Meters, "m", nameof(rimDiameter)) / 2;
        double floor = Guard.NotNegative(floorDiameter.Meters, "m", nameof(floorDiameter)) / 2;
        Guard.Positive(Math.Max(rim, floor), "m", nameof(rimDiameter));
        return Revolved([new Point2(floor, -Size(height, nameof(height))), new Point2(rim, 0)], Angle.FromDegrees(360), tolerance);
    }

    /// <summary>The inside of a bowl cut from a sphere.</summary>
    /// <param name="rimDiameter">More than zero.</param>
    /// <param name="depth">More than zero; above half the rim's diameter it is more than a hemisphere.</param>
    /// <param name="tolerance">Height of arcs over their chords, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero, or the tolerance too fine.</exception>
    public static TriangleMesh SphericalCap(Length rimDiameter, Length depth, Length tolerance)
    {
        double a = Size(rimDiameter, nameof(rimDiameter)) / 2;
        double h = Size(depth, nameof(depth));
        double r = ((a * a) + (h * h)) / (2 * h);
        double whole = 2 * Math.Atan2(h, a);
        int n = Chords(r, whole, tolerance);
        ImmutableArray<Point2> profile =
        [
            .. Enumerable.Range(0, n + 1).Select(i => i == 0 ? new Point2(0, -h)
                : i == n ? new Point2(a, 0)
                : new Point2(r * Math.Sin(whole * i / n), r - h - (r * Math.Cos(whole * i / n)))),
        ];
        return Revolved(profile, Angle.FromDegrees(360), tolerance);
    }

    /// <summary>The inside of half an ellipsoid.</summary>
    /// <param name="length">Of the rim along X, more than zero.</param>
    /// <param name="width">Of the rim along Y, more than zero.</param>
    /// <param name="depth">More than zero.</param>
    /// <param name="tolerance">Height of arcs over their chords, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero, or the tolerance too fine.</exception>
    public static TriangleMesh HalfEllipsoid(Length length, Length width, Length depth, Length tolerance)
    {
        double a = Size(length, nameof(length)) / 2;
        double b = Size(width, nameof(width)) / 2;
        double c = Size(depth, nameof(depth));

        // In equal steps of the angle no half axis bends away from its chord by more than a circle of the longest one.
        double longest = Math.Max(a, Math.Max(b, c));
        int rings = Chords(longest, Math.PI / 2, tolerance);
        int around = Chords(longest, 2 * Math.PI, tolerance);
        return MeshSheet.Of(rings + 1, around, true, (i, j) =>
        {
            (double sine, double cosine) = i == rings ? (1, 0) : Math.SinCos(Math.PI / 2 * i / rings);
            (double y, double x) = Math.SinCos(2 * Math.PI * j / around);
            return i == 0 ? new Point3(0, 0, -c) : new Point3(a * sine * x, b * sine * y, i == rings ? 0 : -c * cosine);
        });
    }

    /// <summary>The inside of a paraboloid of revolution.</summary>
    /// <param name="rimDiameter">More than zero.</param>
    /// <param name="depth">More than zero.</param>
    /// <param name="tolerance">Height of arcs over their chords, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero, or the tolerance too fine.</exception>
    public static TriangleMesh Paraboloid(Length rimDiameter, Length depth, Length tolerance)
    {
        double a = Size(rimDiameter, nameof(rimDiameter)) / 2;
        double h = Size(depth, nameof(depth));
        double t = Size(tolerance, nameof(tolerance));

        // A chord over a step s of z = h (r/a)^2 is off by h (s/a)^2 / 4.
        int n = Steps(Math.Sqrt(h / (4 * t)));
        return Revolved(
            [.. Enumerable.Range(0, n + 1).Select(i => new Point2(a * i / n, i == n ? 0 : (h * ((double)i / n) * ((double)i / n)) - h))],
            Angle.FromDegrees(360),
            tolerance);
    }

    /// <summary>The inside of a box without a lid, with sharp corners; its rim is in the plane z = 0.</summary>
    /// <param name="length">Along X, more than zero.</param>
    /// <param name="width">Along Y, more than zero.</param>
    /// <param name="height">Downwards, more than zero.</param>
    /// <exception cref="ArgumentOutOfRangeException">A size is not greater than zero.</exception>
    public static TriangleMesh OpenBox(Length length, Length width, Length height)
    {
        double a = Size(length, nameof(length)) / 2;
        double b = Size(width, nameof(width)) / 2;
        double h = Size(height, nameof(height));
        Point3 At(int corner, double z) => new(corner is 0 or 3 ? -a : a, corner < 2 ? -b : b, z);
        ImmutableArray<MeshTriangle> walls = [.. Enumerable.Range(0, 4).SelectMany(k => Wall(k, (k + 1) % 4))];
        return new TriangleMesh(
            [.. Enumerable.Range(0, 8).Select(k => At(k % 4, k < 4 ? -h : 0))],
            [new MeshTriangle(0, 1, 2), new MeshTriangle(0, 2, 3), .. walls]);
    }

    /// <summary>A profile turned round Z. The cloth side is on the left of the profile: draw a bowl from its middle outwards.</summary>
    /// <param name="profile">Points of radius and z, m, two or more, none equal to the one before; radii not below zero. Curves are taken as they are given.</param>
    /// <param name="arc">More than 0 and up to 360 degrees, counter-clockwise from +X.</param>
    /// <param name="tolerance">Height of arcs round Z over their chords, more than zero.</param>
    /// <exception cref="ArgumentException">The profile is too short or a point repeats.</exception>
    /// <exception cref="ArgumentOutOfRangeException">A radius, the arc or the tolerance is out of its range.</exception>
    public static TriangleMesh Revolved(ImmutableArray<Point2> profile, Angle arc, Length tolerance)
    {
        CheckLine(profile, nameof(profile));
        double widest = 0;
        foreach (Point2 point in profile)
        {
            widest = Math.Max(widest, Guard.NotNegative(point.X, "m", nameof(profile)));
        }

        Guard.Positive(widest, "m", nameof(profile));
        double angle = arc.Radians;
        if (!(angle > 0 && arc.Degrees <= 360 * (1 + 1e-12)))
        {
            throw Guard.Refuse(arc.Degrees, "deg", nameof(arc), "must be more than 0 and at most 360");
        }

        bool closes = arc.Degrees >= 360 * (1 - 1e-12);
        int n = Chords(widest, angle, tolerance);
        return MeshSheet.Of(profile.Length, closes ? n : n + 1, closes, (i, j) =>
        {
            (double sine, double cosine) = Math.SinCos(angle * j / n);
            return profile[i].X == 0 ? new Point3(0, 0, profile[i].Y) : new Point3(profile[i].X * cosine, profile[i].X * sine, profile[i].Y);
        });
    }

    /// <summary>
    /// A section carried along a path, mitred where the path turns and never twisted about it. Seen along the path the section's X goes
    /// to the right and its Y up; the cloth side is on the left of the section: draw it from left to right for a mould that looks up.
    /// </summary>
    /// <param name="section">Points across and up, m, two or more, none equal to the one before.</param>
    /// <param name="path">Points, m, two or more, none equal to the one before.</param>
    /// <exception cref="ArgumentException">A line is too short, a point repeats, the path turns back on itself, or the section is wider than a bend.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There would be too many triangles.</exception>
    public static TriangleMesh Swept(ImmutableArray<Point2> section, ImmutableArray<Point3> path)
    {
        CheckLine(section, nameof(section));
        if (path.IsDefault || path.Length < 2)
        {
            throw new ArgumentException("A path has at least two points.", nameof(path));
        }

        Point3[][] rows = SweptRows.Of(section, path);
        return MeshSheet.Of(path.Length, section.Length, false, (i, j) => rows[i][section.Length - 1 - j]);
    }

    /// <summary>The same surface with the cloth on its other side, as for a male mould.</summary>
    /// <param name="mesh">The mesh.</param>
    public static TriangleMesh OtherSide(TriangleMesh mesh)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        return new TriangleMesh(mesh.Vertices, [.. mesh.Triangles.Select(t => new MeshTriangle(t.A, t.C, t.B))], mesh.Groups);
    }

    private static MeshTriangle[] Wall(int k, int next) => [new(k, k + 4, next + 4), new(k, next + 4, next)];

    private static double Size(Length length, string parameter) => Guard.Positive(length.Meters, "m", parameter);

    /// <summary>Chords of an arc that stay within the tolerance: at least one to 15 degrees, so that a bend is no sharp edge.</summary>
    private static int Chords(double radius, double arc, Length tolerance)
    {
        double t = Size(tolerance, nameof(tolerance));
        double each = 2 * Math.Acos(Math.Max(1 - (t / radius), 0));
        return Math.Max(Steps(arc / each), Steps(arc / (Math.PI / 12) * (1 - 1e-9)));
    }

    private static int Steps(double wanted) =>
        wanted <= MeshReading.MaximumTriangles
            ? Math.Max(1, (int)Math.Ceiling(wanted))
            : throw Guard.Refuse(wanted, "steps", "tolerance", "is so fine that there must be at most 4000000");

    private static void CheckLine(ImmutableArray<Point2> line, string parameter)
    {
        if (line.IsDefault || line.Length < 2)
        {
            throw new ArgumentException("A line has at least two points.", parameter);
        }

        for (int i = 0; i < line.Length; i++)
        {
            if (!line[i].IsFinite || (i > 0 && line[i] == line[i - 1]))
            {
                throw new ArgumentException("A point repeats the one before or is not a number.", parameter);
            }
        }
    }
}
