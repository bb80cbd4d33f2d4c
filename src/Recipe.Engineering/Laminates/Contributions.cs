using UnitsNet;

namespace Recipe.Engineering;

/// <summary>What each ply of a laminate is good for: its grams against the stiffness that goes with it.</summary>
/// <remarks>
/// Each ply is taken out alone, so the losses of several do not add up to the loss of all. Source: <see cref="Laminate"/>, worked
/// three times: whole, with the ply's stiffness gone and its thickness kept, and without it.
/// </remarks>
public static class Contributions
{
    /// <summary>Every ply's contribution, from the mould outwards.</summary>
    /// <param name="laminate">The laminate.</param>
    /// <param name="direction">Direction in which stiffness is compared, counter-clockwise from x; at most 360 degrees either way.</param>
    /// <exception cref="ArgumentOutOfRangeException">The angle is out of range, or what is left without a ply is too unlike to be worked in doubles.</exception>
    public static IReadOnlyList<PlyContribution> Of(Laminate laminate, Angle direction = default)
    {
        ArgumentNullException.ThrowIfNull(laminate);
        (double stretching, double bending) = Stiffness(laminate, -1, closeUp: false, direction);
        double mass = laminate.Mass.KilogramsPerSquareMeter;
        PlyContribution[] contributions = new PlyContribution[laminate.Plies.Count];
        for (int i = 0; i < contributions.Length; i++)
        {
            LaminatePly ply = laminate.Plies[i];
            (double rest, double spaced) = Stiffness(laminate, i, closeUp: false, direction);
            (_, double without) = Stiffness(laminate, i, closeUp: true, direction);
            contributions[i] = new PlyContribution(
                i,
                ply.Mass,
                Ratio.FromDecimalFractions(mass > 0 ? ply.Mass.KilogramsPerSquareMeter / mass : 0),
                ply.Thickness,
                Ratio.FromDecimalFractions(ply.Metres / laminate.Metres),
                ForcePerLength.FromNewtonsPerMeter(stretching - rest),
                Ratio.FromDecimalFractions((stretching - rest) / stretching),
                Torque.FromNewtonMeters(bending - without),
                Ratio.FromDecimalFractions((bending - without) / bending),
                Torque.FromNewtonMeters(bending - spaced),
                Torque.FromNewtonMeters(spaced - without));
        }

        return contributions;
    }

    private static (double Stretching, double Bending) Stiffness(Laminate laminate, int skipped, bool closeUp, Angle direction)
    {
        StackSums sums = default;
        double z = -laminate.Metres / 2;
        for (int p = 0; p < laminate.Plies.Count; p++)
        {
            LaminatePly ply = laminate.Plies[p];
            if (p == skipped)
            {
                z += closeUp ? 0 : ply.Metres;
                continue;
            }

            for (int i = 0; i < ply.Layers.Count; i++)
            {
                Layer layer = ply.Layers[i];
                sums.Add(layer.Stiffness, z, z + layer.Metres);
                z += layer.Metres;
            }
        }

        if (sums.IsEmpty)
        {
            return (0, 0);
        }

        StackInverse inverse = sums.Invert(nameof(laminate));
        return (
            1 / inverse.InverseA.ComplianceInAxesTurnedBy(direction).M11,
            1 / inverse.Bending.ComplianceInAxesTurnedBy(direction).M11);
    }
}
