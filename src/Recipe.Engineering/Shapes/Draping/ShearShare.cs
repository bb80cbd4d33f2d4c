using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Where a draped cloth shears more than it can.</summary>
/// <param name="Share">Area of those cells as a share of the area covered; 0 to 1.</param>
/// <param name="Cells">The cells, in the order of the net.</param>
public sealed record ShearShare(Ratio Share, ImmutableArray<DrapeCell> Cells);
