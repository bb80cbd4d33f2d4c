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
    private const int EvenLines = 8;
    private const int EdgeLines = 10;
    private const int MostRounds = 60;

    private readonly OutlineWork _work;
    private readonly OutlineRoll _roll;
    private readonly int[] _items;
    private readonly double[,] _weights;
    private readonly List<(double From, double To, int Obstacle)> _onLine = [];

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

        _work.Obstacles.Count(_items.Length * (long)_items.Length / 4);
        foreach ((int a, int b, double depth) in depths)
        {
            _weights[a, b] += depth / most;
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

            void Try(double y)
            {
                if (y >= 0 && y <= roomY && best > 0)
                {
                    (double cost, double x) = OnLine(y, roomX, best);
                    if (cost < best)
                    {
                        (best, bestPose, bestX, bestY) = (cost, pose, x, y);
                    }
                }
            }

            Try(Math.Clamp(layout.Y[item], 0, roomY));
            for (int i = 0; i < EvenLines; i++)
            {
                Try(roomY * _work.Share());
            }

            Try(0);
            Try(roomY);
            for (int i = 0; i < EdgeLines && obstacles.All.Count > 0; i++)
            {
                OutlineObstacle one = obstacles.All[_work.Next(obstacles.All.Count)];
                Try(_work.Next(2) == 0 ? one.YMin : one.YMax);
            }

            for (double step = roomY / 8; step > 1e-4 && bestPose == pose; step /= 3)
            {
                (double below, double above) = (bestY - step, bestY + step);
                Try(below);
                Try(above);
            }
        }

        layout.Place(item, bestPose, layout.Stock[item], bestX, bestY);
    }

    // The place of least weighted depth on a line. Depth in a convex region is concave along a line, so that it is least at an end of a
    // stretch.
    private (double Cost, double X) OnLine(double y, double room, double below)
    {
        List<OutlineObstacle> all = _work.Obstacles.All;
        _onLine.Clear();
        for (int i = 0; i < all.Count; i++)
        {
            OutlineObstacle obstacle = all[i];
            if (y > obstacle.YMin + OutlineObstacles.Slack && y < obstacle.YMax - OutlineObstacles.Slack && obstacle.XMin < room && obstacle.XMax > 0)
            {
                (double from, double to) = obstacle.Part.Stretch(y - obstacle.Dy);
                if (to - from > 2 * OutlineObstacles.Slack)
                {
                    _onLine.Add((from + obstacle.Dx, to + obstacle.Dx, i));
                }
            }
        }

        (double best, double at) = (below, 0);
        Offer(0);
        Offer(room);
        foreach ((double from, double to, _) in _onLine)
        {
            Offer(from);
            Offer(to);
        }

        _work.Obstacles.Count((all.Count / 2) + (_onLine.Count * (long)_onLine.Count / 4));
        return (best, at);

        void Offer(double x)
        {
            if (x < 0 || x > room)
            {
                return;
            }

            double cost = 0;
            foreach ((double from, double to, int i) in _onLine)
            {
                if (x > from + OutlineObstacles.Slack && x < to - OutlineObstacles.Slack)
                {
                    cost += all[i].Weight * all[i].Depth(x, y);
                    if (cost >= best)
                    {
                        return;
                    }
                }
            }

            if (cost < best)
            {
                (best, at) = (cost, x);
            }
        }
    }
}
