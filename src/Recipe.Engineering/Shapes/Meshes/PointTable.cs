using System.Numerics;

namespace Recipe.Engineering;

/// <summary>Finds the first point with the same coordinates: a flat table with open addressing, because a mesh has millions.</summary>
internal sealed class PointTable
{
    private int[] _slots;
    private int _mask;
    private int _used;

    internal PointTable(int expected)
    {
        int size = (int)BitOperations.RoundUpToPowerOf2((uint)Math.Clamp(expected, 512, 1 << 23) * 2);
        _slots = new int[size];
        _mask = size - 1;
    }

    /// <summary>Index of the equal point among those entered, or of this one, which is then entered; both zeros are the same.</summary>
    internal int Find(MeshSoup soup, double x, double y, double z)
    {
        (x, y, z) = (x + 0.0, y + 0.0, z + 0.0);
        int at = (int)(Hash(x, y, z) & (uint)_mask);
        Point3[] points = soup.Points;
        while (_slots[at] != 0)
        {
            ref readonly Point3 other = ref points[_slots[at] - 1];
            if (other.X == x && other.Y == y && other.Z == z)
            {
                return _slots[at] - 1;
            }

            at = (at + 1) & _mask;
        }

        soup.AddPoint(x, y, z);
        _slots[at] = soup.PointCount;
        if (++_used * 2 > _slots.Length)
        {
            Grow(soup);
        }

        return soup.PointCount - 1;
    }

    private static uint Hash(double x, double y, double z)
    {
        ulong h = BitConverter.DoubleToUInt64Bits(x) * 0x9E3779B97F4A7C15;
        h = (BitOperations.RotateLeft(h, 29) ^ BitConverter.DoubleToUInt64Bits(y)) * 0xBF58476D1CE4E5B9;
        h = (BitOperations.RotateLeft(h, 31) ^ BitConverter.DoubleToUInt64Bits(z)) * 0x94D049BB133111EB;
        return (uint)((h ^ (h >> 29)) >> 16);
    }

    private void Grow(MeshSoup soup)
    {
        int[] old = _slots;
        _slots = new int[old.Length * 2];
        _mask = _slots.Length - 1;
        foreach (int entry in old)
        {
            if (entry != 0)
            {
                Point3 point = soup.Points[entry - 1];
                int at = (int)(Hash(point.X, point.Y, point.Z) & (uint)_mask);
                while (_slots[at] != 0)
                {
                    at = (at + 1) & _mask;
                }

                _slots[at] = entry;
            }
        }
    }
}
