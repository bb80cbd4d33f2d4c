using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>A point of a sketch: the number of a candidate and two of its figures.</summary>
/// <param name="Index">Number of the candidate.</param>
/// <param name="X">First figure.</param>
/// <param name="Y">Second figure.</param>
public readonly record struct SketchPoint(long Index, double X, double Y);

/// <summary>
/// A thinned picture of many points, of bounded size. The plane is cut into cells, one point is kept for each cell that holds any, and the
/// cells double in size until no more than <see cref="MostPoints"/> are left. What is kept follows from the set of points alone: neither
/// their order nor the way they were put together counts. Not for several threads at once.
/// </summary>
public sealed class PointSketch
{
    /// <summary>The most points that are kept.</summary>
    public const int MostPoints = 4096;

    // Then every cell is one of the four about zero.
    private const int Coarsest = 62;

    private readonly double _width;
    private readonly double _height;
    private Dictionary<(long Column, long Row), SketchPoint> _cells = [];

    /// <summary>An empty sketch.</summary>
    /// <param name="typicalX">A value of the first figure that is typical of them; its size sets the finest cells. Not finite or 0 counts as 1.</param>
    /// <param name="typicalY">The same of the second figure.</param>
    public PointSketch(double typicalX, double typicalY) => (_width, _height) = (Finest(typicalX), Finest(typicalY));

    /// <summary>How many times the cells have doubled.</summary>
    public int Level { get; private set; }

    /// <summary>The points that are kept, in order of their numbers.</summary>
    public ImmutableArray<SketchPoint> Points => [.. _cells.Values.OrderBy(point => point.Index)];

    /// <summary>Takes a point; one that is not finite is not drawn.</summary>
    public void Add(SketchPoint point)
    {
        if (!double.IsFinite(point.X) || !double.IsFinite(point.Y))
        {
            return;
        }

        Keep(_cells, point);
        while (_cells.Count > MostPoints)
        {
            Coarsen();
        }
    }

    /// <summary>Takes what another sketch of the same figures has kept: its cells count, not only its points.</summary>
    /// <param name="level">Its <see cref="Level"/>; one beyond any that a sketch can have counts as the coarsest.</param>
    /// <param name="points">Its <see cref="Points"/>.</param>
    public void Add(int level, IEnumerable<SketchPoint> points)
    {
        ArgumentNullException.ThrowIfNull(points);
        while (Level < Math.Min(level, Coarsest))
        {
            Coarsen();
        }

        foreach (SketchPoint point in points)
        {
            Add(point);
        }
    }

    private void Coarsen()
    {
        Level++;
        Dictionary<(long, long), SketchPoint> coarser = new(_cells.Count);
        foreach (SketchPoint kept in _cells.Values)
        {
            Keep(coarser, kept);
        }

        _cells = coarser;
    }

    // Of the points of a cell the one with the lowest number.
    private void Keep(Dictionary<(long, long), SketchPoint> cells, SketchPoint point)
    {
        (long, long) cell = (Cell(point.X, _width), Cell(point.Y, _height));
        if (!cells.TryGetValue(cell, out SketchPoint before) || point.Index < before.Index)
        {
            cells[cell] = point;
        }
    }

    // Halving a whole number downwards puts two neighbours together, always the same two.
    private long Cell(double value, double size) => (long)Math.Clamp(Math.Floor(value / size), -1e18, 1e18) >> Level;

    // A power of two: dividing by it rounds nothing.
    private static double Finest(double typical)
    {
        double size = double.IsFinite(typical) && typical != 0 ? Math.Abs(typical) : 1;
        return Math.ScaleB(1, Math.Clamp(Math.ILogB(size), -300, 300) - 20);
    }
}
