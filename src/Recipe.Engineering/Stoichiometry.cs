using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Epoxy and amine equivalents: how much hardener the chemistry asks for. Equivalent weights are in mass per mole of
/// reacting groups (g/eq) and greater than zero.
/// </summary>
/// <remarks>
/// Source: the definitions of epoxide equivalent weight (EEW) and amine hydrogen equivalent weight (AHEW) in any epoxy
/// handbook, as in Lee and Neville, Handbook of Epoxy Resins, 1967. The maker's ratio rules where there is one.
/// </remarks>
public static class Stoichiometry
{
    /// <summary>Epoxide equivalent of a blend: total mass over the moles of epoxide in it.</summary>
    /// <param name="parts">Ingredients; at least one has epoxide. Fillers count in the mass and add no epoxide.</param>
    /// <exception cref="ArgumentOutOfRangeException">A part or an equivalent is not greater than zero.</exception>
    /// <exception cref="ArgumentException">No ingredient carries epoxide.</exception>
    public static MolarMass EpoxideEquivalentOfBlend(IReadOnlyList<BlendPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        double mass = 0;
        double epoxide = 0;
        foreach (BlendPart part in parts)
        {
            double p = Guard.Positive(part.Parts, "parts", nameof(parts));
            mass += p;
            epoxide += part.EpoxideEquivalent is { } eew ? p / Equivalent(eew, nameof(parts)) : 0;
        }

        return epoxide > 0
            ? MolarMass.FromKilogramsPerMole(mass / epoxide)
            : throw new ArgumentException("No part of the blend carries epoxide.", nameof(parts));
    }

    /// <summary>Amine hydrogen equivalent: molar mass over the number of active hydrogens.</summary>
    /// <param name="amine">Molar mass of the amine.</param>
    /// <param name="activeHydrogens">Hydrogens on nitrogen in one molecule; at least 1.</param>
    /// <exception cref="ArgumentOutOfRangeException">An input is out of range.</exception>
    public static MolarMass AmineHydrogenEquivalent(MolarMass amine, int activeHydrogens) =>
        MolarMass.FromKilogramsPerMole(
            Equivalent(amine, nameof(amine)) / Guard.AtLeast(activeHydrogens, 1, nameof(activeHydrogens)));

    /// <summary>Parts of hardener for a hundred parts of resin by weight: <c>100 AHEW / EEW</c>.</summary>
    /// <param name="amineHydrogenEquivalent">AHEW of the hardener.</param>
    /// <param name="epoxideEquivalent">EEW of the resin side.</param>
    /// <exception cref="ArgumentOutOfRangeException">An equivalent is not greater than zero.</exception>
    public static double HardenerPerHundred(MolarMass amineHydrogenEquivalent, MolarMass epoxideEquivalent) =>
        100 * Equivalent(amineHydrogenEquivalent, nameof(amineHydrogenEquivalent))
            / Equivalent(epoxideEquivalent, nameof(epoxideEquivalent));

    /// <summary>The balanced mix as a ratio by weight, for a hundred parts of resin.</summary>
    /// <param name="amineHydrogenEquivalent">AHEW of the hardener.</param>
    /// <param name="epoxideEquivalent">EEW of the resin side.</param>
    /// <exception cref="ArgumentOutOfRangeException">An equivalent is not greater than zero.</exception>
    public static WeightRatio BalancedMix(MolarMass amineHydrogenEquivalent, MolarMass epoxideEquivalent) =>
        new(100, HardenerPerHundred(amineHydrogenEquivalent, epoxideEquivalent));

    private static double Equivalent(MolarMass mass, string parameter) =>
        Guard.Positive(mass.KilogramsPerMole, "kg/mol", parameter);
}
