using System.Runtime.InteropServices;

namespace Recipe.Engineering;

/// <summary>
/// Makes a layout on one roll shorter: the roll is shortened, and pieces that overlap then are moved, one at a time, each to where it
/// overlaps least, pairs that go on overlapping counting more and more.
/// </summary>
/// <remarks>
/// Source: guided local search for nesting, Egeblad, Nielsen, Odgaard, EJOR 183 (2007) 1249-1266; Umetani et al., Int. Trans. Oper. Res. 16
/// (2009) 661-683. Overlap is the depth to which one convex part lies in the other.
/// </remarks>
internal sealed class OutlineSeparation
{
    private const int EvenLines = 12;
    private const int EdgeLines = 12;
    private const int Looks = 6;
    private const int MostRounds = 60;
    private const double Decay = 0.95;
    private const double LeastGrowth = 1.2;
    private const double MostGrowth = 2;

    private readonly OutlineWork _work;
    private readonly OutlineRoll _roll;
    private readonly int[] _items;
    private readonly double[,] _weights;
    private readonly List<(double From, double To, int Obstacle)> _onLine = [];
    private readonly List<(double X, double Weight)> _ends = [];

    internal OutlineSeparation(OutlineWork work, int roll, int[] items)
    {
        (_work, _roll, _items) = (work, work.Rolls[roll], items);
        _weights = new double[items.Length, items.Length];
    }

    /// <summary>Moves pieces of the layout until none overlaps within a length.</summary>
    /// <returns>Whether that succeeded.</returns>
    internal bool Separate(OutlineLayout layout, double length)
    {
        for (int i = 0; i < _items.Length; i++)
        {
            for (int j = 0; j < _items.Length; j++)
            {
                _weights[i, j] = 1;
            }
        }

        double least = double.PositiveInfinity;
        for (int round = 0, last = 0; round - last < MostRounds && !_work.IsOver; round++)
        {
            (double total, List<int> overlapping) = Overlaps(layout);
            if (overlapping.Count == 0)
            {
                return true;
            }

            (least, last) = total < least * 0.98 ? (total, round) : (least, last);
            for (int i = overlapping.Count - 1; i >= 0; i--)
            {
                int pick = _work.Next(i + 1);
                (overlapping[i], overlapping[pick]) = (overlapping[pick], overlapping[i]);
                Move(layout, overlapping[i], length);
            }
        }

        return false;
    }

    // Total depth, the pieces that overlap another, and more weight for each such pair.
    private (double Total, List<int> Overlapping) Overlaps(OutlineLayout layout)
    {
        var depths = new List<(int A, int B, double Depth)>();
        var overlaps = new bool[_items.Length];
        (double total, double most) = (0, 0);
        for (int a = 0; a < _items.Length; a++)
        {
            OutlinePosition still = _work.Position(layout, _items[a]);
            for (int b = a + 1; b < _items.Length; b++)
            {
                (double dx, double dy) = (layout.X[_items[b]] - layout.X[_items[a]], layout.Y[_items[b]] - layout.Y[_items[a]]);
                OutlinePosition moved = _work.Position(layout, _items[b]);
                double gap = _work.Table.Gap;
                if (dx >= still.Along + gap || dy >= still.Across + gap || -dx >= moved.Along + gap || -dy >= moved.Across + gap)
                {
                    continue;
                }

                double depth = 0;
                foreach (NoFitPart part in _work.Table.Of(still, moved))
                {
                    double one = part.Depth(dx, dy);
                    depth += one > 2 * OutlineObstacles.Slack ? one : 0;
                }

                if (depth > 0)
                {
                    depths.Add((a, b, depth));
                    overlaps[a] = overlaps[b] = true;
                    total += depth;
                    most = Math.Max(most, depth);
                }
            }
        }

        _work.Obstacles.Count(_items.Length * (long)_items.Length);
        for (int a = 0; a < _items.Length; a++)
        {
            for (int b = 0; b < _items.Length; b++)
            {
                _weights[a, b] = Math.Max(_weights[a, b] * Decay, 1);
            }
        }

        foreach ((int a, int b, double depth) in depths)
        {
            _weights[a, b] *= (LeastGrowth + ((MostGrowth - LeastGrowth) * depth / most)) / Decay;
            _weights[b, a] = _weights[a, b];
        }

        return (total, [.. Enumerable.Range(0, _items.Length).Where(item => overlaps[item])]);
    }

