using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Stacks;

namespace Recipe.Engineering.Tests;

/// <summary>Exact identities of classical lamination theory, on random stacks: no source is needed.</summary>
public class LaminateIdentityTests
{
    private static readonly Gen<Lamina> Material =
        Gen.Select(Gen.Double[1, 400], Gen.Double[0.02, 1], Gen.Double[0, 0.9], Gen.Double[0.02, 1], (e1, across, nu, shear) =>
            Lamina.Orthotropic(Gpa(e1), Gpa(e1 * across), nu * Math.Min(0.45, 1 / Math.Sqrt(across)), Gpa(e1 * shear / 2)));

    private static readonly Gen<LaminatePly> Ply =
        Gen.Select(Material, Gen.Double[0.05, 3], Gen.Double[-180, 180], (lamina, mm, angle) => LaminatePly.Of(lamina, Mm(mm), Deg(angle)));

    private static readonly Gen<LaminatePly[]> AnyPlies = Ply.Array[1, 10];

    [Fact]
    public void The_six_by_six_inverse_is_the_inverse() => AnyPlies.Sample(plies =>
    {
        Laminate laminate = new(plies);
        double[,] stiffness = Six(laminate.InPlaneStiffness, Full(laminate.Coupling), laminate.BendingStiffness);
        CouplingMatrix b = laminate.CouplingCompliance;
        double[,] compliance = Six(laminate.InPlaneCompliance, b, laminate.BendingCompliance);
        for (int i = 0; i < 6; i++)
        {
            for (int j = 0; j < 6; j++)
            {
                double sum = 0;
                double size = 0;
                for (int k = 0; k < 6; k++)
                {
                    sum += stiffness[i, k] * compliance[k, j];
                    size += Math.Abs(stiffness[i, k] * compliance[k, j]);
                }

                Assert.True(Math.Abs(sum - (i == j ? 1 : 0)) <= 1e-9 * size, $"entry {i}, {j}: {sum}");
            }
        }
    });

    [Fact]
    public void A_symmetric_stack_does_not_couple() => AnyPlies.Sample(plies =>
    {
        Laminate laminate = new([.. plies, .. plies.Reverse()]);
        Assert.True(Printed.Largest(laminate.Coupling) <= 1e-12 * Printed.Largest(laminate.InPlaneStiffness) * laminate.Thickness.Meters);
    });

    [Fact]
    public void A_stack_turned_over_has_the_opposite_coupling() => AnyPlies.Sample(plies =>
    {
        Laminate one = new(plies);
        Laminate other = new([.. plies.Reverse()]);
        double scale = Printed.Largest(one.InPlaneStiffness) * one.Thickness.Meters;
        Assert.True(Printed.Largest(one.Coupling + other.Coupling) <= 1e-12 * scale);
        Printed.Same(one.InPlaneStiffness, other.InPlaneStiffness);
        Printed.Same(one.BendingStiffness, other.BendingStiffness);
    });

    [Fact]
    public void A_quarter_turn_swaps_the_moduli() => AnyPlies.Sample(plies =>
    {
        Laminate one = new(plies);
        Laminate turned = new([.. plies.Select(ply => Turned(ply, 90))]);
        Digits.Close(one.StretchingConstants().X.Pascals, turned.StretchingConstants().Y.Pascals);
        Digits.Close(one.StretchingConstants().Y.Pascals, turned.StretchingConstants().X.Pascals);
        Digits.Close(one.BendingConstants().X.Pascals, turned.BendingConstants().Y.Pascals);
        Digits.Close(one.StripStiffness(Deg(90)).NewtonMeters, turned.StripStiffness().NewtonMeters);
    });

