using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What a cure simulation starts from and takes into account.</summary>
public sealed record CureOptions
{
    /// <summary>Degree of cure at the start, 0 to 1; 0 when it is not given.</summary>
    public Ratio Start { get; init; } = Ratio.Zero;

    /// <summary>Glass transition over the degree of cure; null when it is not known, and then no question about it is answered.</summary>
    public DiBenedetto? GlassTransition { get; init; }

    /// <summary>Brake of the vitrified cure; null for none. It needs <see cref="GlassTransition"/>.</summary>
    public DiffusionBrake? Brake { get; init; }

    /// <summary>
    /// Whether the resin is taken not to cure at all while it is colder than the range of its model, as a hot-curing prepreg on its way
    /// up; otherwise such a temperature is refused.
    /// </summary>
    public bool IdleBelowRange { get; init; }
}
