using System.Collections.Immutable;
using Recipe.Model;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>
/// Everything that follows from a part: areas, pieces, masses, pots, clocks, bag, vacuum, cure, takeoff. What could not be
/// computed is null here and named among the <see cref="Gaps"/>; every default used is among the <see cref="Assumptions"/>.
/// Quantities are for one part (both halves together), except where a member says otherwise.
/// </summary>
public sealed record Plan
{
    /// <summary>The part.</summary>
    public required Part Part { get; init; }

    /// <summary>The shop, or null.</summary>
    public Shop? Shop { get; init; }

    /// <summary>Room, hands, height above sea level.</summary>
    public required ConditionsPlan Conditions { get; init; }

    /// <summary>The surface laid on, or null when there is none.</summary>
    public GeometryPlan? Geometry { get; init; }

    /// <summary>That surface as cloth meets it, or null for one that is flat, rolls out flat or is given by its area only.</summary>
    public ShapePlan? Shape { get; init; }

    /// <summary>Every line of the stack, mould side first.</summary>
    public ImmutableArray<StackPlan> Stack { get; init; } = [];

    /// <summary>The laminate as a whole, or null when a ply's mass is unknown.</summary>
    public LaminatePlan? Laminate { get; init; }

    /// <summary>The trimmed part, or the joined assembly, with the band it should lie in; null when a mass is unknown.</summary>
    public Computed<Banded<Mass>>? TrimmedMass => Laminate?.TrimmedMass ?? Join?.Whole;

    /// <summary>How stiff the full-cover stack is and what each line brings, or null when a constant is missing.</summary>
    public StiffnessPlan? Stiffness { get; init; }

    /// <summary>Resin from laminate to pot, or null when it cannot be computed.</summary>
    public ResinPlan? Resin { get; init; }

    /// <summary>The pots in the order they are mixed; empty when the resin is unknown.</summary>
    public ImmutableArray<PotPlan> Pots { get; init; } = [];

    /// <summary>What is mixed besides that, in pots of its own, in the order of its use: coats, adhesive, resin of a later seam.</summary>
    public ImmutableArray<OwnMixPlan> OwnMixes { get; init; } = [];

    /// <summary>First mix to full vacuum, or null for processes without that clock.</summary>
    public ClockPlan? Clock { get; init; }

    /// <summary>Sizes of the bag and its layers, or null without a bag.</summary>
    public BagPlan? Bag { get; init; }

    /// <summary>Vacuum levels, or null without vacuum.</summary>
    public VacuumLevels? Vacuum { get; init; }

    /// <summary>The lines through which the resin of an infusion comes, or null for another process.</summary>
    public FeedPlan? Feed { get; init; }

    /// <summary>How the resin of an infusion runs, or null for another process and where it cannot be worked out.</summary>
    public InfusionFlow? Flow { get; init; }

    /// <summary>The cure against the clock, or null without one.</summary>
    public CurePlan? Cure { get; init; }

    /// <summary>Tape, adhesive and filler of the join, or null without one.</summary>
    public JoinPlan? Join { get; init; }

    /// <summary>What to take from the shelf or buy, for <see cref="Part.Quantity"/> parts.</summary>
    public ImmutableArray<TakeoffLine> Takeoff { get; init; } = [];

    /// <summary>
    /// How the pieces of one part lie on their rolls, one entry for each roll, in the order in which the stack and then the bag meets them.
    /// </summary>
    public ImmutableArray<NestPlan> Nests { get; init; } = [];

    /// <summary>Material cost for all parts, in the shop's currency; null when a price is missing.</summary>
    public CostPlan? Cost { get; init; }

    /// <summary>Every default or unmeasured figure used, in order of key.</summary>
    public ImmutableArray<Assumption> Assumptions { get; init; } = [];

    /// <summary>
    /// Keys of the assumptions that nothing but the stiffness, the heat of a pot, the flow of an infusion and the progress of the cure rests
    /// on: models whose constants are for the desk.
    /// </summary>
    public ImmutableArray<string> ModelAssumptions { get; init; } = [];

    /// <summary>What could not be computed.</summary>
    public ImmutableArray<Gap> Gaps { get; init; } = [];
}
