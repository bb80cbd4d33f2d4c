using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Stacks;

namespace Recipe.Engineering.Tests;

/// <summary>Absurd figures are refused with a reason; nothing that is not a number ever comes out.</summary>
public class LaminateRefusalTests
{
    private static readonly FibreConstants EGlass = FibreConstants.Isotropic(Gpa(72), 0.22, Rho(2540));
    private static readonly ResinConstants Epoxy = new(Gpa(3.2), 0.35, Rho(1150));

    private static readonly Gen<double> Wild = Gen.OneOf(
        Gen.Double[-3, 16].Select(power => Math.Pow(10, power)), Gen.Double[-10, 10], Gen.Double, Gen.OneOf(new double[] { 0, 1, -1, 1e300, 1e-300 }.Select(Gen.Const).ToArray()));

    [Fact]
    public void Constants_out_of_range_are_refused()
    {
        Refused("along", () => Lamina.Orthotropic(Pressure.FromPascals(1e300), Gpa(10), 0.3, Gpa(5)));
        Refused("along", () => Lamina.Orthotropic(Gpa(0), Gpa(10), 0.3, Gpa(5)));
        Refused("across", () => Lamina.Orthotropic(Gpa(181), Gpa(-1), 0.3, Gpa(5)));
        Refused("shear", () => Lamina.Orthotropic(Gpa(181), Gpa(10), 0.3, Gpa(0)));
        Refused("poisson", () => Lamina.Orthotropic(Gpa(10), Gpa(10), 1, Gpa(5)));
        Refused("poisson", () => Lamina.Orthotropic(Gpa(10), Gpa(10), double.NaN, Gpa(5)));
        Refused("expansionAlong", () => Lamina.Orthotropic(Gpa(181), Gpa(10), 0.3, Gpa(5), PerKelvin(1)));
        Refused("poisson", () => Lamina.Isotropic(Gpa(3), 0.6));
    }

    [Fact]
    public void Plies_out_of_range_are_refused()
    {
        Refused("thickness", () => LaminatePly.Of(Graphite, Mm(0), Deg(0)));
        Refused("thickness", () => LaminatePly.Of(Graphite, Mm(1e300), Deg(0)));
        Refused("angle", () => LaminatePly.Of(Graphite, Mm(1), Deg(1e9)));
        Refused("mass", () => LaminatePly.Of(Graphite, Mm(1), Deg(0), Gsm(-1)));
        WetCloth cloth = new(Gsm(200), EGlass, Epoxy, Part(0.5));
        Refused("FibreVolumeFraction", () => Plies.Unidirectional(cloth with { FibreVolumeFraction = Part(0.95) }, Deg(0)), "fibreVolumeFraction");
        Refused("Cloth", () => Plies.RandomMat(cloth with { Cloth = Gsm(0) }));
        Refused("warpShare", () => Plies.Woven(cloth, Part(1), Deg(0)));
        Refused("directions", () => Plies.Stitched(cloth, [new(Deg(0), Part(0.5)), new(Deg(90), Part(0.4))]));
        Refused("density", () => Plies.Core(Glass, Mm(1), Rho(0)));
        Assert.Throws<ArgumentException>(() => new LaminatePly([]));
        Assert.Throws<ArgumentException>(() => new Laminate([]));
    }

    [Fact]
    public void Loads_and_limits_out_of_range_are_refused()
    {
        Laminate laminate = Of(Graphite, Mm(1), 0);
        Refused("Nx", () => LaminateResponse.UnderLoad(laminate, new LaminateLoad(Nx: NewtonPerMetre(1e300))));
        Refused("change", () => LaminateResponse.FromTemperature(laminate, Kelvin(1e6)));
        Refused("turn", () => laminate.StripStiffness(Deg(400)));
        LaminatePly none = LaminatePly.Of(Graphite, Mm(1), Deg(0), limits: new StrainLimits(StretchAlong: Part(0)));
        Refused("StretchAlong", () => FirstPly.Margin(new Laminate([none]), new LaminateLoad(Nx: NewtonPerMetre(1))));
    }

