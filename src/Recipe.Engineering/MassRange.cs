using UnitsNet;

namespace Recipe.Engineering;

/// <summary>An expected mass with the band it should fall in.</summary>
/// <param name="Expected">Expected mass.</param>
/// <param name="Low">Lower end of the band.</param>
/// <param name="High">Upper end of the band.</param>
public sealed record MassRange(Mass Expected, Mass Low, Mass High)
{
    /// <summary>True when a weighed mass lies in the band, ends included.</summary>
    /// <param name="weighed">Mass on the scale.</param>
    public bool Contains(Mass weighed) => weighed >= Low && weighed <= High;
}
