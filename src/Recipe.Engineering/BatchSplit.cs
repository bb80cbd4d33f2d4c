using UnitsNet;

namespace Recipe.Engineering;

/// <summary>The outcome of <see cref="Batches.Split"/>: either <see cref="BatchesFound"/> or <see cref="BatchesImpossible"/>.</summary>
public abstract record BatchSplit
{
    private protected BatchSplit(Mass largestPot) => LargestPot = largestPot;

    /// <summary>Largest pot that the mass limit and the pot life allow; zero when no pot can be used up in time.</summary>
    public Mass LargestPot { get; }
}

/// <summary>A split that works.</summary>
public sealed record BatchesFound : BatchSplit
{
    internal BatchesFound(
        IReadOnlyList<Batch> batches, Mass largestPot, BatchLimit boundBy, PotLifeAssumptions assumptions)
        : base(largestPot)
    {
        Batches = batches;
        BoundBy = boundBy;
        Assumptions = assumptions;
    }

    /// <summary>The pots in their order; their masses add up to the need.</summary>
    public IReadOnlyList<Batch> Batches { get; }

    /// <summary>What keeps the pots from being larger.</summary>
    public BatchLimit BoundBy { get; }

    /// <summary>Rules of thumb behind the pot lives.</summary>
    public PotLifeAssumptions Assumptions { get; }
}

/// <summary>No split works.</summary>
public sealed record BatchesImpossible : BatchSplit
{
    internal BatchesImpossible(BatchObstacle obstacle, Mass largestPot, int potsNeeded)
        : base(largestPot)
    {
        Obstacle = obstacle;
        PotsNeeded = potsNeeded;
    }

    /// <summary>What stands in the way.</summary>
    public BatchObstacle Obstacle { get; }

    /// <summary>Number of pots that the largest pot would lead to; 0 when no pot can be used up in time.</summary>
    public int PotsNeeded { get; }
}
