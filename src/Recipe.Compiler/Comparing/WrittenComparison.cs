using System.Collections.Immutable;
using Recipe.Documents;
using Recipe.Text;

namespace Recipe.Compiler.Comparing;

/// <summary>
/// Compares two texts line by line and block by block. Lines that are the same in the same order are the backbone; between them lines
/// that begin with the same word are one line that was written differently; the same line elsewhere has moved.
/// </summary>
internal static class WrittenComparison
{
    /// <summary>The lines that differ, in the order of the later text with what is gone at its old place.</summary>
    public static ImmutableArray<WrittenChange> Of(ImmutableArray<WrittenLine> before, ImmutableArray<WrittenLine> after)
    {
        var changes = ImmutableArray.CreateBuilder<WrittenChange>();
        Compare(before, after, thing: null, block: "", changes);
        return changes.ToImmutable();
    }

    private static void Compare(
        ImmutableArray<WrittenLine> before, ImmutableArray<WrittenLine> after, string? thing, string block, ImmutableArray<WrittenChange>.Builder changes)
    {
        var (keysBefore, keysAfter) = (before.Select(line => line.Key).ToArray(), after.Select(line => line.Key).ToArray());
        var backbone = Alignment.Of(keysBefore, keysAfter);
        var movedFrom = new HashSet<int>();
        var movedTo = new HashSet<int>();
        FindMoves();
        var (left, right) = (0, 0);
        foreach (var (nextLeft, nextRight) in backbone.Append((before.Length, after.Length)))
        {
            Gap(left, nextLeft, right, nextRight);
            (left, right) = (nextLeft + 1, nextRight + 1);
        }

        void FindMoves()
        {
            var same = backbone.Select(pair => pair.Left).ToHashSet();
            var kept = backbone.Select(pair => pair.Right).ToHashSet();
            for (var j = 0; j < after.Length; j++)
            {
                var i = kept.Contains(j) ? -1 : Array.FindIndex(keysBefore, key => key == keysAfter[j]);
                while (i >= 0 && (same.Contains(i) || movedFrom.Contains(i)))
                {
                    i = Array.FindIndex(keysBefore, i + 1, key => key == keysAfter[j]);
                }

                if (i >= 0)
                {
                    movedFrom.Add(i);
                    movedTo.Add(j);
                }
            }
        }

        void Gap(int fromLeft, int toLeft, int fromRight, int toRight)
        {
            var gone = Enumerable.Range(fromLeft, toLeft - fromLeft).Where(i => !movedFrom.Contains(i)).Select(i => before[i]).ToList();
            foreach (var j in Enumerable.Range(fromRight, toRight - fromRight))
            {
                var now = after[j];
                if (movedTo.Contains(j))
                {
                    // Things at the top level may stand in any order.
                    if (thing is not null)
                    {
                        changes.Add(new(thing, block, now.Word, now.Text, now.Text, Moved: true));
                    }
                }
                else if (gone.Find(line => line.Word == now.Word) is { } was)
                {
                    gone.Remove(was);
                    Changed(was, now);
                }
                else
                {
                    Say(now, null, now.Text);
                    Within(now, [], now.Inside);
                }
            }

            foreach (var line in gone)
            {
                Say(line, line.Text, null);
                Within(line, line.Inside, []);
            }
        }

        void Changed(WrittenLine was, WrittenLine now)
        {
            if (was.Text != now.Text || (was.Inside.IsEmpty && now.Inside.IsEmpty))
            {
                Say(now, was.Text, now.Text);
            }

            if (thing is null)
            {
                Compare(was.Inside, now.Inside, now.Word, "", changes);
            }
            else
            {
                Within(now, was.Inside, now.Inside);
            }
        }

        // Of a thing that comes or goes as a whole nobody wants to read each line.
        void Within(WrittenLine line, ImmutableArray<WrittenLine> was, ImmutableArray<WrittenLine> now)
        {
            if (thing is not null)
            {
                Compare(was, now, thing, block.Length == 0 ? line.Word : $"{block} {line.Word}", changes);
            }
        }

        void Say(WrittenLine line, string? was, string? now) => changes.Add(new(thing ?? line.Word, block, thing is null ? "" : line.Word, was, now));
    }
}
