using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// The clock that decides the day: from the start of the first mix to full vacuum. The first ply's resin waits through all of it.
/// </summary>
/// <param name="Mixing">Mixing of all pots.</param>
/// <param name="WetOut">Placing and wetting out all plies.</param>
/// <param name="Bagging">Placing the bagging layers and closing the bag.</param>
/// <param name="LeakHunt">Finding leaks.</param>
/// <param name="PumpDown">Drawing the bag down to its level.</param>
public sealed record MixToVacuumClock(
    Duration Mixing, Duration WetOut, Duration Bagging, Duration LeakHunt, Duration PumpDown)
{
    /// <summary>All of it, one thing after another.</summary>
    public Duration Total => Mixing + WetOut + Bagging + LeakHunt + PumpDown;

    /// <summary>Time left when the bag is at full vacuum; negative when the resin goes off before that.</summary>
    /// <param name="available">The film life, or the pot life where a strict rule asks for it.</param>
    public Duration MarginWithin(Duration available) => available - Total;
}
