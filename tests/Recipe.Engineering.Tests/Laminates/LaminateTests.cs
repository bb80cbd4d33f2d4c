using UnitsNet;
using static Recipe.Engineering.Tests.Stacks;

namespace Recipe.Engineering.Tests;

public class LaminateTests
{
    private const double PoundForce = 4.4482216152605;
    private const double Inch = 0.0254;

    // Kaw, Mechanics of Composite Materials, 2nd ed., Ex. 4.2: from memory, recomputed; agrees in every printed digit.
    [Fact]
    public void Unsymmetric_stack_agrees_with_the_textbook()
    {
        Laminate laminate = Of(Graphite, Mm(5), 0, 30, -45);
        Printed.Agrees("1.739e9 3.884e8 5.663e7 4.533e8 -1.141e8 4.525e8", laminate.InPlaneStiffness);
        Printed.Agrees("-3.129e6 9.855e5 -1.072e6 1.158e6 -1.072e6 9.855e5", laminate.Coupling);
        Printed.Agrees("3.343e4 6.461e3 -5.240e3 9.320e3 -5.596e3 7.663e3", laminate.BendingStiffness);
    }

    // Kaw, Ex. 4.3: from memory, recomputed; agrees in every printed digit. The first ply of the book's list is ours on the mould.
    [Fact]
    public void Strains_and_ply_stresses_agree_with_the_textbook()
    {
        Laminate laminate = Of(Graphite, Mm(5), 0, 30, -45);
        LaminateLoad load = new(Nx: NewtonPerMetre(1000), Ny: NewtonPerMetre(1000));
        LaminateStrain strain = LaminateResponse.UnderLoad(laminate, load);
        Printed.Agrees("3.123e-7 3.492e-6 -7.598e-7", strain.MidPlane);
        Printed.Agrees("2.971e-5 -3.285e-4 4.101e-4", strain.Curvature);

        string[] printed =
        [
            "3.351e4 6.188e4 -2.750e4", "4.464e4 5.359e4 -2.015e4", "5.577e4 4.531e4 -1.280e4",
            "6.930e4 7.391e4 3.381e4", "1.063e5 7.747e4 5.903e4", "1.434e5 8.102e4 8.426e4",
            "1.235e5 1.563e5 -1.187e5", "4.903e4 6.894e4 -3.888e4", "-2.547e4 -1.840e4 4.091e4",
        ];
        IReadOnlyList<LayerState> states = LaminateResponse.States(laminate, strain)!;
        Assert.Equal(printed.Length, states.Count);
        for (int i = 0; i < printed.Length; i++)
        {
            Printed.Agrees(printed[i], states[i].Stress);
            Assert.Equal((LayerFace)(i % 3), states[i].Face);
            Assert.Equal(i / 3, states[i].Ply);
            Digits.Close(-0.0075 + (0.005 * (i / 3)) + (0.0025 * (i % 3)), states[i].Height.Meters, 1e-9);
        }
    }

    // Mallick, Fiber-Reinforced Composites, 3rd ed., Ex. 3.7 and 3.13: printed figures from memory (the book rounds nu21, hence
    // one part in a thousand); those with more digits were recomputed from the same constants in double precision.
    [Fact]
    public void Angle_ply_agrees_with_the_second_textbook()
    {
        Laminate laminate = Of(AnglePly, Mm(6), 45, -45);
        Printed.Close("481.32 403.32 0 481.32 0 414.84", 1e-6 * laminate.InPlaneStiffness, 1e-3);
        Printed.Close("5775.84 4839.84 0 5775.84 0 4978.08", laminate.BendingStiffness, 1e-3);
        Digits.Close(1126.8e3, Math.Abs(laminate.Coupling.M16), 1e-3);

        Printed.Agrees("4.81252e8 4.03156e8 0 4.81252e8 0 4.14688e8", laminate.InPlaneStiffness);
        Printed.Agrees("0 0 -1.12659e6 0 -1.12659e6 0", laminate.Coupling);
    }

