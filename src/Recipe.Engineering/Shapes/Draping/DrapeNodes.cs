namespace Recipe.Engineering;

/// <summary>What a crossing of the net is.</summary>
internal enum DrapeNodeKind
{
    OnSurface,

    /// <summary>On the continuation of the surface past its rim.</summary>
    PastRim,

    /// <summary>Over cloth that is there already, as where it has gone round a tube.</summary>
    Lapping,
}

/// <summary>The crossings of a net while it grows, found by their numbers and by their places.</summary>
internal sealed class DrapeNodes(double step)
{
    private const int Near = 8;
    private readonly Dictionary<(int I, int J), int> _byNumber = [];
    private readonly Dictionary<(int X, int Y, int Z), List<int>> _byPlace = [];
    private readonly List<Entry> _entries = [];

    internal int Count => _entries.Count;

    internal Entry this[int index] => _entries[index];

    internal int Find(int i, int j) => _byNumber.TryGetValue((i, j), out int index) ? index : -1;

    internal void Add(Entry entry)
    {
        _byNumber.Add((entry.I, entry.J), _entries.Count);
        var box = Box(entry.Place);
        if (!_byPlace.TryGetValue(box, out var list))
        {
            _byPlace.Add(box, list = []);
        }

        list.Add(_entries.Count);
        _entries.Add(entry);
    }

    /// <summary>Whether a crossing far along the threads lies within half a step on the same side of the surface.</summary>
    internal bool Laps(int i, int j, Point3 place, Point3 normal)
    {
        foreach (int index in Around(place))
        {
            Entry other = _entries[index];
            if (other.Kind == DrapeNodeKind.OnSurface
                && Math.Abs(other.I - i) + Math.Abs(other.J - j) > Near
                && (other.Place - place).Norm < step / 2
                && Point3.Dot(other.Normal, normal) > 0)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The crossings in the boxes of one step round a place.</summary>
    internal IEnumerable<int> Around(Point3 place)
    {
        (int x, int y, int z) = Box(place);
        for (int k = 0; k < 27; k++)
        {
            if (_byPlace.TryGetValue((x + (k % 3) - 1, y + (k / 3 % 3) - 1, z + (k / 9) - 1), out var list))
            {
                foreach (int index in list)
                {
                    yield return index;
                }
            }
        }
    }

    private (int X, int Y, int Z) Box(Point3 place) =>
        ((int)Math.Floor(place.X / step), (int)Math.Floor(place.Y / step), (int)Math.Floor(place.Z / step));

    internal readonly record struct Entry(int I, int J, Point3 Place, Point3 Normal, int Triangle, DrapeNodeKind Kind);
}
