using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>Takes parts out of meshes.</summary>
public static class MeshRegions
{
    /// <summary>The part of a mesh in a region, with its own points; without a triangle when nothing lies there. Groups keep their names.</summary>
    /// <param name="mesh">The mesh.</param>
    /// <param name="region">The region.</param>
    /// <exception cref="ArgumentException">A normal has no direction, a box is inside out, or a coordinate is not a number.</exception>
    /// <exception cref="ArgumentOutOfRangeException">The angle is not between 0 and 180 degrees.</exception>
    public static TriangleMesh Select(TriangleMesh mesh, MeshRegion region)
    {
        ArgumentNullException.ThrowIfNull(mesh);
        ArgumentNullException.ThrowIfNull(region);
        switch (region)
        {
            case HalfSpaceRegion half:
                if (!half.At.IsFinite || !half.Normal.IsFinite || half.Normal == default)
                {
                    throw new ArgumentException("The plane has no direction or place.", nameof(region));
                }

                return MeshCutting.Cut(mesh, half.At, half.Normal.Unit());
            case GroupRegion group:
                bool[] named = new bool[mesh.Triangles.Length];
                foreach (MeshGroup stretch in mesh.Groups)
                {
                    named.AsSpan(stretch.First, stretch.Count).Fill(stretch.Name == group.Name);
                }

                return Kept(mesh, named);
            case PatchRegion patch:
                return Kept(mesh, Patch(mesh, patch));
            default:
                throw new ArgumentException("The region is of no known kind.", nameof(region));
        }
    }

    /// <summary>The triangles that are wanted, with the points that they need.</summary>
    internal static TriangleMesh Kept(TriangleMesh mesh, bool[] wanted)
    {
        int[] to = new int[mesh.Vertices.Length];
        var points = ImmutableArray.CreateBuilder<Point3>();
        var triangles = ImmutableArray.CreateBuilder<MeshTriangle>();
        int New(int old)
        {
            if (to[old] == 0)
            {
                points.Add(mesh.Vertices[old]);
                to[old] = points.Count;
            }

            return to[old] - 1;
        }

        int[] before = new int[mesh.Triangles.Length + 1];
        for (int i = 0; i < wanted.Length; i++)
        {
            before[i + 1] = before[i] + (wanted[i] ? 1 : 0);
            if (wanted[i])
            {
                (int a, int b, int c) = mesh.Triangles[i];
                triangles.Add(new MeshTriangle(New(a), New(b), New(c)));
            }
        }

        return new TriangleMesh(points.ToImmutable(), triangles.ToImmutable(), Stretches(mesh, before));
    }

    /// <summary>The groups of a mesh after each triangle became as many as <paramref name="before"/> counts up to it.</summary>
    internal static ImmutableArray<MeshGroup> Stretches(TriangleMesh mesh, int[] before) =>
    [
        .. mesh.Groups
            .Select(group => new MeshGroup(group.Name, before[group.First], before[group.First + group.Count] - before[group.First]))
            .Where(group => group.Count > 0),
    ];

    private static bool[] Patch(TriangleMesh mesh, PatchRegion patch)
    {
        double degrees = patch.Sharp.Degrees;
        if (!(degrees > 0 && degrees < 180))
        {
            throw Guard.Refuse(degrees, "deg", nameof(patch), "must be more than 0 and less than 180");
        }

        if (!patch.Seed.IsFinite)
        {
            throw new ArgumentException("A coordinate is not a number.", nameof(patch));
        }

        bool[] wanted = new bool[mesh.Triangles.Length];
        if (wanted.Length == 0)
        {
            return wanted;
        }

        MeshFaces faces = new(mesh);
        MeshEdges edges = MeshEdges.Of(mesh.Triangles.AsSpan(), mesh.Vertices.Length);
        double least = Math.Cos(patch.Sharp.Radians);
        Stack<int> open = new([Nearest(mesh, patch.Seed)]);
        wanted[open.Peek()] = true;
        while (open.TryPop(out int face))
        {
            for (int half = 3 * face; half < (3 * face) + 3; half++)
            {
                int across = edges.Across[half];
                if (across >= 0 && !wanted[across / 3] && Point3.Dot(faces.Normals[face], faces.Normals[across / 3]) >= least)
                {
                    wanted[across / 3] = true;
                    open.Push(across / 3);
                }
            }
        }

        return wanted;
    }

    private static int Nearest(TriangleMesh mesh, Point3 seed)
    {
        (int nearest, double distance) = (0, double.PositiveInfinity);
        for (int i = 0; i < mesh.Triangles.Length; i++)
        {
            (int a, int b, int c) = mesh.Triangles[i];
            double here = (NearestPoint.OnTriangle(seed, mesh.Vertices[a], mesh.Vertices[b], mesh.Vertices[c]).Foot - seed).Norm;
            (nearest, distance) = here < distance ? (i, here) : (nearest, distance);
        }

        return nearest;
    }
}
