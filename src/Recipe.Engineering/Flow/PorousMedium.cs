using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What a dry fabric, a flow medium or a stack of both is to the resin that runs through it.</summary>
/// <remarks>
/// Permeabilities scatter: two laboratories may differ by a fifth, and by ten times where they did not agree on the method
/// (international benchmarks of 2011 and 2014, from memory). Measure your own stack under the bag before you trust a fill time.
/// </remarks>
public sealed record PorousMedium
{
    /// <summary>A medium.</summary>
    /// <param name="permeability">Permeability in the direction of the flow; 1e-20 to 1e-3 m2. A squeezed woven glass cloth has about 1e-10 m2 (from memory).</param>
    /// <param name="porosity">Share of the volume that resin fills, 1 less the fibre volume fraction; more than 0, at most 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public PorousMedium(Area permeability, Ratio porosity)
    {
        (Permeability, Porosity) = (permeability, porosity);
        SquareMetres = FlowGuard.Permeability(permeability, nameof(permeability));
        Pores = Guard.Between(porosity.DecimalFractions, 1e-6, 1, string.Empty, nameof(porosity));
    }

    /// <summary>Permeability in the direction of the flow.</summary>
    public Area Permeability { get; }

    /// <summary>Share of the volume that resin fills.</summary>
    public Ratio Porosity { get; }

    internal double SquareMetres { get; }

    internal double Pores { get; }

    /// <summary>A medium from its fibre content.</summary>
    /// <param name="permeability">Permeability in the direction of the flow; 1e-20 to 1e-3 m2.</param>
    /// <param name="fibreVolumeFraction">Share of fibre by volume; at least 0, less than 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure is out of range.</exception>
    public static PorousMedium OfFibre(Area permeability, Ratio fibreVolumeFraction) =>
        new(permeability, Ratio.FromDecimalFractions(1 - Guard.FractionBelowOne(fibreVolumeFraction, nameof(fibreVolumeFraction))));
}
