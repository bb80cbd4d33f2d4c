using System.Collections.Immutable;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>What a liquid is for.</summary>
public enum ResinRole
{
    /// <summary>Wets the cloth.</summary>
    Laminating,

    /// <summary>Pigmented or clear coat on the mould, usually polyester.</summary>
    GelCoat,

    /// <summary>Coat on the mould, usually epoxy.</summary>
    SurfaceCoat,

    /// <summary>Joins parts.</summary>
    Adhesive,
}

/// <summary>How a resin cures.</summary>
public enum Chemistry
{
    /// <summary>Not said.</summary>
    Unknown,

    /// <summary>Resin and amine hardener.</summary>
    Epoxy,

    /// <summary>Styrenated, cured by peroxide.</summary>
    Polyester,

    /// <summary>Styrenated, cured by peroxide.</summary>
    Vinylester,

    /// <summary>Cured on heating.</summary>
    Phenolic,
}

/// <summary>A resin with the hardener chosen for it.</summary>
public sealed record ResinSystem : Material
{
    /// <summary>What it is for.</summary>
    public required ResinRole Role { get; init; }

    /// <summary>How it cures.</summary>
    public Chemistry Chemistry { get; init; }

    /// <summary>What makes it cure: amine, anhydride, peroxide, heat; or null.</summary>
    public string? CuresWith { get; init; }

    /// <summary>Whether wax rises to its surface; null when not said.</summary>
    public bool? Waxed { get; init; }

    /// <summary>Whether the accelerator is in it already; null when not said.</summary>
    public bool? PreAccelerated { get; init; }

    /// <summary>Name of the chosen hardener block, or null when the system has just one.</summary>
    public string? Hardener { get; init; }

    /// <summary>The hardener blocks there are, by name, each already applied to the system.</summary>
    public ImmutableArray<ResinSystem> Hardeners { get; init; } = [];

    /// <summary>Parts of resin to parts of hardener.</summary>
    public Figure<MixRatio>? Mix { get; init; }

    /// <summary>Density of the liquid resin.</summary>
    public Figure<Density>? ResinDensity { get; init; }

    /// <summary>Density of the liquid hardener.</summary>
    public Figure<Density>? HardenerDensity { get; init; }

    /// <summary>Density when cured.</summary>
    public Figure<Density>? CuredDensity { get; init; }

    /// <summary>Viscosity of the mix, just mixed.</summary>
    public Figure<DynamicViscosity>? Viscosity { get; init; }

    /// <summary>Temperature of that viscosity.</summary>
    public Figure<Temperature>? ViscosityAt { get; init; }

    /// <summary>How long a mixed pot of a stated mass can be used.</summary>
    public Figure<TimeAt>? PotLife { get; init; }

    /// <summary>How long a thin film on the part stays workable.</summary>
    public Figure<TimeAt>? FilmLife { get; init; }

    /// <summary>When a thin laminate gels.</summary>
    public Figure<TimeAt>? GelTime { get; init; }

    /// <summary>The coldest it still cures at.</summary>
    public Figure<Temperature>? MinimumTemperature { get; init; }

    /// <summary>When the part may leave the mould.</summary>
    public Figure<TimeAt>? Demould { get; init; }

    /// <summary>When it has its full strength.</summary>
    public Figure<TimeAt>? FullCure { get; init; }

    /// <summary>Recommended post-cure.</summary>
    public Figure<Soak>? PostCure { get; init; }

    /// <summary>Glass transition after a named cure.</summary>
    public Figure<GlassTransition>? GlassTransition { get; init; }

    /// <summary>The highest glass transition the system can reach.</summary>
    public Figure<Temperature>? GlassTransitionLimit { get; init; }

    /// <summary>The largest mass to mix at once in a cup.</summary>
    public Figure<Mass>? LargestPot { get; init; }

    /// <summary>Heat of reaction.</summary>
    public Figure<SpecificEnergy>? HeatOfReaction { get; init; }

    /// <summary>Modulus when cured.</summary>
    public Figure<Pressure>? Modulus { get; init; }

    /// <summary>Poisson's ratio when cured.</summary>
    public Figure<double>? Poisson { get; init; }

    /// <summary>Thermal expansion when cured.</summary>
    public Figure<CoefficientOfThermalExpansion>? Expansion { get; init; }

    /// <summary>Shrinkage by volume on curing, 0 to 1.</summary>
    public Figure<double>? Shrinkage { get; init; }

    /// <summary>Coat mass per area, wet (gel coats, surface coats).</summary>
    public Figure<AreaDensity>? Film { get; init; }

    /// <summary>Bond line thickness (adhesives).</summary>
    public Figure<Length>? BondLine { get; init; }

    /// <summary>What thickens it at the bench, in words; null when it comes ready or is used thin.</summary>
    public string? Filler { get; init; }

    /// <summary>Parts of that filler to 100 parts of resin, by weight; null when it is stirred in until the mix stands.</summary>
    public Figure<double>? FillerParts { get; init; }

    /// <summary>Cure kinetics as given: the model's name and its constants by word, in SI.</summary>
    public Kinetics? Kinetics { get; init; }
}

/// <summary>Constants of a cure model, kept by name until a model reads them.</summary>
/// <param name="Model">The model's word.</param>
/// <param name="Constants">Name and SI value.</param>
/// <param name="Where">Where they stand.</param>
/// <param name="Basis">Who says so.</param>
/// <param name="Source">Where they come from.</param>
public sealed record Kinetics(string Model, ImmutableSortedDictionary<string, double> Constants, SourceSpan Where, Basis Basis, string? Source);
