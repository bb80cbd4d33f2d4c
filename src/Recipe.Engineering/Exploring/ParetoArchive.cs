using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>
/// The front of a stream of points. It holds the front so far and a few points that wait, never the stream; the same points give the same
/// front in whatever order they come. Not for several threads at once.
/// </summary>
public sealed class ParetoArchive
{
    private const int FewestWaiting = 1024;

    private readonly List<ParetoPoint> _waiting = [];
    private ImmutableArray<ParetoPoint> _front = [];

    /// <summary>Takes a point; see <see cref="ParetoPoint"/> for what holds for all of them.</summary>
    public void Add(ParetoPoint point)
    {
        _waiting.Add(point);
        if (_waiting.Count >= Math.Max(FewestWaiting, _front.Length))
        {
            Settle();
        }
    }

    /// <summary>The points that none of those so far dominates, in order of their numbers.</summary>
    /// <exception cref="ArgumentException">The points have not as many values, have none, or one is not finite.</exception>
    public ImmutableArray<ParetoPoint> Front()
    {
        Settle();
        return _front;
    }

    /// <summary>Whether a point so far dominates these values.</summary>
    public bool Dominates(ReadOnlySpan<double> values)
    {
        foreach (ParetoPoint point in _front)
        {
            if (Dominance.Dominates(point.Values.AsSpan(), values))
            {
                return true;
            }
        }

        foreach (ParetoPoint point in _waiting)
        {
            if (Dominance.Dominates(point.Values.AsSpan(), values))
            {
                return true;
            }
        }

        return false;
    }

    private void Settle()
    {
        if (_waiting.Count > 0)
        {
            _front = ParetoFront.Of([.. _front, .. _waiting]);
            _waiting.Clear();
        }
    }
}
