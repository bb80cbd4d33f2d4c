using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What <see cref="Batches.Split"/> needs to know.</summary>
public sealed record BatchRequest
{
    /// <summary>All resin to mix; greater than zero.</summary>
    public required Mass Total { get; init; }

    /// <summary>Largest mass that may be mixed in one pot; greater than zero.</summary>
    public required Mass PotLimit { get; init; }

    /// <summary>Time in which all of <see cref="Total"/> is laid, mixing left out; zero or more. A pot takes its share by mass.</summary>
    public required Duration LayingTime { get; init; }

    /// <summary>What the data sheet says of pot life.</summary>
    public required PotLifeReference PotLife { get; init; }

    /// <summary>Temperature of resin and shop today; 0 to 60 degC.</summary>
    public required Temperature Temperature { get; init; }

    /// <summary>Share of the pot life that may be used; more than 0 and at most 1.</summary>
    public required Ratio FractionOfLife { get; init; }

    /// <summary>
    /// Time from the first contact of the components to the first brushful; zero or more. It counts against the pot's life.
    /// Default none, which starts the life at the end of mixing.
    /// </summary>
    public Duration MixingTime { get; init; } = Duration.Zero;

    /// <summary>Vessel of the pots.</summary>
    public PotShape Shape { get; init; } = PotShape.DeepCup;

    /// <summary>More pots than this are no plan; at least 1.</summary>
    public required int MostPots { get; init; }
}
