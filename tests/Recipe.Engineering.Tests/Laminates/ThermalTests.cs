using CsCheck;
using static Recipe.Engineering.Tests.Stacks;

namespace Recipe.Engineering.Tests;

public class ThermalTests
{
    // Kaw, Mechanics of Composite Materials, 2nd ed., the [0/90] example of ch. 4 (5 mm plies, cooled by 75 K): from memory.
    [Fact]
    public void Unsymmetric_cross_ply_curls_as_in_the_textbook()
    {
        Laminate laminate = Of(Graphite, Mm(5), 0, 90);
        (PlaneVector forces, PlaneVector moments) = LaminateResponse.ThermalLoad(laminate, Kelvin(-75))!.Value;
        Digits.Close(-1.131e5, forces.X, 1e-3);
        Digits.Close(-1.131e5, forces.Y, 1e-3);
        Digits.Close(-1.538e2, moments.X, 1e-3);
        Digits.Close(1.538e2, moments.Y, 1e-3);

        LaminateStrain strain = LaminateResponse.FromTemperature(laminate, Kelvin(-75))!.Value;
        Digits.Close(-3.907e-4, strain.MidPlane.X, 1e-3);
        Digits.Close(-3.907e-4, strain.MidPlane.Y, 1e-3);
        Digits.Close(-1.276e-1, strain.Curvature.X, 1e-3);
        Digits.Close(1.276e-1, strain.Curvature.Y, 1e-3);
    }

    // Timoshenko, Analysis of Bi-Metal Thermostats, J. Opt. Soc. Am. 11 (1925) 233 (from memory): the curvature of two strips,
    // m = t1/t2, n = E1/E2. With like Poisson's ratios it holds in both directions of a plate.
    [Fact]
    public void Two_unlike_solids_curl_as_a_thermostat() =>
        Gen.Select(Gen.Double[0.1, 3], Gen.Double[0.1, 3], Gen.Double[2, 200], Gen.Double[2, 200], Gen.Double[0, 0.45]).Sample(
            (first, second, softer, stiffer, nu) =>
            {
                LaminatePly mould = LaminatePly.Of(Lamina.Isotropic(Gpa(softer), nu, PerKelvin(4e-6)), Mm(first), Deg(0));
                LaminatePly bag = LaminatePly.Of(Lamina.Isotropic(Gpa(stiffer), nu, PerKelvin(24e-6)), Mm(second), Deg(0));
                double m = first / second;
                double n = softer / stiffer;
                double h = (first + second) / 1000;
                double expected = 6 * 20e-6 * 60 * (1 + m) * (1 + m) / (h * ((3 * (1 + m) * (1 + m)) + ((1 + (m * n)) * ((m * m) + (1 / (m * n))))));
                PlaneVector curvature = LaminateResponse.FromTemperature(new Laminate([mould, bag]), Kelvin(60))!.Value.Curvature;

                // The bag side grows more, so it is stretched: positive.
                Digits.Close(expected, curvature.X);
                Digits.Close(expected, curvature.Y);
            });

    [Fact]
    public void A_single_ply_grows_freely_and_without_stress()
    {
        Laminate laminate = Of(Graphite, Mm(1), 0);
        LaminateStrain strain = LaminateResponse.FromTemperature(laminate, Kelvin(100))!.Value;
        Digits.Close(0.02e-4, strain.MidPlane.X);
        Digits.Close(22.5e-4, strain.MidPlane.Y);
        foreach (LayerState state in LaminateResponse.States(laminate, strain, Kelvin(100))!)
        {
            Assert.True(Math.Abs(state.Stress.X) + Math.Abs(state.Stress.Y) < 1e-3);
        }
    }

    [Fact]
    public void Residual_stresses_hold_each_other() =>
        Gen.Select(Gen.Double[-90, 90].Array[2, 6], Gen.Double[-150, 150]).Sample((angles, kelvins) =>
        {
            Laminate laminate = Of(Graphite, Mm(0.3), angles);
            LaminateStrain strain = LaminateResponse.FromTemperature(laminate, Kelvin(kelvins))!.Value;
            PlaneVector force = default;
            PlaneVector moment = default;
            foreach (LayerState state in LaminateResponse.States(laminate, strain, Kelvin(kelvins))!)
            {
                // Simpson's weights: one, four, one sixth.
                double weight = 0.0003 / 6 * (state.Face == LayerFace.Middle ? 4 : 1);
                force += weight * state.Stress;
                moment += weight * state.Height.Meters * state.Stress;
            }

            double scale = 181e9 * 22.5e-6 * 150 * laminate.Thickness.Meters;
            Assert.True(Math.Abs(force.X) + Math.Abs(force.Y) + Math.Abs(force.XY) < 1e-9 * scale);
            Assert.True(Math.Abs(moment.X) + Math.Abs(moment.Y) + Math.Abs(moment.XY) < 1e-9 * scale * laminate.Thickness.Meters);
        });

    [Fact]
    public void A_random_mat_grows_as_evenly_spread_plies()
    {
        LaminateStrain spread = LaminateResponse.FromTemperature(Of(Graphite, Mm(0.2), Symmetric(0, 60, -60)), Kelvin(10))!.Value;
        double mat = Micromechanics.RandomInPlane(Graphite).ExpansionAlong!.Value.PerKelvin;
        Digits.Close(10 * mat, spread.MidPlane.X);
        Digits.Close(10 * mat, spread.MidPlane.Y);
    }

    [Fact]
    public void Without_a_figure_there_is_no_answer()
    {
        Laminate laminate = new([LaminatePly.Of(Graphite, Mm(1), Deg(0)), LaminatePly.Of(Glass, Mm(1), Deg(0))]);
        Assert.Equal([1], LaminateResponse.PliesWithoutExpansion(laminate));
        Assert.Null(LaminateResponse.FromTemperature(laminate, Kelvin(10)));
        Assert.Null(LaminateResponse.ThermalLoad(laminate, Kelvin(10)));
        Assert.Null(LaminateResponse.States(laminate, default, Kelvin(10)));
        Assert.NotNull(LaminateResponse.States(laminate, default));
        Assert.Empty(LaminateResponse.PliesWithoutExpansion(Of(Graphite, Mm(1), 0)));
    }
}
