using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Several layers as one medium.</summary>
public static class PorousStack
{
    /// <summary>
    /// The stack as one medium for flow along it: permeability <c>sum(h K)/sum(h)</c>, porosity <c>sum(h phi)/sum(h)</c>.
    /// </summary>
    /// <param name="layers">The layers, in any order; at least one.</param>
    /// <exception cref="ArgumentException">There is no layer.</exception>
    /// <remarks>
    /// Source: Darcy's law for layers side by side under one pressure (textbook form). Resin is taken to pass freely from layer to
    /// layer, so all fronts go together: a fill time from it is the least that is possible. <see cref="LeadLag"/> tells
    /// how far the front in a flow medium really runs ahead.
    /// </remarks>
    public static PorousMedium Layered(IReadOnlyList<PorousLayer> layers)
    {
        ArgumentNullException.ThrowIfNull(layers);
        if (layers.Count == 0)
        {
            throw new ArgumentException("A stack without layers carries no resin.", nameof(layers));
        }

        (double thickness, double permeability, double pores) = (0, 0, 0);
        foreach (PorousLayer layer in layers)
        {
            thickness += layer.Metres;
            permeability += layer.Metres * layer.Medium.SquareMetres;
            pores += layer.Metres * layer.Medium.Pores;
        }

        return new PorousMedium(
            Area.FromSquareMeters(permeability / thickness), Ratio.FromDecimalFractions(Math.Min(1, pores / thickness)));
    }
}
