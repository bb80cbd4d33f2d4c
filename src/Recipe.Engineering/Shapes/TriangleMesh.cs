using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>A surface of triangles that share their corners. Seen from the side that cloth is laid on, the corners run counter-clockwise.</summary>
public sealed class TriangleMesh
{
    /// <summary>Takes corners and triangles as they are.</summary>
    /// <param name="vertices">The corners, m.</param>
    /// <param name="triangles">The triangles.</param>
    /// <param name="groups">Named stretches of triangles, in order and not overlapping; may be empty.</param>
    /// <exception cref="ArgumentException">A coordinate is not a number, or a triangle or group names what is not there.</exception>
    public TriangleMesh(ImmutableArray<Point3> vertices, ImmutableArray<MeshTriangle> triangles, ImmutableArray<MeshGroup> groups = default)
    {
        Vertices = vertices;
        Triangles = triangles;
        Groups = groups.IsDefault ? [] : groups;
        foreach (var vertex in vertices)
        {
            if (!vertex.IsFinite)
            {
                throw new ArgumentException("A coordinate is not a number.", nameof(vertices));
            }
        }

        int count = vertices.Length;
        foreach (var triangle in triangles)
        {
            if ((uint)triangle.A >= (uint)count || (uint)triangle.B >= (uint)count || (uint)triangle.C >= (uint)count)
            {
                throw new ArgumentException("A triangle has a corner that is not there.", nameof(triangles));
            }
        }

        int end = 0;
        foreach (var group in Groups)
        {
            if (group.First < end || group.Count < 0 || group.First > triangles.Length - group.Count)
            {
                throw new ArgumentException("A group overlaps another or has triangles that are not there.", nameof(groups));
            }

            end = group.First + group.Count;
        }
    }

    /// <summary>The corners, m.</summary>
    public ImmutableArray<Point3> Vertices { get; }

    /// <summary>The triangles.</summary>
    public ImmutableArray<MeshTriangle> Triangles { get; }

    /// <summary>Named stretches of triangles, in order.</summary>
    public ImmutableArray<MeshGroup> Groups { get; }
}
