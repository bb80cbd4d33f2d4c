using System.Collections.Immutable;
using System.Text;

namespace Recipe.Syntax.Merging;

/// <summary>Collects the lines of a merge. Conflicts that touch become one.</summary>
internal sealed class MergeWriter
{
    private readonly List<Item> _out = [];

    /// <summary>A line that is settled, or a conflict in its place, or neither: the place where one side took lines out.</summary>
    private readonly record struct Item(MergeLine? Line, bool IsShared, Hunk? Hunk);

    private sealed class Hunk
    {
        public List<MergeLine> Ours { get; } = [];

        public List<MergeLine> Theirs { get; } = [];
    }

    /// <summary>How many conflicts there are.</summary>
    public int Conflicts => _out.Count(item => item.Hunk is not null);

    /// <summary>Lines that both sides can live with.</summary>
    /// <param name="lines">The lines.</param>
    /// <param name="areShared">Whether both sides have them as they are.</param>
    public void Write(IEnumerable<MergeLine> lines, bool areShared = false) => _out.AddRange(lines.Select(line => new Item(line, areShared, null)));

    /// <summary>Marks where one side alone took lines out. Nothing is written, but what stands on both sides of it is not read together.</summary>
    public void TakenOut() => _out.Add(new Item(null, IsShared: false, null));

    /// <summary>Lines that somebody has to choose between.</summary>
    public void Conflict(IEnumerable<MergeLine> ours, IEnumerable<MergeLine> theirs)
    {
        if (_out is not [.., { Hunk: { } hunk }])
        {
            _out.Add(new Item(null, IsShared: false, hunk = new Hunk()));
        }

        hunk.Ours.AddRange(ours);
        hunk.Theirs.AddRange(theirs);
    }

    /// <summary>Makes one conflict of two that few lines part which both sides have: they are read together.</summary>
    /// <param name="atMost">So many lines.</param>
    public void JoinAcross(int atMost)
    {
        var last = -1;
        for (var i = 0; i < _out.Count; i++)
        {
            if (_out[i].Hunk is not { } hunk)
            {
                continue;
            }

            var between = _out[(last + 1)..i];
            if (last >= 0 && between.Count <= atMost && between.TrueForAll(item => item.IsShared))
            {
                var first = _out[last].Hunk!;
                MergeLine[] lines = [.. between.Select(item => item.Line).OfType<MergeLine>()];
                first.Ours.AddRange([.. lines, .. hunk.Ours]);
                first.Theirs.AddRange([.. lines, .. hunk.Theirs]);
                _out.RemoveRange(last + 1, i - last);
                i = last;
            }
            else
            {
                last = i;
            }
        }
    }

    /// <summary>
    /// The text. A line keeps its end when that is one of <paramref name="ends"/>, else it gets the first of them; only the last
    /// may have none.
    /// </summary>
    public string ToText(ConflictMarkers markers, ImmutableArray<string> ends, bool endsWithLineEnd)
    {
        var text = new StringBuilder();
        var last = "";
        foreach (var item in _out)
        {
            if (item.Line is { } line)
            {
                Line(line);
            }

            if (item.Hunk is { } hunk)
            {
                Line(new(markers.Start, ""));
                hunk.Ours.ForEach(Line);
                Line(new(markers.Middle, ""));
                hunk.Theirs.ForEach(Line);
                Line(new(markers.End, ""));
            }
        }

        if (!endsWithLineEnd && _out is [.., { Hunk: null }])
        {
            text.Length -= last.Length;
        }

        return text.ToString();

        void Line(MergeLine line)
        {
            last = ends.Contains(line.End) ? line.End : ends[0];
            text.Append(line.Text).Append(last);
        }
    }
}