    private void Move(OutlineLayout layout, int index, double length)
    {
        int item = _items[index];
        OutlineObstacles obstacles = _work.Obstacles;
        OutlinePose[] poses = _work.Items.Allowed[item];
        (double best, int bestPose, double bestX, double bestY) = (double.PositiveInfinity, layout.Pose[item], layout.X[item], layout.Y[item]);
        for (int turn = 0; turn < poses.Length; turn++)
        {
            // The position that it has first: it stays when nothing is better.
            int pose = (layout.Pose[item] + turn) % poses.Length;
            OutlinePosition position = poses[pose].Position;
            (double roomX, double roomY) = (length - position.Along, Math.Max(_roll.Width - position.Across, 0));
            if (!_roll.Holds(position) || roomX < 0)
            {
                continue;
            }

            obstacles.Clear();
            for (int other = 0; other < _items.Length; other++)
            {
                if (other != index)
                {
                    obstacles.Add(
                        _work.Table.Of(_work.Position(layout, _items[other]), position), layout.X[_items[other]], layout.Y[_items[other]], _weights[index, other]);
                }
            }

            void Try(double y, double near, double far)
            {
                if (y >= 0 && y <= roomY && best > 0)
                {
                    (double cost, double x) = OnLine(y, Math.Max(near, 0), Math.Min(far, roomX), best);
                    if (cost < best)
                    {
                        (best, bestPose, bestX, bestY) = (cost, pose, x, y);
                    }
                }
            }

            if (turn == 0 && layout.X[item] <= roomX)
            {
                (best, bestX, bestY) = (Here(layout.X[item], layout.Y[item]), layout.X[item], layout.Y[item]);
            }

            Try(Math.Clamp(layout.Y[item], 0, roomY), 0, roomX);
            for (int i = 0; i < EvenLines; i++)
            {
                Try(roomY * (i + _work.Share()) / EvenLines, 0, roomX);
            }

            Try(0, 0, roomX);
            Try(roomY, 0, roomX);
            for (int i = 0; i < EdgeLines && obstacles.All.Count > 0; i++)
            {
                OutlineObstacle one = obstacles.All[_work.Next(obstacles.All.Count)];
                Try(_work.Next(2) == 0 ? one.YMin : one.YMax, 0, roomX);
            }

            // Round the best so far, nearer and nearer.
            for (double step = position.Across / 3; step > 1e-4 && bestPose == pose; step /= 2.5)
            {
                (double x, double below, double above) = (bestX, bestY - step, bestY + step);
                Try(below, x - (3 * step), x + (3 * step));
                Try(above, x - (3 * step), x + (3 * step));
            }
        }

        layout.Place(item, bestPose, layout.Stock[item], bestX, bestY);
    }

    // The place of least weighted depth on a line. Depth in a convex region is concave along a line, so that it is least at an end of a
    // stretch; only the ends at which least weight lies are looked at closer.
    private (double Cost, double X) OnLine(double y, double near, double far, double below)
    {
        Span<OutlineObstacle> all = CollectionsMarshal.AsSpan(_work.Obstacles.All);
        _onLine.Clear();
        _ends.Clear();
        for (int i = 0; i < all.Length; i++)
        {
            ref readonly OutlineObstacle obstacle = ref all[i];
            if (y > obstacle.YMin + OutlineObstacles.Slack && y < obstacle.YMax - OutlineObstacles.Slack && obstacle.XMin < far && obstacle.XMax > near)
            {
                (double from, double to) = obstacle.Part.Stretch(y - obstacle.Dy);
                if (to - from > 2 * OutlineObstacles.Slack && from + obstacle.Dx < far && to + obstacle.Dx > near)
                {
                    _onLine.Add((from + obstacle.Dx, to + obstacle.Dx, i));
                    _ends.Add((from + obstacle.Dx, obstacle.Weight));
                    _ends.Add((to + obstacle.Dx, -obstacle.Weight));
                }
            }
        }

        _ends.Add((near, 0));
        _ends.Add((far, 0));
        _ends.Sort();
        Span<(double Weight, double X)> least = stackalloc (double, double)[Looks];
        least.Fill((double.PositiveInfinity, 0));
        double weight = 0;
        for (int i = 0; i < _ends.Count;)
        {
            // What ends at a place no longer lies on it, what begins there does not yet.
            double x = _ends[i].X, begins = 0;
            for (; i < _ends.Count && _ends[i].X <= x + OutlineObstacles.Slack; i++)
            {
                (weight, begins) = _ends[i].Weight < 0 ? (weight + _ends[i].Weight, begins) : (weight, begins + _ends[i].Weight);
            }

            if (x >= near && x <= far && weight < least[^1].Weight)
            {
                int place = Looks - 1;
                for (; place > 0 && least[place - 1].Weight > weight; place--)
                {
                    least[place] = least[place - 1];
                }

                least[place] = (weight, x);
            }

            weight += begins;
        }

        (double best, double at) = (below, 0);
        foreach ((double most, double x) in least)
        {
            double cost = double.IsInfinity(most) ? double.PositiveInfinity : Cost(x, y, best);
            (best, at) = cost < best ? (cost, x) : (best, at);
        }

        _work.Obstacles.Count((all.Length / 2) + (_onLine.Count * 8L));
        return (best, at);
    }

    private double Here(double x, double y)
    {
        double cost = 0;
        foreach (ref readonly OutlineObstacle obstacle in CollectionsMarshal.AsSpan(_work.Obstacles.All))
        {
            cost += obstacle.Weight * obstacle.Depth(x, y);
        }

        return cost;
    }

    // Infinite when it is not below a limit.
    private double Cost(double x, double y, double below)
    {
        double cost = 0;
        foreach ((double from, double to, int i) in _onLine)
        {
            if (x > from + OutlineObstacles.Slack && x < to - OutlineObstacles.Slack)
            {
                OutlineObstacle obstacle = _work.Obstacles.All[i];
                cost += obstacle.Weight * obstacle.Depth(x, y);
                if (cost >= below)
                {
                    return double.PositiveInfinity;
                }
            }
        }

        return cost;
    }
}
