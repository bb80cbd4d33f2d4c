using System.Collections.Immutable;
using Recipe.Engineering;
using Recipe.Planning;

namespace Recipe.Documents.Cuts;

/// <summary>A length of roll that one cut straight across parts from the rest.</summary>
/// <param name="Number">From 1, the cut end of the roll first.</param>
/// <param name="Start">From the cut end, m.</param>
/// <param name="End">Its far end, m.</param>
/// <param name="Pieces">What lies on it.</param>
internal sealed record NestStrip(int Number, double Start, double End, ImmutableArray<NestPlacement> Pieces)
{
    /// <summary>Its length, m; up to the cut behind it.</summary>
    public double Length => End - Start;
}

/// <summary>Parts a layout into strips: a strip ends where a straight cut across the roll meets no piece.</summary>
internal static class NestStrips
{
    public static ImmutableArray<NestStrip> Of(NestPlan nest)
    {
        var strips = ImmutableArray.CreateBuilder<NestStrip>();
        var pieces = ImmutableArray.CreateBuilder<NestPlacement>();
        var (start, end) = (0.0, 0.0);
        foreach (var place in nest.Placements)
        {
            if (pieces.Count > 0 && place.AlongAt.Meters >= end - 1e-9)
            {
                strips.Add(new NestStrip(strips.Count + 1, start, place.AlongAt.Meters, pieces.ToImmutable()));
                pieces.Clear();
                start = place.AlongAt.Meters;
            }

            pieces.Add(place);
            end = Math.Max(end, (place.AlongAt + place.Along).Meters);
        }

        if (pieces.Count > 0)
        {
            strips.Add(new NestStrip(strips.Count + 1, start, end, pieces.ToImmutable()));
        }

        return strips.ToImmutable();
    }

    /// <summary>Numbers of the strips on which pieces of a size lie.</summary>
    public static ImmutableArray<int> Holding(ImmutableArray<NestStrip> strips, int size) =>
        [.. strips.Where(strip => strip.Pieces.Any(place => place.Piece == size)).Select(strip => strip.Number)];
}
