using System.Runtime.InteropServices;

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
    private readonly Dictionary<long, int> _byNumber = [];
    private readonly Dictionary<long, List<int>> _byPlace = [];
    private readonly List<Entry> _entries = [];

    internal int Count => _entries.Count;

    internal Entry this[int index] => _entries[index];

    internal int Find(int i, int j) => _byNumber.TryGetValue(Number(i, j), out int index) ? index : -1;

    internal void Add(Entry entry)
    {
        _byNumber.Add(Number(entry.I, entry.J), _entries.Count);
        long box = Box(Math.Floor(entry.Place.X / step), Math.Floor(entry.Place.Y / step), Math.Floor(entry.Place.Z / step));
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
        // A ball of half a step reaches into two boxes each way at most.
        (double x, double y, double z) = (Math.Floor((place.X / step) - 0.5), Math.Floor((place.Y / step) - 0.5), Math.Floor((place.Z / step) - 0.5));
        ReadOnlySpan<Entry> entries = CollectionsMarshal.AsSpan(_entries);
        for (int k = 0; k < 8; k++)
        {
            if (!_byPlace.TryGetValue(Box(x + (k & 1), y + ((k >> 1) & 1), z + (k >> 2)), out var list))
            {
                continue;
            }

            foreach (int index in list)
            {
                ref readonly Entry other = ref entries[index];
                if (other.Kind == DrapeNodeKind.OnSurface
                    && Math.Abs(other.I - i) + Math.Abs(other.J - j) > Near
                    && (other.Place - place).Norm < step / 2
                    && Point3.Dot(other.Normal, normal) > 0)
                {
                    return true;
                }
            }
        }

        return false;
    }

    /// <summary>The crossings in the boxes of one step round a place.</summary>
    internal IEnumerable<int> Around(Point3 place)
    {
        (double x, double y, double z) = (Math.Floor(place.X / step), Math.Floor(place.Y / step), Math.Floor(place.Z / step));
        for (int k = 0; k < 27; k++)
        {
            if (_byPlace.TryGetValue(Box(x + (k % 3) - 1, y + (k / 3 % 3) - 1, z + (k / 9) - 1), out var list))
            {
                foreach (int index in list)
                {
                    yield return index;
                }
            }
        }
    }

    // The hash of a long is its upper half against its lower half, which makes one of a whole diagonal of the net: so the numbers are spread first, by a factor
    // that loses none of them since it is odd (the golden ratio, D. E. Knuth, The Art of Computer Programming 3, 6.4).
    private static long Spread(long number) => unchecked(number * (long)0x9E3779B97F4A7C15);

    private static long Number(int i, int j) => Spread(((long)i << 32) ^ (uint)j);

    // Boxes whose numbers agree in their last 21 bits share a list: one that is far away is passed over by its distance.
    private static long Box(double x, double y, double z) => Spread((Bits(x) << 42) | (Bits(y) << 21) | Bits(z));

    private static long Bits(double number) => (long)(Math.Abs(number) < 1L << 53 ? number : Math.IEEERemainder(number, 1 << 21)) & 0x1FFFFF;

    internal readonly record struct Entry(int I, int J, Point3 Place, Point3 Normal, int Triangle, DrapeNodeKind Kind);
}
