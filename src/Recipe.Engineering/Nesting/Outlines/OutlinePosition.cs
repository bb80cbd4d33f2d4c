namespace Recipe.Engineering;

/// <summary>One outline in one of the positions in which it may lie, its least coordinates at the origin.</summary>
internal sealed class OutlinePosition
{
    internal OutlinePosition(int id, Point2[] points, Point2[][] parts)
    {
        (Id, Points, Parts) = (id, points, parts);
        foreach (Point2 at in points)
        {
            (Along, Across) = (Math.Max(Along, at.X), Math.Max(Across, at.Y));
        }
    }

    /// <summary>Positions that look alike, of whatever piece, are one and have one number.</summary>
    internal int Id { get; }

    /// <summary>The true outline, m.</summary>
    internal Point2[] Points { get; }

    /// <summary>Convex parts that cover it, m.</summary>
    internal Point2[][] Parts { get; }

    internal double Along { get; }

    internal double Across { get; }
}

/// <summary>How a piece comes into a position: mirrored, turned, then moved.</summary>
internal readonly record struct OutlinePose(OutlinePosition Position, bool IsMirrored, int Degrees, Point2 Shift);
