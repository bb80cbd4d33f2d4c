using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What a data sheet says of pot life: so long, at this temperature, in a pot of this mass.</summary>
public sealed record PotLifeReference
{
    /// <summary>Makes the reference point.</summary>
    /// <param name="life">Pot life; greater than zero.</param>
    /// <param name="at">Temperature it was measured at; from <see cref="PotLife.LowestTemperature"/> to <see cref="PotLife.HighestTemperature"/>.</param>
    /// <param name="batch">Mass of the pot it was measured in; greater than zero; 100 g is usual.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <remarks>ASTM D2471 requires the amount to be stated, because gel time and peak exotherm depend on it.</remarks>
    public PotLifeReference(Duration life, Temperature at, Mass batch)
    {
        Guard.Positive(life.Seconds, "s", nameof(life));
        PotLife.CheckTemperature(at, nameof(at));
        Guard.Positive(batch.Kilograms, "kg", nameof(batch));
        Life = life;
        At = at;
        Batch = batch;
    }

    /// <summary>Pot life at the reference conditions.</summary>
    public Duration Life { get; }

    /// <summary>Reference temperature.</summary>
    public Temperature At { get; }

    /// <summary>Reference mass of the mixed pot.</summary>
    public Mass Batch { get; }
}
