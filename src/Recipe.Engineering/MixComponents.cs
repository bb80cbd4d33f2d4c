using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What goes into one pot, by weight.</summary>
/// <param name="Resin">Mass of resin, poured first.</param>
/// <param name="Hardener">Mass of hardener.</param>
public sealed record MixComponents(Mass Resin, Mass Hardener)
{
    /// <summary>Mass of the mix, which is also the reading to pour up to on one scale.</summary>
    public Mass Total => Resin + Hardener;
}
