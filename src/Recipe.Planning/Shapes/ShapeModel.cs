using System.Collections.Concurrent;
using Recipe.Engineering;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>
/// A surface as triangles. It is measured once; drapes and patterns are worked out when somebody asks, and kept. May be asked from several threads.
/// </summary>
public sealed class ShapeModel
{
    private readonly ConcurrentDictionary<(Point3 Start, Point3 Along, double Degrees, double Step), Lazy<DrapeNet?>> _nets = new();
    private readonly Lazy<ClothGround> _ground;
    private readonly Lazy<MeshMeasures> _measures;
    private readonly Lazy<FlatPattern?> _pattern;
    private readonly Lazy<Point3> _middle;

    internal ShapeModel(TriangleMesh mesh, MeshReading? reading, Point3? pull)
    {
        Mesh = mesh;
        Reading = reading;
        Pull = pull;
        _ground = new(() => new ClothGround(mesh));
        _measures = new(() => MeshMeasures.Of(mesh, pull));
        _pattern = new(() => Flatten(mesh));
        _middle = new(() => MeshPlaces.Middle(mesh, pull ?? new Point3(0, 0, 1)));
    }

    /// <summary>The triangles, of the region only, m.</summary>
    public TriangleMesh Mesh { get; }

    /// <summary>What reading the file found; null for a shape that is not from a file.</summary>
    public MeshReading? Reading { get; }

    /// <summary>Which way the part comes off; null when not said.</summary>
    public Point3? Pull { get; }

    /// <summary>Its measures.</summary>
    public MeshMeasures Measures => _measures.Value;

    /// <summary>The flat pattern for what has no direction of its own, as mat or veil, and for surfaces that roll out flat; null when there is none.</summary>
    public FlatPattern? Pattern => _pattern.Value;

    /// <summary>The point of the surface over or under the middle of its area, seen along the pull.</summary>
    public Point3 Middle => _middle.Value;

    /// <summary>Length of all rims, holes included.</summary>
    public Length Rim => RimOf(Measures);

    /// <summary>How far the surface lies from the plane of its longest rim, at most.</summary>
    public Length Depth => DepthOf(Measures);

    internal static Length RimOf(MeshMeasures measures) => measures.Boundaries.Aggregate(Length.Zero, (sum, rim) => sum + rim.Length);

    internal static Length DepthOf(MeshMeasures measures) => measures.Rim is { } rim ? UnitMath.Max(rim.Depth, rim.Rise) : Length.Zero;

    /// <summary>The cloth laid down with its warp at an angle to 0 degrees; null where it cannot be laid.</summary>
    /// <param name="start">The point it touches first; the nearest point of the surface is taken.</param>
    /// <param name="along">Which way 0 degrees runs there.</param>
    /// <param name="warp">Angle of the warp, counter-clockwise looking at the tool face.</param>
    /// <param name="step">Distance of two threads of the net.</param>
    public DrapeNet? Drape(Point3 start, Point3 along, Angle warp, Length step) =>
        _nets.GetOrAdd((start, along, warp.Degrees, step.Meters), key => new Lazy<DrapeNet?>(() => Lay(key.Start, key.Along, key.Degrees, key.Step))).Value;

    private DrapeNet? Lay(Point3 start, Point3 along, double degrees, double step)
    {
        try
        {
            return Draping.Over(_ground.Value, start, along, Angle.FromDegrees(degrees), Length.FromMeters(step));
        }
        catch (ArgumentException)
        {
            return null;
        }
    }

    private static FlatPattern? Flatten(TriangleMesh mesh)
    {
        try
        {
            return Flattening.Of(mesh);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