    [Fact]
    public void Turning_the_stack_is_turning_the_axes_back() =>
        Gen.Select(AnyPlies, Gen.Double[-90, 90]).Sample((plies, angle) =>
        {
            Laminate turned = new([.. plies.Select(ply => Turned(ply, angle))]);
            Laminate one = new(plies);
            Digits.Close(one.StretchingConstants(Deg(-angle)).X.Pascals, turned.StretchingConstants().X.Pascals);
            Digits.Close(one.StripStiffness(Deg(-angle)).NewtonMeters, turned.StripStiffness().NewtonMeters);
            Digits.Close(one.PanelStiffness(Deg(-angle)).NewtonMeters, turned.PanelStiffness().NewtonMeters);

            // Traces that no turn changes.
            PlaneMatrix a = one.InPlaneStiffness;
            PlaneMatrix b = turned.InPlaneStiffness;
            double trace = a.M11 + a.M22 + (2 * a.M12);
            Digits.Close(trace, b.M11 + b.M22 + (2 * b.M12));
            Assert.True(Math.Abs(a.M66 - a.M12 - (b.M66 - b.M12)) <= 1e-9 * trace);
        });

    [Fact]
    public void A_balanced_symmetric_stack_does_not_shear_under_a_pull() =>
        Gen.Select(Material, Gen.Double[0.05, 3], Gen.Double[-90, 90].Array[1, 5]).Sample((lamina, mm, angles) =>
        {
            double[] balanced = [.. angles, .. angles.Select(angle => -angle)];
            PlaneMatrix a = Of(lamina, Mm(mm), Symmetric(balanced)).InPlaneStiffness;
            Assert.True(Math.Max(Math.Abs(a.M16), Math.Abs(a.M26)) <= 1e-12 * Printed.Largest(a));
        });

    [Fact]
    public void Plies_of_one_direction_are_one_thick_ply() =>
        Gen.Select(Material, Gen.Double[-180, 180], Gen.Int[1, 9]).Sample((lamina, angle, count) =>
        {
            Laminate laminate = Of(lamina, Mm(0.3), [.. Enumerable.Repeat(angle, count)]);
            PlaneMatrix stiffness = lamina.StiffnessAt(Deg(angle));
            double h = laminate.Thickness.Meters;
            Printed.Same(h * stiffness, laminate.InPlaneStiffness);
            Printed.Same(h * h * h / 12 * stiffness, laminate.BendingStiffness);
        });

    [Fact]
    public void Three_and_four_evenly_spread_directions_stretch_alike_in_any_order() =>
        Gen.Select(Material, Gen.Shuffle(new double[] { 0, 60, -60 }), Gen.Shuffle(new double[] { 0, 45, -45, 90 }))
            .Sample((lamina, three, four) =>
            {
                PlaneMatrix third = Of(lamina, Mm(0.4), three).InPlaneStiffness;
                PlaneMatrix quarter = Of(lamina, Mm(0.3), four).InPlaneStiffness;
                Printed.Same(third, quarter);
                Assert.True(Math.Abs(third.M11 - third.M22) <= 1e-9 * third.M11);
                Assert.True(Math.Abs(third.M66 - ((third.M11 - third.M12) / 2)) <= 1e-9 * third.M11);
            });

    [Fact]
    public void An_isotropic_stack_is_a_plate() =>
        Gen.Select(Gen.Double[0.01, 400], Gen.Double[-0.5, 0.49], Gen.Double[0.1, 3].Array[1, 6]).Sample((e, nu, thicknesses) =>
        {
            Lamina solid = Lamina.Isotropic(Gpa(e), nu);
            Laminate laminate = new([.. thicknesses.Select(mm => LaminatePly.Of(solid, Mm(mm), Deg(mm * 50)))]);
            double h = laminate.Thickness.Meters;
            Printed.Same(h * h / 12 * laminate.InPlaneStiffness, laminate.BendingStiffness);
            Digits.Close(e * 1e9, laminate.StretchingConstants().X.Pascals);
            Digits.Close(e * 1e9 * h * h * h / 12, laminate.StripStiffness(Deg(12)).NewtonMeters);
        });

