using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Text;

namespace Recipe.Planning.Comparing;

/// <summary>Compares two stacks line by line.</summary>
public static class StackComparison
{
    /// <summary>
    /// The lines of both, in the order of the later stack with what is gone at its old place. Lines that say the same in the same order
    /// are the backbone; of the others those that say the same elsewhere have moved, those of one name have changed, those
    /// that say the same under another name are renamed, in this order.
    /// </summary>
    public static ImmutableArray<StackChange> Of(ImmutableArray<StackPlan> before, ImmutableArray<StackPlan> after)
    {
        var (old, @new) = (before.Select(Written).ToArray(), after.Select(Written).ToArray());
        var partner = Enumerable.Repeat(-1, @new.Length).ToArray();
        var taken = new bool[old.Length];
        var backbone = Alignment.Of(old, @new);
        foreach (var (left, right) in backbone)
        {
            (partner[right], taken[left]) = (left, true);
        }

        Pair((left, right) => old[left] == @new[right]);
        Pair((left, right) => old[left].Name == @new[right].Name);
        Pair((left, right) => old[left].Says == @new[right].Says);

        var changes = new List<StackChange>();
        for (var right = 0; right < @new.Length; right++)
        {
            if (partner[right] is >= 0 and var left)
            {
                var fate = old[left] == @new[right] ? LineFate.Same : old[left].Name == @new[right].Name ? LineFate.Changed : LineFate.Renamed;
                changes.Add(new(before[left], after[right], fate, IsOutOfOrder(left, right)));
            }
            else
            {
                changes.Add(new(null, after[right], LineFate.Added, Moved: false));
            }
        }

        foreach (var left in Enumerable.Range(0, old.Length).Where(i => !taken[i]))
        {
            // Behind the line that it lay on; at the mould when it lay there.
            var under = Enumerable.Range(0, left).Reverse().Select(i => changes.FindIndex(change => ReferenceEquals(change.Before, before[i]))).FirstOrDefault(at => at >= 0, -1);
            changes.Insert(under + 1, new(before[left], null, LineFate.Removed, Moved: false));
        }

        return [.. changes];

        void Pair(Func<int, int, bool> fit)
        {
            for (var right = 0; right < @new.Length; right++)
            {
                for (var left = 0; left < old.Length && partner[right] < 0; left++)
                {
                    if (!taken[left] && fit(left, right))
                    {
                        (partner[right], taken[left]) = (left, true);
                    }
                }
            }
        }

        bool IsOutOfOrder(int left, int right) => backbone.Any(pair => pair.Left < left != pair.Right < right && (pair.Left, pair.Right) != (left, right));
    }

    /// <summary>What a line says besides its name, as its author wrote it, with single blanks.</summary>
    public static string RestOf(StackItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        return Written(item).Says;
    }

    private static (string Name, string Says) Written(StackPlan line) => Written(line.Item);

    private static (string Name, string Says) Written(StackItem item)
    {
        var words = item.Where.Text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
        return (item.Name, string.Join(' ', words.SkipWhile(word => word != item.Name).Skip(1)));
    }
}