    [Fact]
    public void What_a_double_cannot_hold_is_refused()
    {
        Assert.Contains("singular", Assert.Throws<ArithmeticException>(() => new PlaneMatrix(1, 1, 0, 1, 0, 1).Inverse()).Message);

        // A film a kilometre from the reference plane: its own bending stiffness is lost in what the distance brings.
        StackSums far = default;
        far.Add(Graphite.ReducedStiffness, 1000, 1000.0001);
        Refused("plies", () => far.Invert("plies"));

        // The widest contrast that the ranges let in keeps its digits: ten metres of next to nothing on a millimetre of the stiffest.
        LaminatePly stiff = LaminatePly.Of(Lamina.Isotropic(Pressure.FromPascals(1e13), 0), Mm(1), Deg(0));
        LaminatePly soft = LaminatePly.Of(Lamina.Isotropic(Pressure.FromPascals(3), 0), Length.FromMeters(10), Deg(0));
        double expected = (1e13 * 1e-9 / 12) + (3 * 1000 / 12.0) + (30 * 5.0005 * 5.0005);
        Digits.Close(expected, new Laminate([stiff, soft]).StripStiffness().NewtonMeters, 1e-6);
    }

    [Fact]
    public void Whatever_goes_in_either_a_reason_or_a_number_comes_out()
    {
        // E1, E2, nu12, G12; E, nu; three thicknesses; two angles: a plausible stack in which up to three figures are wild.
        double[] plausible = [72e9, 9e9, 0.3, 4e9, 60e6, 0.3, 0.0005, 0.01, 0.0008, 30, -45];
        int numbers = 0;
        int reasons = 0;
        Gen.Select(Gen.Int[0, plausible.Length - 1].Array[0, 3], Wild.Array[3]).Sample(
            (places, wild) =>
            {
                double[] x = [.. plausible];
                for (int i = 0; i < places.Length; i++)
                {
                    x[places[i]] = wild[i];
                }

                Laminate laminate;
                try
                {
                    laminate = Stack(x);
                }
                catch (ArgumentOutOfRangeException refusal)
                {
                    Assert.NotEmpty(refusal.Message);
                    Interlocked.Increment(ref reasons);
                    return;
                }

                Interlocked.Increment(ref numbers);
                Assert.All(Printed.Entries(laminate.InPlaneCompliance), entry => Assert.True(double.IsFinite(entry)));
                Assert.All(Printed.Entries(laminate.BendingCompliance), entry => Assert.True(double.IsFinite(entry)));
                Assert.True(laminate.StripStiffness(Deg(10)).NewtonMeters > 0);
                Assert.True(laminate.StretchingConstants().X.Pascals > 0);
                Assert.True(laminate.PanelStiffness().NewtonMeters >= laminate.StripStiffness().NewtonMeters * (1 - 1e-6));
                Assert.All(Contributions.Of(laminate), ply => Assert.True(double.IsFinite(ply.Bending.NewtonMeters)));
            },
            iter: 20_000);
        Assert.True(numbers > 1000 && reasons > 1000, $"{numbers} numbers, {reasons} reasons");
    }

    private static Laminate Stack(double[] x)
    {
        Lamina first = Lamina.Orthotropic(Pressure.FromPascals(x[0]), Pressure.FromPascals(x[1]), x[2], Pressure.FromPascals(x[3]));
        Lamina second = Lamina.Isotropic(Pressure.FromPascals(x[4]), x[5]);
        return new([
            LaminatePly.Of(first, Length.FromMeters(x[6]), Deg(x[9])),
            LaminatePly.Of(second, Length.FromMeters(x[7]), Deg(0)),
            LaminatePly.Of(first, Length.FromMeters(x[8]), Deg(x[10])),
        ]);
    }

    private static void Refused(string parameter, Action act, string? other = null)
    {
        ArgumentOutOfRangeException refusal = Assert.Throws<ArgumentOutOfRangeException>(act);
        Assert.Contains(refusal.ParamName, new[] { parameter, other });
        Assert.Contains(refusal.ParamName!, refusal.Message);
    }

    private static void Refused<T>(string parameter, Func<T> act, string? other = null) => Refused(parameter, () => { act(); }, other);
}