    [Fact]
    public void Stresses_of_the_plies_add_up_to_the_load() =>
        Gen.Select(AnyPlies, Gen.Double[-1e5, 1e5].Array[6]).Sample((plies, f) =>
        {
            Laminate laminate = new(plies);
            LaminateLoad load = new(
                NewtonPerMetre(f[0]), NewtonPerMetre(f[1]), NewtonPerMetre(f[2]), Newton(f[3] / 1e3), Newton(f[4] / 1e3), Newton(f[5] / 1e3));
            IReadOnlyList<LayerState> states = LaminateResponse.States(laminate, LaminateResponse.UnderLoad(laminate, load))!;
            PlaneVector force = default;
            PlaneVector moment = default;
            double size = 0;
            for (int i = 0; i < states.Count; i += 3)
            {
                // Simpson's rule is exact: stress is linear in z, stress times z quadratic.
                (LayerState low, LayerState mid, LayerState high) = (states[i], states[i + 1], states[i + 2]);
                double sixth = (high.Height.Meters - low.Height.Meters) / 6;
                force += sixth * (low.Stress + (4 * mid.Stress) + high.Stress);
                moment += sixth * ((low.Height.Meters * low.Stress) + (4 * mid.Height.Meters * mid.Stress) + (high.Height.Meters * high.Stress));
                size += sixth * 6 * (Math.Abs(low.Stress.X) + Math.Abs(high.Stress.X) + Math.Abs(low.Stress.Y) + Math.Abs(high.Stress.Y)
                    + Math.Abs(low.Stress.XY) + Math.Abs(high.Stress.XY));
            }

            Assert.True(Largest(force - load.Forces) <= 1e-9 * size);
            Assert.True(Largest(moment - load.Moments) <= 1e-9 * size * laminate.Thickness.Meters);
        });

    [Fact]
    public void Own_axes_and_the_laminates_axes_hold_the_same_energy() => AnyPlies.Sample(plies =>
    {
        Laminate laminate = new(plies);
        LaminateStrain strain = LaminateResponse.UnderLoad(laminate, new LaminateLoad(Nx: NewtonPerMetre(1e4), Mxy: Newton(3)));
        foreach (LayerState state in LaminateResponse.States(laminate, strain)!)
        {
            Digits.Close(Dot(state.Strain, state.Stress), Dot(state.OwnStrain, state.OwnStress), 1e-8);
        }
    });

    private static TorquePerLength Newton(double value) => TorquePerLength.FromNewtonMetersPerMeter(value);

    private static double Dot(PlaneVector a, PlaneVector b) => (a.X * b.X) + (a.Y * b.Y) + (a.XY * b.XY);

    private static double Largest(PlaneVector v) => Math.Max(Math.Abs(v.X), Math.Max(Math.Abs(v.Y), Math.Abs(v.XY)));

    private static LaminatePly Turned(LaminatePly ply, double degrees)
    {
        Layer layer = ply.Layers[0];
        return LaminatePly.Of(layer.Lamina, layer.Thickness, Deg(layer.Angle.Degrees + degrees));
    }

    private static CouplingMatrix Full(PlaneMatrix m) => new(m.M11, m.M12, m.M16, m.M12, m.M22, m.M26, m.M16, m.M26, m.M66);

    private static double[,] Six(PlaneMatrix a, CouplingMatrix b, PlaneMatrix d) => new[,]
    {
        { a.M11, a.M12, a.M16, b.M11, b.M12, b.M16 },
        { a.M12, a.M22, a.M26, b.M21, b.M22, b.M26 },
        { a.M16, a.M26, a.M66, b.M61, b.M62, b.M66 },
        { b.M11, b.M21, b.M61, d.M11, d.M12, d.M16 },
        { b.M12, b.M22, b.M62, d.M12, d.M22, d.M26 },
        { b.M16, b.M26, b.M66, d.M16, d.M26, d.M66 },
    };
}
