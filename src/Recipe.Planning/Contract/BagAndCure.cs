using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>Sizes of the bag. Sizes are of one side, areas of all sides.</summary>
public sealed record BagPlan
{
    /// <summary>How many bags: one for each half, each with its port, gauge and hose; they share a catch pot.</summary>
    public int Bags { get; init; } = 1;

    /// <summary>The layers, the one next to the laminate first.</summary>
    public required ImmutableArray<BagLayerPlan> Layers { get; init; }

    /// <summary>Sealant tape, all sides.</summary>
    public required Computed<Length> SealantTape { get; init; }

    /// <summary>Line that the tape follows, all sides, without what its pleats take; of an envelope its slit and ends.</summary>
    public Computed<Length>? TapeLine { get; init; }

    /// <summary>Resin carried away by all layers; null when a pick-up is unknown.</summary>
    public Computed<Mass>? Pickup { get; init; }

    /// <summary>
    /// Resin that the layers could carry away. More than <see cref="Pickup"/> where the plies have no more to give: they are then as dry
    /// as a bag makes them.
    /// </summary>
    public Computed<Mass>? CouldTake { get; init; }
}

/// <summary>One layer of the bag, computed.</summary>
/// <param name="Layer">The layer.</param>
/// <param name="Length">Length of one sheet.</param>
/// <param name="Width">Width of one sheet.</param>
/// <param name="Sheets">How many sheets (all sides and repeats).</param>
/// <param name="Area">Area of all sheets.</param>
/// <param name="Pickup">Resin it carries away, all sheets; null when unknown.</param>
public sealed record BagLayerPlan(BagLayer Layer, Computed<Length> Length, Computed<Length> Width, int Sheets, Computed<Area> Area, Computed<Mass>? Pickup)
{
    /// <summary>Area of all sheets that lies on the laminate: what <c>resin-pickup</c> is spread over.</summary>
    public required Area WetArea { get; init; }

    /// <summary>Resin that it could carry away, all sheets; more than <see cref="Pickup"/> where the plies have no more to give.</summary>
    public Mass? CouldTake { get; init; }
}

/// <summary>Vacuum levels in both conventions.</summary>
public sealed record VacuumLevels
{
    /// <summary>Below ambient.</summary>
    public required Computed<Pressure> BelowAmbient { get; init; }

    /// <summary>Absolute.</summary>
    public required Computed<Pressure> Absolute { get; init; }

    /// <summary>The most there is below ambient at this height.</summary>
    public required Computed<Pressure> Ceiling { get; init; }

    /// <summary>Leak-check time.</summary>
    public Computed<Duration>? LeakCheck { get; init; }

    /// <summary>Accepted rise of absolute pressure in that time.</summary>
    public Computed<Pressure>? RiseAtMost { get; init; }

    /// <summary>How many times over a pump should carry off the leak that the check accepts: common practice.</summary>
    public const double EnoughMargin = 5;

    /// <summary>Time the shop's pump needs, through the hose, to draw the bag down to the level; null when pump or bag is not known, or it never gets there.</summary>
    public Computed<Duration>? PumpDown { get; init; }

    /// <summary>How much of that time is due to the hose; null with it.</summary>
    public Computed<Duration>? HoseSlows { get; init; }

    /// <summary>
    /// How many times over the pump carries off, at the level and through the hose, the leak that the check accepts; 5 is common practice. Null when pump,
    /// bag or check is not known.
    /// </summary>
    public Computed<double>? PumpMargin { get; init; }

    /// <summary>
    /// Free flow of the smallest pump that carries that leak off <see cref="EnoughMargin"/> times through this hose; null when no pump does, and when the
    /// margin is not known.
    /// </summary>
    public Computed<VolumeFlow>? PumpNeeded { get; init; }

    /// <summary>
    /// Share, 0 to 1, of what the pump would carry off at the level that its hose takes; null when pump or bag is not known or the pump does not reach the level.
    /// </summary>
    public Computed<double>? HoseTakes { get; init; }

    /// <summary>Air of the shop that leaks in at the rise that the check accepts; null when bag or check is not known.</summary>
    public Computed<VolumeFlow>? LeakOfAir { get; init; }

    /// <summary>Diameter of one round hole that leaks as much; null with it.</summary>
    public Computed<Length>? Hole { get; init; }
}

/// <summary>The cure against the clock.</summary>
public sealed record CurePlan
{
    /// <summary>
    /// The hours of the vacuum block and those of the cure are one time, said twice, as long as neither is shorter than this share of the other: whether
    /// the way to the level is counted. Common practice.
    /// </summary>
    public const double SameTime = 0.75;

    /// <summary>The steps.</summary>
    public required ImmutableArray<CureStepPlan> Steps { get; init; }

    /// <summary>The hottest it gets.</summary>
    public required Computed<Temperature> Peak { get; init; }

    /// <summary>Total time.</summary>
    public required Computed<Duration> Total { get; init; }

    /// <summary>
    /// When the vacuum comes off, from the start of the cure: at the first step that lets it go (vent, debag, demould, else the end of the cure), or
    /// when the hours of the vacuum block are over, where those are shorter by more than a quarter. Null where there is no bag.
    /// </summary>
    public Computed<Duration>? VacuumOff { get; init; }

    /// <summary>
    /// Heat limits of everything that is in the heat, weakest first, each with the hottest step it has to stand.
    /// </summary>
    public required ImmutableArray<HeatLimit> Limits { get; init; }

    /// <summary>How hot a thick laminate gets inside by its own heat; null for a thin one, and where it is not known.</summary>
    public Computed<Temperature>? Inside { get; init; }

    /// <summary>When that is, from the start of the cure; null with it.</summary>
    public Computed<Duration>? InsideAt { get; init; }

    /// <summary>What the resin makes of it; null where no cure model is known for the resin.</summary>
    public CureProgress? Progress { get; init; }
}

/// <summary>One step of the cure, computed.</summary>
/// <param name="Step">The step.</param>
/// <param name="From">Temperature at its start.</param>
/// <param name="To">Temperature at its end.</param>
/// <param name="Start">Start, from the start of the cure.</param>
/// <param name="End">End, from the start of the cure.</param>
/// <param name="Bagged">Whether the bag is still on.</param>
/// <param name="InMould">Whether the part is still in the mould.</param>
public sealed record CureStepPlan(CureStep Step, Temperature From, Temperature To, Computed<Duration> Start, Computed<Duration> End, bool Bagged, bool InMould);

/// <summary>Something in the heat and what it can stand.</summary>
/// <param name="Item">In words: "sealant tape general-sealant-tape".</param>
/// <param name="Material">The name of the material or mould.</param>
/// <param name="Limit">The hottest it can stand; null when not known.</param>
/// <param name="Hottest">The hottest it gets while it is there.</param>
/// <param name="HottestStep">Index of that step in the cure.</param>
/// <param name="Where">Where the recipe puts it.</param>
public sealed record HeatLimit(string Item, string Material, Computed<Temperature>? Limit, Temperature Hottest, int HottestStep, SourceSpan Where);
