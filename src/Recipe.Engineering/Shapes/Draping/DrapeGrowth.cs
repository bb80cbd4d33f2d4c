namespace Recipe.Engineering;

/// <summary>Lets a net grow over a surface from two threads.</summary>
internal sealed class DrapeGrowth
{
    private const double PastRimSteps = 2;
    private static readonly (int I, int J)[] Ways = [(1, 0), (0, 1), (-1, 0), (0, -1)];
    private readonly MeshTopology _mesh;
    private readonly TriangleTree _tree;
    private readonly NodeSolver _solver;
    private readonly double _step;
    private readonly int _most;
    private readonly Queue<(int I, int J, int A, int B, int From)> _waiting = [];

    // Crossings next to one that is not on the surface wait until the others are found: past the rim the surface is a guess.
    private readonly Queue<(int I, int J, int A, int B, int From)> _atRim = [];
    private readonly SortedDictionary<(int I, int J), DrapeGapReason> _gaps = [];

    internal DrapeGrowth(MeshTopology mesh, TriangleTree tree, double step, int most)
    {
        (_mesh, _tree, _step, _most) = (mesh, tree, step, most);
        _solver = new NodeSolver(tree, step);
        Nodes = new DrapeNodes(step);
    }

    internal DrapeNodes Nodes { get; }

    internal IEnumerable<DrapeGap> Gaps => _gaps.Where(gap => Nodes.Find(gap.Key.I, gap.Key.J) < 0).Select(gap => new DrapeGap(gap.Key.I, gap.Key.J, gap.Value));

    internal void Grow(SurfacePlace start, Point3 warp)
    {
        Nodes.Add(new DrapeNodes.Entry(0, 0, start.Foot, start.Normal, start.Triangle, DrapeNodeKind.OnSurface));
        var walks = GeodesicWalk.Quarters(_mesh, start.Triangle, start.Foot, warp);
        for (int way = 0; way < 4; way++)
        {
            Thread(walks[way], 0, 0, Ways[way]);
        }

        Fill();

        // Where a thread's end is reached by no other thread, as beyond the corner of an L, it goes on straight by itself.
        for (int index = 0; index < Nodes.Count && Nodes.Count < _most; index++)
        {
            DrapeNodes.Entry node = Nodes[index];
            foreach ((int i, int j) in Ways)
            {
                int behind = Nodes.Find(node.I - i, node.J - j);
                if (node.Kind == DrapeNodeKind.OnSurface && behind >= 0
                    && Nodes.Find(node.I + i, node.J + j) < 0 && !_gaps.ContainsKey((node.I + i, node.J + j)))
                {
                    Point3 foot = _tree.Nearest(node.Place, node.Triangle).Foot;
                    Thread(new GeodesicWalk(_mesh, node.Triangle, foot, node.Place - Nodes[behind].Place), node.I, node.J, (i, j));
                    Fill();
                }
            }
        }
    }

    private void Thread(GeodesicWalk walk, int i, int j, (int I, int J) way)
    {
        Point3 at = Nodes[Nodes.Find(i, j)].Place;
        int past = 0;
        while (Nodes.Count < _most)
        {
            (i, j) = (i + way.I, j + way.J);
            if (Nodes.Find(i, j) >= 0)
            {
                return;
            }

            if (walk.Next(at, _step) is not { } next)
            {
                _gaps.TryAdd((i, j), DrapeGapReason.NoPoint);
                return;
            }

            SurfacePlace place = _tree.Nearest(next, walk.Triangle);
            DrapeNodeKind kind = Kind(i, j, next, place, walk.PastRim);
            past = kind == DrapeNodeKind.OnSurface ? 0 : past + 1;
            if ((walk.PastRim && place.PastRim > PastRimSteps * _step) || past > 2)
            {
                return;
            }

            at = next;
            Add(i, j, next, place, kind);
        }
    }

    private DrapeNodeKind Kind(int i, int j, Point3 at, SurfacePlace place, bool past) =>
        past || place.PastRim > 1e-7 * _step ? DrapeNodeKind.PastRim
        : Nodes.Laps(i, j, at, place.Normal) ? DrapeNodeKind.Lapping
        : DrapeNodeKind.OnSurface;

    private void Add(int i, int j, Point3 at, SurfacePlace place, DrapeNodeKind kind)
    {
        int here = Nodes.Count;
        Nodes.Add(new DrapeNodes.Entry(i, j, at, place.Normal, place.Triangle, kind));

        // Each of the eight round it is looked up once; four cells of four crossings would ask for them six times over.
        Span<int> round = stackalloc int[9];
        for (int k = 0; k < 9; k++)
        {
            round[k] = k == 4 ? here : Nodes.Find(i + (k % 3) - 1, j + (k / 3) - 1);
        }

        for (int k = 0; k < 4; k++)
        {
            (int di, int dj) = ((k & 1) == 0 ? 1 : -1, (k & 2) == 0 ? 1 : -1);
            (int side, int up, int corner) = (round[4 + di], round[4 + (3 * dj)], round[4 + di + (3 * dj)]);
            Await(i + di, j + dj, corner, side, up, here);
            Await(i + di, j, side, here, corner, up);
            Await(i, j + dj, up, here, corner, side);
        }
    }

    // Queues a crossing, if it is not there, whose cell has its three others, one of them at least on the surface.
    private void Await(int i, int j, int wanted, int a, int b, int from)
    {
        if (wanted >= 0 || a < 0 || b < 0 || from < 0)
        {
            return;
        }

        int on = On(a) + On(b) + On(from);
        if (on > 0)
        {
            (on == 3 ? _waiting : _atRim).Enqueue((i, j, a, b, from));
        }

        int On(int index) => Nodes[index].Kind == DrapeNodeKind.OnSurface ? 1 : 0;
    }

    private void Fill()
    {
        while (_waiting.TryDequeue(out var next) || _atRim.TryDequeue(out next))
        {
            if (Nodes.Find(next.I, next.J) >= 0)
            {
                continue;
            }

            if (Nodes.Count >= _most)
            {
                _gaps.TryAdd((next.I, next.J), DrapeGapReason.NetFull);
                continue;
            }

            DrapeNodes.Entry a = Nodes[next.A];
            var gap = _solver.Find(a.Place, Nodes[next.B].Place, Nodes[next.From].Place, a.Triangle, out Point3 at, out SurfacePlace place);
            if (gap is { } reason)
            {
                _gaps.TryAdd((next.I, next.J), reason);
            }
            else if (place.PastRim <= PastRimSteps * _step)
            {
                Add(next.I, next.J, at, place, Kind(next.I, next.J, at, place, past: false));
            }
        }
    }
}
