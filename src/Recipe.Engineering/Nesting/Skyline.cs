namespace Recipe.Engineering;

/// <summary>The far edge of what is laid already, as steps from the selvedge: a step starts at X, lies at Y and ends where the next starts.</summary>
internal sealed class Skyline
{
    private readonly List<(double X, double Y)> _steps = [];
    private readonly double _width;
    private readonly double _slack;

    internal Skyline(double width)
    {
        _width = width;
        _slack = width * 1e-9;
        _steps.Add((0, 0));
    }

    internal int Count => _steps.Count;

    /// <summary>Widths that differ by less than this are the same: it is rounding, not cloth.</summary>
    internal double Slack => _slack;

    internal double X(int step) => _steps[step].X;

    internal double Y(int step) => _steps[step].Y;

    internal double End(int step) => step + 1 < _steps.Count ? _steps[step + 1].X : _width;

    /// <summary>Where a box of this width comes to lie when it starts at a step; infinite when it would leave the roll.</summary>
    internal double Rest(int step, double across)
    {
        double end = _steps[step].X + across;
        if (end > _width + _slack)
        {
            return double.PositiveInfinity;
        }

        double y = _steps[step].Y;
        for (int i = step + 1; i < _steps.Count && _steps[i].X < end - _slack; i++)
        {
            y = Math.Max(y, _steps[i].Y);
        }

        return y;
    }

    /// <summary>The lowest step, of several the one nearest the selvedge.</summary>
    internal int Lowest()
    {
        int lowest = 0;
        for (int i = 1; i < _steps.Count; i++)
        {
            lowest = _steps[i].Y < _steps[lowest].Y ? i : lowest;
        }

        return lowest;
    }

    /// <summary>Lifts the steps from <paramref name="x"/> over a width to <paramref name="y"/>.</summary>
    internal void Raise(double x, double across, double y)
    {
        double end = x + across;
        int first = 0;
        while (first + 1 < _steps.Count && _steps[first + 1].X <= x + _slack)
        {
            first++;
        }

        int after = first;
        while (after < _steps.Count && _steps[after].X < end - _slack)
        {
            after++;
        }

        // What the last lifted step leaves behind the box keeps its height.
        double behind = _steps[after - 1].Y;
        bool rest = End(after - 1) > end + _slack;
        bool before = _steps[first].X < x - _slack;
        int remove = before ? first + 1 : first;
        _steps.RemoveRange(remove, after - remove);
        _steps.Insert(remove, (x, y));
        if (rest)
        {
            _steps.Insert(remove + 1, (end, behind));
        }

        Merge(remove);
    }

    private void Merge(int step)
    {
        if (step + 1 < _steps.Count && _steps[step + 1].Y == _steps[step].Y)
        {
            _steps.RemoveAt(step + 1);
        }

        if (step > 0 && _steps[step - 1].Y == _steps[step].Y)
        {
            _steps.RemoveAt(step);
        }
    }
}