    [Fact]
    public void Angle_ply_twists_under_a_pull()
    {
        Laminate laminate = Of(AnglePly, Mm(6), 45, -45);
        LaminateStrain strain = LaminateResponse.UnderLoad(laminate, new LaminateLoad(Nx: NewtonPerMetre(100_000)));
        Printed.Agrees("0.0604841", strain.Curvature.XY);
        IReadOnlyList<LayerState> states = LaminateResponse.States(laminate, strain)!;
        Printed.Agrees("8.33333", states[1].Stress.X / 1e6);
        Printed.Agrees("8.33333", states[4].Stress.X / 1e6);
        Printed.Agrees("2.0902", states[1].Stress.XY / 1e6);
        Printed.Agrees("-2.0902", states[4].Stress.XY / 1e6);
    }

    [Fact]
    public void Symmetric_angle_ply_agrees_with_the_recomputed_figures()
    {
        Laminate laminate = Of(AnglePly, Mm(6), Symmetric(45, -45));
        Printed.Agrees("9.62505e8 8.06313e8 0 9.62505e8 0 8.29376e8", laminate.InPlaneStiffness);
        Printed.Agrees("46200.2 38703.0 27038.2 46200.2 27038.2 39810.1", laminate.BendingStiffness);
        LaminateConstants constants = laminate.StretchingConstants();
        Printed.Agrees("1.19599e10", constants.X.Pascals);
        Printed.Agrees("1.19599e10", constants.Y.Pascals);
        Printed.Agrees("3.45574e10", constants.Shear.Pascals);
        Printed.Agrees("0.837723", constants.PoissonXY);
    }

    // Tsai and Hahn (1980): E, G, nu of the quasi-isotropic laminate from memory; the digits beyond were recomputed.
    [Fact]
    public void Quasi_isotropic_laminate_is_alike_in_stretching_but_not_in_bending()
    {
        Laminate laminate = Of(Graphite, Mm(0.125), Symmetric(0, 45, -45, 90));
        LaminateConstants stretching = laminate.StretchingConstants();
        Printed.Agrees("69.68", stretching.X.Gigapascals);
        Printed.Agrees("26.88", stretching.Shear.Gigapascals);
        Printed.Agrees("0.30", stretching.PoissonXY);
        Printed.Agrees("6.96757e10", stretching.X.Pascals);
        Printed.Agrees("6.96757e10", stretching.Y.Pascals);
        Printed.Agrees("2.68804e10", stretching.Shear.Pascals);
        Printed.Agrees("0.296031", stretching.PoissonXY);
        Digits.Close(stretching.X.Pascals, laminate.StretchingConstants(Deg(29)).X.Pascals);

        LaminateConstants bending = laminate.BendingConstants();
        Printed.Agrees("1.16552e11", bending.X.Pascals);
        Printed.Agrees("2.69812e10", bending.Y.Pascals);
        Printed.Agrees("2.10648e10", bending.Shear.Pascals);
        Printed.Agrees("0.55503", bending.PoissonXY);
    }

    // The laminate of Kaw, Ex. 4.4 (inputs from memory); the figures were computed from them in double precision.
    [Fact]
    public void Cross_ply_has_other_constants_in_bending_than_in_stretching()
    {
        Laminate laminate = Of(Graphite, Mm(5), 0, 90, 90, 0);
        Printed.Agrees("1.92157e9 5.79385e7 0 1.92157e9 0 1.434e8", laminate.InPlaneStiffness);
        Printed.Agrees("106919 1931.28 0 21186.2 0 4780.0", laminate.BendingStiffness);
        LaminateConstants stretching = laminate.StretchingConstants();
        Printed.Agrees("9.59913e10", stretching.X.Pascals);
        Printed.Agrees("9.59913e10", stretching.Y.Pascals);
        Printed.Agrees("7.17e9", stretching.Shear.Pascals);
        Printed.Agrees("0.0301516", stretching.PoissonXY);
        LaminateConstants bending = laminate.BendingConstants();
        Printed.Agrees("1.60114e11", bending.X.Pascals);
        Printed.Agrees("3.1727e10", bending.Y.Pascals);
        Printed.Agrees("7.17e9", bending.Shear.Pascals);
        Printed.Agrees("0.0911576", bending.PoissonXY);
    }

