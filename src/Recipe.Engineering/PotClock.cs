using UnitsNet;

namespace Recipe.Engineering;

/// <summary>The clock of one pot, from the start of its mixing to its last brushful.</summary>
/// <param name="Mixing">Time that its mixing takes.</param>
/// <param name="Laying">Time in which it is laid.</param>
/// <param name="Life">Its pot life at today's temperature and its mass.</param>
public sealed record PotClock(Duration Mixing, Duration Laying, Duration Life)
{
    /// <summary>Time in use.</summary>
    public Duration Used => Mixing + Laying;

    /// <summary>Life left when it is used up; negative when it goes off before that.</summary>
    public Duration Margin => Life - Used;

    /// <summary>Share of the life that is used; above 100 % when it goes off before it is used up.</summary>
    public Ratio ShareUsed => Ratio.FromDecimalFractions(Used.Seconds / Life.Seconds);
}
