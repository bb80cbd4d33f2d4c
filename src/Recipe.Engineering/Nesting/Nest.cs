using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Pieces laid out on a roll.</summary>
/// <param name="Placements">Every piece, in the order in which it is met from the cut end of the roll.</param>
/// <param name="LengthUsed">Length of roll from the cut end to the far edge of the last piece.</param>
/// <param name="LeastLength">
/// A length that no layout undercuts: the greatest of the area of the pieces (each with its gap) over the width, the longest piece, and all
/// pieces wider than half of the roll one behind the other. Where a piece may be turned its better side counts.
/// </param>
/// <param name="Waste">Share of that length of roll which lies outside the rectangles of the pieces; 0 to 1.</param>
public sealed record Nest(ImmutableArray<NestPlacement> Placements, Length LengthUsed, Length LeastLength, Ratio Waste);
