using UnitsNet;

namespace Recipe.Engineering;

/// <summary>How much a resin could warm itself if none of its heat got away.</summary>
public static class Exotherm
{
    /// <summary>
    /// Adiabatic rise: <c>m_r H (a2 - a1) / (m_r c_r + m_f c_f)</c>. Neat resin in a deep pot comes near it, a thin laminate on a mould
    /// stays far below.
    /// </summary>
    /// <param name="heatOfReaction">Heat of the whole cure per mass of resin; 0 to 5000 J/g.</param>
    /// <param name="resinSpecificHeat">Specific heat of the resin; 0.1 to 20 J/(g K).</param>
    /// <param name="from">Degree of cure before; 0 to 1.</param>
    /// <param name="to">Degree of cure after; not below the one before, at most 1.</param>
    /// <param name="fibreMassFraction">Mass of fibre in the laminate; 0 for neat resin, less than 1.</param>
    /// <param name="fibreSpecificHeat">Specific heat of the fibre; needed when there is fibre: glass 0.8, carbon 0.71 J/(g K) (from memory).</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    /// <exception cref="ArgumentException">There is fibre without its specific heat.</exception>
    /// <remarks>Source: the balance of heat, e.g. Loos and Springer, J. Compos. Mater. 17 (1983) 135.</remarks>
    public static TemperatureDelta AdiabaticRise(
        SpecificEnergy heatOfReaction,
        SpecificEntropy resinSpecificHeat,
        Ratio from,
        Ratio to,
        Ratio fibreMassFraction = default,
        SpecificEntropy? fibreSpecificHeat = null)
    {
        double heat = HeatGuard.Reaction(heatOfReaction, nameof(heatOfReaction));
        double resin = HeatGuard.SpecificHeat(resinSpecificHeat, nameof(resinSpecificHeat));
        double a1 = CureGuard.Degree(from, nameof(from));
        double a2 = Guard.Between(to.DecimalFractions, a1, 1, string.Empty, nameof(to));
        double fibre = Guard.FractionBelowOne(fibreMassFraction, nameof(fibreMassFraction));
        double capacity = (1 - fibre) * resin;
        if (fibre > 0)
        {
            capacity += fibre * HeatGuard.SpecificHeat(
                fibreSpecificHeat ?? throw new ArgumentException("Fibre needs its specific heat.", nameof(fibreSpecificHeat)),
                nameof(fibreSpecificHeat));
        }

        return TemperatureDelta.FromKelvins((1 - fibre) * heat * (a2 - a1) / capacity);
    }
}
