using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>Drops triangles of a soup and keeps its named stretches right.</summary>
internal sealed class MeshGroups(MeshSoup soup)
{
    private List<MeshGroup>? _groups;

    internal ImmutableArray<MeshGroup> Stretches() => [.. _groups ?? soup.Groups()];

    /// <summary>Keeps the triangles that are asked for, in order; returns how many went.</summary>
    internal int Keep(Predicate<int> wanted)
    {
        List<MeshGroup> old = _groups ?? soup.Groups();
        List<MeshGroup> kept = [];
        (int to, int group, int first) = (0, 0, 0);
        int count = soup.Count;
        for (int i = 0; i <= count; i++)
        {
            while (group < old.Count && old[group].First + old[group].Count == i)
            {
                if (to > first)
                {
                    kept.Add(new MeshGroup(old[group].Name, first, to - first));
                }

                group++;
            }

            if (group < old.Count && old[group].First == i)
            {
                first = to;
            }

            if (i < count && wanted(i))
            {
                soup.Triangles[to++] = soup.Triangles[i];
            }
        }

        soup.Count = to;
        _groups = kept;
        return count - to;
    }
}