    // Carbon/epoxy of Nettles, Basic Mechanics of Laminated Composite Plates, NASA RP-1351 (1994): inputs from memory, figures
    // computed from them in double precision, in pounds and inches.
    [Fact]
    public void Laminate_in_pounds_and_inches_agrees_with_the_computed_figures()
    {
        Lamina lamina = Lamina.Orthotropic(Psi(20.01e6), Psi(1.301e6), 0.3, Psi(1.001e6));
        Laminate laminate = Of(lamina, Length.FromInches(0.005), Symmetric(0, 45, -45, 90));
        Printed.Close("345492 98940.3 0 345492 0 123276", Inch / PoundForce * laminate.InPlaneStiffness, 1e-5);
        Printed.Agrees("76.3753 11.1111 4.70478 19.9179 4.70478 14.3559", 1 / (PoundForce * Inch) * laminate.BendingStiffness);
        LaminateConstants stretching = laminate.StretchingConstants();
        Printed.Agrees("7.92897e6", stretching.X.PoundsForcePerSquareInch);
        Printed.Agrees("3.08191e6", stretching.Shear.PoundsForcePerSquareInch);
        Printed.Agrees("0.286374", stretching.PoissonXY);
        Printed.Agrees("1.30969e7", laminate.BendingConstants().X.PoundsForcePerSquareInch);
    }

    [Fact]
    public void Strip_and_panel_stiffness_of_an_isotropic_plate_are_the_closed_forms()
    {
        // E t^3/12 for a strip, E t^3/(12 (1 - nu^2)) for a wide panel: plate theory, e.g. Timoshenko and Woinowsky-Krieger.
        Laminate plate = Of(Lamina.Isotropic(Gpa(70), 0.33), Mm(1), 0, 0, 0);
        double strip = 70e9 * Math.Pow(0.003, 3) / 12;
        Digits.Close(strip, plate.StripStiffness().NewtonMeters);
        Digits.Close(strip, plate.StripStiffness(Deg(57)).NewtonMeters);
        Digits.Close(strip / (1 - (0.33 * 0.33)), plate.PanelStiffness().NewtonMeters);
    }

    [Fact]
    public void Sandwich_strip_is_the_textbook_sum_of_faces_and_core()
    {
        // E_f t d^2/2 + E_f t^3/6 + E_c c^3/12 (Allen 1969, from memory); all Poisson's ratios nil, so that nothing else stiffens it.
        LaminatePly face = LaminatePly.Of(Lamina.Isotropic(Gpa(20), 0), Mm(0.6), Deg(0));
        LaminatePly core = Plies.Core(Lamina.Isotropic(Pressure.FromMegapascals(60), 0), Mm(8), Rho(80));
        double d = 0.0086;
        double expected = (20e9 * 0.0006 * d * d / 2) + (20e9 * Math.Pow(0.0006, 3) / 6) + (60e6 * Math.Pow(0.008, 3) / 12);
        Digits.Close(expected, new Laminate([face, core, face]).StripStiffness().NewtonMeters);
    }

    [Fact]
    public void A_bimetal_strip_bends_about_its_own_neutral_axis()
    {
        // Transformed section of strength of materials: sum E (t^3/12 + t (z - z0)^2).
        LaminatePly steel = LaminatePly.Of(Lamina.Isotropic(Gpa(200), 0), Mm(1), Deg(0));
        LaminatePly brass = LaminatePly.Of(Lamina.Isotropic(Gpa(100), 0), Mm(2), Deg(0));
        double neutral = ((200 * 1 * 0.5) + (100 * 2 * 2.0)) / (200 + 200);
        double expected = 1e9 * 1e-9 * ((200 * ((1 / 12.0) + Math.Pow(0.5 - neutral, 2))) + (100 * ((8 / 12.0) + (2 * Math.Pow(2 - neutral, 2)))));
        Digits.Close(expected, new Laminate([steel, brass]).StripStiffness().NewtonMeters);
    }

    private static Lamina AnglePly { get; } = Lamina.Orthotropic(Gpa(133.4), Gpa(8.78), 0.26, Gpa(3.254));

    private static Pressure Psi(double value) => Pressure.FromPoundsForcePerSquareInch(value);
}
