using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A need split into pots that are alike and used up in time.</summary>
/// <param name="Pots">How many; 1 or more.</param>
/// <param name="LargestPot">Largest pot that the mass limit and the pot life allow.</param>
/// <param name="BoundBy">What keeps the pots from being larger.</param>
/// <param name="Assumptions">Rules of thumb behind their life.</param>
public sealed record BatchSplit(int Pots, Mass LargestPot, BatchLimit BoundBy, PotLifeAssumptions Assumptions);
