using System.Runtime.InteropServices;

namespace Recipe.Engineering;

/// <summary>One region that the origin of a moved piece may not enter, at its place on the roll.</summary>
internal readonly record struct OutlineObstacle(NoFitPart Part, double Dx, double Dy)
{
    internal double XMin { get; } = Dx + Part.XMin;

    internal double XMax { get; } = Dx + Part.XMax;

    internal double YMin { get; } = Dy + Part.YMin;

    internal double YMax { get; } = Dy + Part.YMax;
}

/// <summary>Where a piece may lie among pieces that lie already, looked for along lines across the roll's width.</summary>
internal sealed class OutlineObstacles
{
    /// <summary>Pieces may be nearer than the gap by this, m: it is rounding, not cloth.</summary>
    internal const double Slack = 1e-10;

    private const int MostLines = 240;
    private const int EvenLines = 24;
    private const int Refinements = 14;

    private readonly List<OutlineObstacle> _all = [];
    private readonly List<double> _lines = [];

    /// <summary>Looks at a region so far.</summary>
    internal long Steps { get; private set; }

    internal void Clear() => _all.Clear();

    internal void Add(NoFitPart[] parts, double x, double y)
    {
        foreach (NoFitPart part in parts)
        {
            _all.Add(new OutlineObstacle(part, x, y));
        }

        Steps += parts.Length;
    }

    internal void Count(long steps) => Steps += steps;

    /// <summary>The place nearest the cut end, of several the one nearest the selvedge; null when there is none up to a limit.</summary>
    /// <param name="room">Room for the origin across the roll, m.</param>
    /// <param name="limit">Greatest X of the origin, m.</param>
    internal Point2? First(double room, double limit)
    {
        _all.Sort(static (a, b) => a.XMin.CompareTo(b.XMin));
        Lines(room);
        (double best, double at) = (double.PositiveInfinity, 0);
        foreach (double y in _lines)
        {
            double x = Along(y, Math.Min(limit, best - (2 * Slack)));
            if (x < best)
            {
                (best, at) = (x, y);
            }
        }

        if (double.IsInfinity(best))
        {
            return null;
        }

        // Between the lines there may be a pocket of slanted edges that reaches farther.
        double step = room / EvenLines;
        for (int i = 0; i < Refinements && best > 0 && step > 0; i++, step /= 2)
        {
            foreach (double y in (ReadOnlySpan<double>)[at - step, at + step])
            {
                double x = y < 0 || y > room ? double.PositiveInfinity : Along(y, best - (2 * Slack));
                if (x < best)
                {
                    (best, at) = (x, y);
                    break;
                }
            }
        }

        return new Point2(best, at);
    }

    /// <summary>The least X from zero on at which the origin is free on a line; infinite beyond the limit.</summary>
    private double Along(double y, double limit)
    {
        double x = 0;
        bool moved = limit >= 0;
        while (moved)
        {
            moved = false;
            foreach (ref readonly OutlineObstacle obstacle in CollectionsMarshal.AsSpan(_all))
            {
                Steps++;
                if (obstacle.XMin > x - Slack)
                {
                    break;
                }

                if (obstacle.XMax <= x + Slack || y <= obstacle.YMin + Slack || y >= obstacle.YMax - Slack)
                {
                    continue;
                }

                // Round pieces have many half planes.
                Steps += obstacle.Part.Size / 8;
                (double from, double to) = obstacle.Part.Stretch(y - obstacle.Dy);
                if (from + obstacle.Dx < x - Slack && to + obstacle.Dx > x + Slack)
                {
                    x = to + obstacle.Dx;
                    moved = true;
                    if (x > limit)
                    {
                        return double.PositiveInfinity;
                    }
                }
            }
        }

        return limit < 0 ? double.PositiveInfinity : x;
    }

    // Both selvedges, where a region begins or ends, and some between.
    private void Lines(double room)
    {
        _lines.Clear();
        _lines.Add(0);
        _lines.Add(room);
        foreach (OutlineObstacle obstacle in _all)
        {
            _lines.Add(obstacle.YMin);
            _lines.Add(obstacle.YMax);
        }

        _lines.RemoveAll(y => y < 0 || y > room);
        _lines.Sort();
        int kept = 0;
        for (int i = 0; i < _lines.Count; i++)
        {
            if (kept == 0 || _lines[i] - _lines[kept - 1] > 1e-7)
            {
                _lines[kept++] = _lines[i];
            }
        }

        _lines.RemoveRange(kept, _lines.Count - kept);
        if (kept > MostLines)
        {
            for (int i = 0; i < MostLines; i++)
            {
                _lines[i] = _lines[(int)((long)i * (kept - 1) / (MostLines - 1))];
            }

            _lines.RemoveRange(MostLines, kept - MostLines);
        }

        for (int i = 1; i < EvenLines; i++)
        {
            _lines.Add(room * i / EvenLines);
        }

        _lines.Sort();
    }
}
