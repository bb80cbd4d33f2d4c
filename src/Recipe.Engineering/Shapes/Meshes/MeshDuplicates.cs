namespace Recipe.Engineering;

/// <summary>Drops triangles that have the same three corners as an earlier one, whichever way they turn.</summary>
internal static class MeshDuplicates
{
    internal static int Drop(MeshSoup soup, MeshGroups groups)
    {
        int count = soup.Count;
        (ulong Low, ulong High)[] keys = new (ulong, ulong)[count];
        for (int i = 0; i < count; i++)
        {
            (int a, int b, int c) = soup.Triangles[i];
            (a, b) = a < b ? (a, b) : (b, a);
            (b, c) = b < c ? (b, c) : (c, b);
            (a, b) = a < b ? (a, b) : (b, a);
            keys[i] = (((ulong)(uint)a << 32) | (uint)b, ((ulong)(uint)c << 32) | (uint)i);
        }

        Array.Sort(keys);
        bool[] again = new bool[count];
        for (int i = 1; i < count; i++)
        {
            again[(int)(uint)keys[i].High] = keys[i].Low == keys[i - 1].Low && keys[i].High >> 32 == keys[i - 1].High >> 32;
        }

        return groups.Keep(i => !again[i]);
    }
}
