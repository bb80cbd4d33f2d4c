using System.Text;

namespace Recipe.Syntax.Formatting;

/// <summary>
/// Sets the columns. The entries of one block with no empty line between them share columns; a block among them does not part them.
/// Comments behind lines share a column as far as those lines stand directly below one another.
/// </summary>
internal sealed class Columns
{
    private const int GapAfterHead = 2;
    private const int Gap = 3;

    /// <summary>Comments behind lines stand here, counted from zero, or where the longest of their lines leaves a gap.</summary>
    private const int CommentColumn = 41;

    private readonly List<List<LayoutLine>> _entriesByDepth = [];
    private readonly List<LayoutLine> _lets = [];
    private readonly List<LayoutLine> _commented = [];
    private readonly StringBuilder _text = new();

    /// <summary>Sets the text and the comment column of every line.</summary>
    public static void Set(List<LayoutLine> lines)
    {
        var columns = new Columns();
        foreach (var line in lines)
        {
            columns.Add(line);
        }

        columns.EndEntries(0);
        columns.EndLets();
        columns.SetComments(lines);
    }

    private void Add(LayoutLine line)
    {
        EndEntries(line.BlankBefore ? line.Depth : line.Depth + 1);
        if (line.BlankBefore || line.Kind is not (LineKind.Let or LineKind.Comment))
        {
            EndLets();
        }

        if (line.Kind == LineKind.Let)
        {
            _lets.Add(line);
        }
        else if (line.Kind == LineKind.Entry)
        {
            while (_entriesByDepth.Count <= line.Depth)
            {
                _entriesByDepth.Add([]);
            }

            _entriesByDepth[line.Depth].Add(line);
        }
    }

    private void EndLets()
    {
        var width = _lets.Count == 0 ? 0 : _lets.Max(let => let.Cells[0].Text.Length);
        foreach (var let in _lets)
        {
            let.Text = let.Cells[0].Text.PadRight(width) + " " + let.Cells[1].Text;
        }

        _lets.Clear();
    }

    /// <summary>Ends the runs of this depth and of all deeper ones.</summary>
    private void EndEntries(int depth)
    {
        for (var i = depth; i < _entriesByDepth.Count; i++)
        {
            if (_entriesByDepth[i].Count > 0)
            {
                SetCells(_entriesByDepth[i]);
                _entriesByDepth[i].Clear();
            }
        }
    }

    private void SetCells(List<LayoutLine> run)
    {
        var widths = Widths(run);
        foreach (var line in run)
        {
            _text.Clear();
            var isFree = false;
            for (var i = 0; i < line.Cells.Count; i++)
            {
                var cell = line.Cells[i];
                isFree |= cell.Shape == CellShape.Free;
                _text.Append(cell.Text);
                if (i + 1 < line.Cells.Count)
                {
                    _text.Append(' ', (isFree ? 0 : widths[i] - cell.Text.Length) + (i == 0 ? GapAfterHead : Gap));
                }
            }

            line.Text = _text.ToString();
        }
    }

    private static List<int> Widths(List<LayoutLine> run)
    {
        var widths = new List<int>();
        foreach (var line in run)
        {
            for (var i = 0; i < line.Cells.Count && line.Cells[i].Shape != CellShape.Free; i++)
            {
                if (widths.Count == i)
                {
                    widths.Add(0);
                }

                if (i + 1 < line.Cells.Count || line.Cells[i].Shape == CellShape.Angle)
                {
                    widths[i] = Math.Max(widths[i], line.Cells[i].Text.Length);
                }
            }
        }

        return widths;
    }

    private void SetComments(List<LayoutLine> lines)
    {
        for (var i = 0; i < lines.Count; i++)
        {
            var line = lines[i];
            if (i > 0 && (line.BlankBefore || line.Depth != lines[i - 1].Depth || line.Kind != lines[i - 1].Kind || line.Kind is not (LineKind.Entry or LineKind.Let)))
            {
                EndComments();
            }

            if (line.Comment is not null)
            {
                _commented.Add(line);
            }
        }

        EndComments();
    }

    private void EndComments()
    {
        var column = CommentColumn;
        foreach (var line in _commented)
        {
            column = Math.Max(column, line.Width + Gap);
        }

        foreach (var line in _commented)
        {
            line.CommentColumn = column;
        }

        _commented.Clear();
    }
}
