using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// Cure of a hot-curing aerospace prepreg epoxy, in two pieces: up to degree 0.3 <c>(K1 + K2 a)(1 - a)(0.47 - a)</c>, beyond
/// <c>K3 (1 - a)</c>. The rate jumps at 0.3.
/// </summary>
/// <remarks>
/// Source: Lee, Loos and Springer, J. Compos. Mater. 16 (1982) 510; Loos and Springer, ibid. 17 (1983) 135. Constants from memory:
/// A 2.101e9, -2.014e9 and 1.960e5 1/min, activation energies 80.7, 77.8 and 56.6 kJ/mol.
/// The range, 90 to 200 degC, is ours: hot cures run at 120 to 177 degC, and K1 and K2 nearly cancel in the cold, so that below 4 degC
/// the first piece even runs backwards before 0.3. A resin for room temperature needs another model.
/// </remarks>
public sealed class LeeLoosSpringer : CureKinetics
{
    private const double Switch = 0.3;
    private const double End = 0.47;
    private const double Minute = 60;

    private static readonly double[] SwitchDegrees = [Switch];

    /// <summary>The model with its published constants.</summary>
    public LeeLoosSpringer()
        : base(90, 200)
    {
    }

    /// <summary>Heat that the whole cure gives off, 473.6 J per gram of resin (same source, from memory).</summary>
    public static SpecificEnergy HeatOfReaction { get; } = SpecificEnergy.FromJoulesPerKilogram(473_600);

    internal override IReadOnlyList<double> JumpDegrees => SwitchDegrees;

    internal override double Rate(double degree, double kelvin, int stretch)
    {
        double a = Math.Clamp(degree, 0, 1);
        double thermal = CureGuard.GasConstant * kelvin;
        if (stretch > 0)
        {
            return 1.960e5 / Minute * Math.Exp(-56_600 / thermal) * (1 - a);
        }

        double k1 = 2.101e9 / Minute * Math.Exp(-80_700 / thermal);
        double k2 = -2.014e9 / Minute * Math.Exp(-77_800 / thermal);
        return Math.Max(0, k1 + (k2 * a)) * (1 - a) * Math.Max(0, End - a);
    }
}
