using System.Collections.Immutable;
using System.Text;

namespace Recipe.Syntax.Merging;

/// <summary>Collects the lines of a merge. Conflicts that touch become one.</summary>
internal sealed class MergeWriter
{
    private readonly List<object> _out = [];

    private sealed class Hunk
    {
        public List<MergeLine> Ours { get; } = [];

        public List<MergeLine> Theirs { get; } = [];
    }

    /// <summary>How many conflicts there are.</summary>
    public int Conflicts => _out.Count(item => item is Hunk);

    /// <summary>Lines that both sides can live with.</summary>
    public void Write(IEnumerable<MergeLine> lines)
    {
        foreach (var line in lines)
        {
            _out.Add(line);
        }
    }

    /// <summary>Lines that somebody has to choose between.</summary>
    public void Conflict(IEnumerable<MergeLine> ours, IEnumerable<MergeLine> theirs)
    {
        if (_out is not [.., Hunk hunk])
        {
            _out.Add(hunk = new Hunk());
        }

        hunk.Ours.AddRange(ours);
        hunk.Theirs.AddRange(theirs);
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
            if (item is MergeLine line)
            {
                Line(line);
            }
            else if (item is Hunk hunk)
            {
                Line(new(markers.Start, ""));
                hunk.Ours.ForEach(Line);
                Line(new(markers.Middle, ""));
                hunk.Theirs.ForEach(Line);
                Line(new(markers.End, ""));
            }
        }

        if (!endsWithLineEnd && _out is [.., MergeLine])
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
