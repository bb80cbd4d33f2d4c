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
        StackSums[] upTo = UpTo(laminate);
        StackSums[] from = From(laminate);
        (double stretching, double bending) = Stiffness(from[0], direction);
        double mass = laminate.Mass.KilogramsPerSquareMeter;
        PlyContribution[] contributions = new PlyContribution[laminate.Plies.Count];
        for (int i = 0; i < contributions.Length; i++)
        {
            LaminatePly ply = laminate.Plies[i];
            (double rest, double spaced) = Stiffness(upTo[i] + from[i + 1], direction);
            (_, double without) = Stiffness(upTo[i] + from[i + 1].Lowered(ply.Metres), direction);
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

    // The sums over all plies below a ply, so that leaving one out costs as much as one ply and not as all of them.
    private static StackSums[] UpTo(Laminate laminate)
    {
        StackSums[] sums = new StackSums[laminate.Plies.Count + 1];
        double z = -laminate.Metres / 2;
        for (int p = 0; p < laminate.Plies.Count; p++)
        {
            sums[p + 1] = sums[p];
            z = Add(ref sums[p + 1], laminate.Plies[p], z);
        }

        return sums;
    }

    // The sums over a ply and all above it.
    private static StackSums[] From(Laminate laminate)
    {
        StackSums[] sums = new StackSums[laminate.Plies.Count + 1];
        double z = laminate.Metres / 2;
        for (int p = laminate.Plies.Count - 1; p >= 0; p--)
        {
            z -= laminate.Plies[p].Metres;
            StackSums own = default;
            Add(ref own, laminate.Plies[p], z);
            sums[p] = own + sums[p + 1];
        }

        return sums;
    }

    private static double Add(ref StackSums sums, LaminatePly ply, double z)
    {
        for (int i = 0; i < ply.Layers.Count; i++)
        {
            Layer layer = ply.Layers[i];
            sums.Add(layer.Stiffness, z, z + layer.Metres);
            z += layer.Metres;
        }

        return z;
    }

    private static (double Stretching, double Bending) Stiffness(in StackSums sums, Angle direction)
    {
        if (sums.IsEmpty)
        {
            return (0, 0);
        }

        StackInverse inverse = sums.Invert("laminate");
        return (
            1 / inverse.InverseA.ComplianceInAxesTurnedBy(direction).M11,
            1 / inverse.Bending.ComplianceInAxesTurnedBy(direction).M11);
    }
}
