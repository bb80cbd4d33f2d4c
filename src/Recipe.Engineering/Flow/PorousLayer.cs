using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A layer of a dry stack under the bag.</summary>
public sealed record PorousLayer
{
    /// <summary>A layer.</summary>
    /// <param name="thickness">Thickness under the bag; 1e-9 m to 1e5 m.</param>
    /// <param name="medium">What it is to the resin.</param>
    /// <exception cref="ArgumentOutOfRangeException">The thickness is out of range.</exception>
    public PorousLayer(Length thickness, PorousMedium medium)
    {
        ArgumentNullException.ThrowIfNull(medium);
        (Thickness, Medium) = (thickness, medium);
        Metres = FlowGuard.Distance(thickness, nameof(thickness));
    }

    /// <summary>Thickness under the bag.</summary>
    public Length Thickness { get; }

    /// <summary>What it is to the resin.</summary>
    public PorousMedium Medium { get; }

    internal double Metres { get; }
}
