namespace Recipe.Engineering;

/// <summary>A weighted graph Laplacian over the edges of a surface, and its solution for both coordinates by conjugate gradients.</summary>
/// <remarks>Source: M. R. Hestenes and E. Stiefel, Methods of conjugate gradients for solving linear systems, 1952, with the diagonal as preconditioner.</remarks>
internal sealed class PlaneLaplacian
{
    private readonly int[] _from;
    private readonly int[] _to;
    private readonly double[] _weights;
    private readonly double[] _diagonal;

    /// <summary>Takes edges and weights; an edge may be given more than once.</summary>
    internal PlaneLaplacian(int vertices, int[] from, int[] to, double[] weights)
    {
        (_from, _to, _weights, _diagonal) = (from, to, weights, new double[vertices]);
        for (int i = 0; i < from.Length; i++)
        {
            _diagonal[from[i]] += weights[i];
            _diagonal[to[i]] += weights[i];
        }
    }

    /// <summary>Improves a solution until the residual is a small share of what it was or <paramref name="rounds"/> are done.</summary>
    internal void Solve(Point2[] at, Point2[] right, bool[]? held, double share, int rounds)
    {
        int count = at.Length;
        var residual = new Point2[count];
        var way = new Point2[count];
        var image = new Point2[count];
        Apply(at, image);
        Point2 product = default;
        double first = 0;
        for (int i = 0; i < count; i++)
        {
            residual[i] = Free(i) ? right[i] - image[i] : default;
            way[i] = Scaled(residual[i], i);
            product += Each(residual[i], way[i]);
            first += Point2.Dot(right[i], right[i]);
        }

        for (int round = 0; round < rounds && product.X + product.Y > 0; round++)
        {
            Apply(way, image);
            Point2 curve = default;
            for (int i = 0; i < count; i++)
            {
                curve += Each(way[i], image[i]);
            }

            Point2 step = new(curve.X > 0 ? product.X / curve.X : 0, curve.Y > 0 ? product.Y / curve.Y : 0);
            Point2 next = default;
            double left = 0;
            for (int i = 0; i < count; i++)
            {
                if (Free(i))
                {
                    at[i] += Each(way[i], step);
                    residual[i] -= Each(image[i], step);
                    next += Each(residual[i], Scaled(residual[i], i));
                    left += Point2.Dot(residual[i], residual[i]);
                }
            }

            if (left <= share * share * first)
            {
                return;
            }

            Point2 turn = new(product.X > 0 ? next.X / product.X : 0, product.Y > 0 ? next.Y / product.Y : 0);
            product = next;
            for (int i = 0; i < count; i++)
            {
                way[i] = Free(i) ? Scaled(residual[i], i) + Each(way[i], turn) : default;
            }
        }

        bool Free(int vertex) => held is null || !held[vertex];
        Point2 Scaled(Point2 value, int vertex) => _diagonal[vertex] > 0 ? value * (1 / _diagonal[vertex]) : default;
    }

    private static Point2 Each(Point2 a, Point2 b) => new(a.X * b.X, a.Y * b.Y);

    private void Apply(Point2[] at, Point2[] image)
    {
        Array.Clear(image);
        for (int i = 0; i < _from.Length; i++)
        {
            Point2 pull = (at[_from[i]] - at[_to[i]]) * _weights[i];
            image[_from[i]] += pull;
            image[_to[i]] -= pull;
        }
    }
}
