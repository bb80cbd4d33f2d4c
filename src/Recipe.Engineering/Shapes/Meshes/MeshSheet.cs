using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>Triangles over a grid of points: rows along one direction, columns along the other, which may close on themselves.</summary>
internal static class MeshSheet
{
    /// <summary>A mesh whose normals are the step along the rows times the step along the columns.</summary>
    /// <param name="rows">Points along the first direction, two or more.</param>
    /// <param name="columns">Points along the second; of one that closes, without the repeated last.</param>
    /// <param name="closes">Whether the last column is joined to the first.</param>
    /// <param name="at">The place of a point.</param>
    internal static TriangleMesh Of(int rows, int columns, bool closes, Func<int, int, Point3> at)
    {
        int across = closes ? columns : columns - 1;
        long triangles = 2L * (rows - 1) * across;
        if (triangles > MeshReading.MaximumTriangles || (long)rows * columns > MeshReading.MaximumTriangles)
        {
            throw Guard.Refuse(triangles, "triangles", "tolerance", "is so fine that there must be at most 4000000");
        }

        // A row whose points are all in one place is a pole.
        int[,] number = new int[rows, columns];
        var points = ImmutableArray.CreateBuilder<Point3>();
        for (int i = 0; i < rows; i++)
        {
            for (int j = 0; j < columns; j++)
            {
                Point3 here = at(i, j);
                bool isPole = j > 0 && here == points[number[i, j - 1]];
                number[i, j] = isPole ? number[i, j - 1] : points.Count;
                if (!isPole)
                {
                    points.Add(here);
                }
            }
        }

        var faces = ImmutableArray.CreateBuilder<MeshTriangle>();
        for (int i = 0; i + 1 < rows; i++)
        {
            for (int j = 0; j < across; j++)
            {
                int next = (j + 1) % columns;
                Add(faces, number[i, j], number[i + 1, j], number[i + 1, next]);
                Add(faces, number[i, j], number[i + 1, next], number[i, next]);
            }
        }

        return new TriangleMesh(points.ToImmutable(), faces.ToImmutable());
    }

    private static void Add(ImmutableArray<MeshTriangle>.Builder faces, int a, int b, int c)
    {
        if (a != b && b != c && c != a)
        {
            faces.Add(new MeshTriangle(a, b, c));
        }
    }
}
