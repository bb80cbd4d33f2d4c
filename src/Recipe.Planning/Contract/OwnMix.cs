using System.Collections.Immutable;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>What a liquid is mixed for that has pots of its own.</summary>
public enum OwnMixUse
{
    /// <summary>A coat on the mould, before the plies.</summary>
    Coat,

    /// <summary>Laminating resin for the seam of halves that are joined later.</summary>
    SeamResin,

    /// <summary>Adhesive or filler of a join.</summary>
    Adhesive,
}

/// <summary>
/// A liquid that is mixed on its own and not with the resin of the plies: a coat, an adhesive, the resin of a later seam. Quantities are
/// for one part, both halves together; its clock starts at the first mix of its own pots.
/// </summary>
public sealed record OwnMixPlan
{
    /// <summary>What it is for.</summary>
    public required OwnMixUse Use { get; init; }

    /// <summary>The liquid.</summary>
    public required ResinSystem System { get; init; }

    /// <summary>What is laid: a coat as far as the plies run, trim included; what lies in a seam.</summary>
    public required Computed<Mass> Laid { get; init; }

    /// <summary>What stays in brush and cup.</summary>
    public required Computed<Mass> Loss { get; init; }

    /// <summary>Spare on top.</summary>
    public required Computed<Mass> Spare { get; init; }

    /// <summary>What is to be mixed: the sum of the three.</summary>
    public required Computed<Mass> ToMix { get; init; }

    /// <summary>The pots in the order they are mixed. <see cref="PotPlan.For"/> is empty.</summary>
    public ImmutableArray<PotPlan> Pots { get; init; } = [];
}
