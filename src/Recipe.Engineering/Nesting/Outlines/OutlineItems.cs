using System.Collections.Immutable;

namespace Recipe.Engineering;

/// <summary>The pieces while they are laid out, one entry a piece, and the positions in which each may lie.</summary>
internal sealed class OutlineItems
{
    private readonly Dictionary<string, OutlinePosition> _known = [];

    internal OutlineItems(ImmutableArray<OutlinePiece> pieces, int most)
    {
        for (int i = 0; i < pieces.Length; i++)
        {
            OutlinePiece piece = pieces[i];
            int count = Guard.AtLeast(piece.Count, 1, nameof(pieces));
            if (count > most - Piece.Count)
            {
                throw new ArgumentException($"There must be at most {most} pieces.", nameof(pieces));
            }

            OutlinePose[] poses = Poses(piece, nameof(pieces));
            for (int copy = 0; copy < count; copy++)
            {
                Piece.Add(i);
                Copy.Add(copy);
                Kit.Add(piece.KitOrder);
                Area.Add(piece.Outline.SquareMetres);
                Allowed.Add(poses);
            }
        }
    }

    internal int Count => Piece.Count;

    internal List<int> Piece { get; } = [];

    internal List<int> Copy { get; } = [];

    internal List<int> Kit { get; } = [];

    /// <summary>m2.</summary>
    internal List<double> Area { get; } = [];

    /// <summary>Positions that differ; at least one.</summary>
    internal List<OutlinePose[]> Allowed { get; } = [];

    private OutlinePose[] Poses(OutlinePiece piece, string parameter)
    {
        var poses = new List<OutlinePose>();
        int step = piece.Turn switch { NestTurn.None => 360, NestTurn.Half => 180, _ => 90 };
        for (int mirror = 0; mirror < (piece.MayMirror ? 2 : 1); mirror++)
        {
            Outline face = mirror == 1 ? piece.Outline.Mirrored() : piece.Outline;
            for (int degrees = 0; degrees < 360; degrees += step)
            {
                Outline turned = face.Turned(degrees);
                Point2 shift = new(-turned.Least.X, -turned.Least.Y);
                OutlinePosition position = PositionOf(turned.Moved(shift), parameter);
                if (!poses.Exists(pose => pose.Position == position))
                {
                    poses.Add(new OutlinePose(position, mirror == 1, degrees, shift));
                }
            }
        }

        return [.. poses];
    }

    private OutlinePosition PositionOf(Outline outline, string parameter)
    {
        string key = KeyOf(outline);
        if (!_known.TryGetValue(key, out OutlinePosition? position))
        {
            position = new OutlinePosition(_known.Count, [.. outline.Points], ConvexParts.Of(outline, parameter));
            _known.Add(key, position);
        }

        return position;
    }

    // Points to a nanometre, from the leftmost lowest on: the same for outlines that look alike.
    private static string KeyOf(Outline outline)
    {
        (long X, long Y)[] points = [.. outline.Points.Select(at => ((long)Math.Round(at.X * 1e9), (long)Math.Round(at.Y * 1e9)))];
        int first = 0;
        for (int i = 1; i < points.Length; i++)
        {
            first = points[i].CompareTo(points[first]) < 0 ? i : first;
        }

        return string.Join(';', points.Skip(first).Concat(points.Take(first)).Select(at => FormattableString.Invariant($"{at.X},{at.Y}")));
    }
}
