using UnitsNet;

namespace Recipe.Planning;

/// <summary>
/// How the resin of an infusion runs: Darcy's law with a sharp front through ply stack and flow medium, all layers filling together, and
/// a resin that doubles its viscosity in its pot life. The medium is filled so much further than the part as its front runs ahead of
/// the one on the mould. Permeability scatters between laboratories by a factor: measure the next fill against the band, and write it down.
/// </summary>
public sealed record InfusionFlow
{
    /// <summary>The way that is filled.</summary>
    public required Computed<Length> Path { get; init; }

    /// <summary>Whether the resin comes from a line across the part; else it spreads from one point.</summary>
    public required bool FromALine { get; init; }

    /// <summary>Pressure that drives it: the air outside less what is left in the bag.</summary>
    public required Computed<Pressure> Drive { get; init; }

    /// <summary>Permeability of stack and flow medium as one.</summary>
    public required Computed<Area> Permeability { get; init; }

    /// <summary>Share of their volume that resin fills, 0 to 1.</summary>
    public required Computed<double> Porosity { get; init; }

    /// <summary>Viscosity as the feed opens.</summary>
    public required Computed<DynamicViscosity> Viscosity { get; init; }

    /// <summary>Time from the opened feed until the resin is there; null when it never gets there.</summary>
    public Computed<Duration>? Fill { get; init; }

    /// <summary>The same at the quick end of the band; null when not even then.</summary>
    public Computed<Duration>? FillAtBest { get; init; }

    /// <summary>The same at the slow end of the band; null when it never gets there then.</summary>
    public Computed<Duration>? FillAtWorst { get; init; }

    /// <summary>How far it comes before its viscosity has doubled; no further than the path.</summary>
    public required Computed<Length> Reach { get; init; }

    /// <summary>Time from the opened feed until the viscosity has doubled.</summary>
    public required Computed<Duration> Thickens { get; init; }

    /// <summary>Time from the opened feed until it gels; null when no gel time is known.</summary>
    public Computed<Duration>? Gel { get; init; }

    /// <summary>The longest way from a feed line that is wet before the viscosity has doubled.</summary>
    public required Computed<Length> LongestPath { get; init; }
}
