namespace Recipe.Engineering;

/// <summary>Points and triangles while a file is read: arrays that grow with what is there, never with what a header says.</summary>
internal sealed class MeshSoup
{
    private readonly List<(string Name, int First)> _groups = [];

    internal Point3[] Points { get; set; } = new Point3[1024];

    internal int PointCount { get; set; }

    internal MeshTriangle[] Triangles { get; set; } = new MeshTriangle[1024];

    internal int Count { get; set; }

    /// <summary>Points that a reader has already found to be the same as earlier ones.</summary>
    internal int MergedOnReading { get; set; }

    internal int TrailingBytes { get; set; }

    internal bool IsFull => Count >= MeshReading.MaximumTriangles;

    internal void AddPoint(double x, double y, double z)
    {
        if (PointCount == Points.Length)
        {
            Point3[] longer = new Point3[PointCount * 2];
            Points.AsSpan(0, PointCount).CopyTo(longer);
            Points = longer;
        }

        Points[PointCount++] = new Point3(x, y, z);
    }

    internal void AddTriangle(int a, int b, int c)
    {
        if (Count == Triangles.Length)
        {
            MeshTriangle[] longer = new MeshTriangle[Count * 2];
            Triangles.AsSpan(0, Count).CopyTo(longer);
            Triangles = longer;
        }

        Triangles[Count++] = new MeshTriangle(a, b, c);
    }

    /// <summary>Every triangle from here on belongs to this name; an empty one is no group.</summary>
    internal void StartGroup(string name)
    {
        if (_groups.Count > 0 && _groups[^1].First == Count)
        {
            _groups.RemoveAt(_groups.Count - 1);
        }

        if (_groups.Count == 0 || _groups[^1].Name != name)
        {
            _groups.Add((name, Count));
        }
    }

    /// <summary>The named stretches that have triangles.</summary>
    internal List<MeshGroup> Groups()
    {
        List<MeshGroup> groups = [];
        for (int i = 0; i < _groups.Count; i++)
        {
            (string name, int first) = _groups[i];
            int end = i + 1 < _groups.Count ? _groups[i + 1].First : Count;
            if (name.Length > 0 && end > first)
            {
                groups.Add(new MeshGroup(name, first, end - first));
            }
        }

        return groups;
    }
}
