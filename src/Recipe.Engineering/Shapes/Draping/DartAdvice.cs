using System.Collections.Immutable;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Darts suggested for a cloth that locks: one for each connected region beyond the locking angle, from its point nearest to the start
/// straight to the nearest rim.
/// </summary>
/// <remarks>
/// What remains is found by draping again: within the reach of the tips the first net stays, and beyond them the cloth between each two
/// darts (with one dart, each half) is draped by itself from its middle, with the warp as it lay there. A suggestion to try on the
/// mould, not a proof: the cloth at the tips is joined, which these separate nets do not know.
/// </remarks>
/// <param name="Darts">The darts, counter-clockwise round the start from the warp. Empty when nothing locks, or when the net does not follow the rim.</param>
/// <param name="RemainingShear">Greatest shear that remains; null when there is no dart.</param>
/// <param name="StaysWithin">Whether the shear stays within the locking angle: without darts when nothing locks, otherwise with them.</param>
public sealed record DartAdvice(ImmutableArray<Dart> Darts, Angle? RemainingShear, bool StaysWithin);
