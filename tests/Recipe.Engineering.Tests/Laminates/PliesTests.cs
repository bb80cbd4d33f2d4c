using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Stacks;

namespace Recipe.Engineering.Tests;

public class PliesTests
{
    private static readonly FibreConstants EGlass = FibreConstants.Isotropic(Gpa(72), 0.22, Rho(2540), PerKelvin(5e-6));
    private static readonly ResinConstants Epoxy = new(Gpa(3.2), 0.35, Rho(1150), PerKelvin(60e-6));

    // Cross-ply pair for a cloth (common practice) with the glass/epoxy of Kaw, table 2.1 (from memory); figures computed from it.
    // The same cloth is looked at in its warp direction and at 45 degrees.
    [Theory]
    [InlineData(0, "2.35792e10", "4.14e9", "0.0917517")]
    [InlineData(45, "1.25556e10", "1.07988e10", "0.516372")]
    public void Two_balanced_cloths_agree_with_the_cross_ply_figures(double degrees, string e, string g, string nu)
    {
        LaminatePly cloth = Plies.Woven(Glass, Mm(0.25), Part(0.5), Deg(degrees));
        foreach (Laminate laminate in new[] { new Laminate([cloth, cloth]), CrossPly(degrees) })
        {
            LaminateConstants constants = laminate.StretchingConstants();
            Printed.Agrees(e, constants.X.Pascals);
            Printed.Agrees(e, constants.Y.Pascals);
            Printed.Agrees(g, constants.Shear.Pascals);
            Printed.Agrees(nu, constants.PoissonXY);
        }
    }

    // MIL-HDBK-17-2F lists 3.83 Msi (26.4 GPa) for the 7781 satin glass/epoxy at 50 % fibre volume, as secondary texts quote it.
    [Fact]
    public void Computed_glass_cloth_is_plausible_beside_the_handbook()
    {
        LaminatePly cloth = Plies.Woven(new WetCloth(Gsm(300), EGlass, Epoxy, Part(0.5)), Part(0.5), Deg(0));
        Digits.Close(26.4, new Laminate([cloth]).StretchingConstants().X.Gigapascals, 0.15);
    }

    [Fact]
    public void A_woven_ply_bends_as_it_stretches_and_does_not_couple() =>
        Gen.Select(Gen.Double[0.01, 0.99], Gen.Double[-90, 90]).Sample((share, angle) =>
        {
            Laminate laminate = new([Plies.Woven(Graphite, Mm(0.3), Part(share), Deg(angle))]);
            double h = laminate.Thickness.Meters;
            PlaneMatrix even = (share * h * Graphite.StiffnessAt(Deg(angle))) + ((1 - share) * h * Graphite.StiffnessAt(Deg(angle + 90)));
            Printed.Same(even, laminate.InPlaneStiffness);
            Printed.Same(h * h / 12 * even, laminate.BendingStiffness);
            Assert.True(Printed.Largest(laminate.Coupling) <= 1e-12 * h * Printed.Largest(even));
        });

    [Fact]
    public void More_warp_is_stiffer_along_it()
    {
        WetCloth cloth = new(Gsm(200), EGlass, Epoxy, Part(0.45));
        LaminateConstants constants = new Laminate([Plies.Woven(cloth, Part(0.8), Deg(0))]).StretchingConstants();
        Assert.True(constants.X > 1.5 * constants.Y);
        LaminateConstants turned = new Laminate([Plies.Woven(cloth, Part(0.2), Deg(90))]).StretchingConstants();
        Digits.Close(constants.X.Pascals, turned.X.Pascals);
    }

    // t = FAW/(rho_f Vf): identity of ASTM D3171 Method II; figures computed from the stated inputs.
    [Theory]
    [InlineData(200, 1780, 0.50, "0.224719")]
    [InlineData(300, 2540, 0.35, "0.337458")]
    public void Thickness_is_that_of_the_areal_weight(double gsm, double rho, double fibre, string printed)
    {
        WetCloth cloth = new(Gsm(gsm), FibreConstants.Isotropic(Gpa(72), 0.2, Rho(rho)), Epoxy, Part(fibre));
        Printed.Agrees(printed, Plies.Unidirectional(cloth, Deg(30)).Thickness.Millimeters);
        Printed.Agrees(printed, Plies.Woven(cloth, Part(0.45), Deg(30)).Thickness.Millimeters);
        Printed.Agrees(printed, Plies.RandomMat(cloth).Thickness.Millimeters);
    }

    [Fact]
    public void Thickness_in_ounces_per_square_yard_agrees_too()
    {
        // 5.8 oz/yd2, rho_f 1780, Vf 0.45: 0.24551 mm (computed from the same identity).
        AreaDensity weight = AreaDensity.FromKilogramsPerSquareMeter(5.8 * 0.028349523125 / (0.9144 * 0.9144));
        WetCloth cloth = new(weight, FibreConstants.Isotropic(Gpa(230), 0.2, Rho(1780)), Epoxy, Part(0.45));
        Printed.Agrees("0.24551", Plies.Unidirectional(cloth, Deg(0)).Thickness.Millimeters);
    }

    // Vf = n FAW/(rho_f h), the same identity the other way: eight plies of 200 g/m2 in 1.8 mm have Vf 0.499376 (computed).
    [Fact]
    public void Plies_at_the_fibre_volume_of_a_measured_thickness_have_that_thickness()
    {
        Ratio volume = FibreContent.VolumeFractionFromThickness(Gsm(8 * 200), Rho(1780), Mm(1.8));
        Printed.Agrees("0.499376", volume.DecimalFractions);
        LaminatePly ply = Plies.Unidirectional(new WetCloth(Gsm(200), FibreConstants.Isotropic(Gpa(230), 0.2, Rho(1780)), Epoxy, volume), Deg(0));
        Digits.Close(1.8, new Laminate([.. Enumerable.Repeat(ply, 8)]).Thickness.Millimeters);
    }

    // Fibre volume from the share by mass, densities 2.5 and 1.2: a public table of laminate data (seen), recomputed.
    [Theory]
    [InlineData(0.30, "0.171")]
    [InlineData(0.35, "0.205")]
    [InlineData(0.40, "0.242")]
    [InlineData(0.45, "0.282")]
    [InlineData(0.50, "0.324")]
    [InlineData(0.55, "0.370")]
    [InlineData(0.60, "0.419")]
    [InlineData(0.65, "0.471")]
    [InlineData(0.70, "0.528")]
    public void Resin_by_mass_gives_the_tables_fibre_volume(double fibreShare, string printed)
    {
        FibreConstants fibre = FibreConstants.Isotropic(Gpa(72), 0.2, Rho(2500));
        WetCloth cloth = new(
            Gsm(300), fibre, Epoxy with { Density = Rho(1200) }, FibreContent.VolumeFraction(Part(fibreShare), Rho(2500), Rho(1200)));
        Printed.Agrees(printed, cloth.FibreVolumeFraction.DecimalFractions);

        // And the ply's mass is the cloth with its resin.
        Digits.Close(0.3 / fibreShare, Plies.RandomMat(cloth).Mass.KilogramsPerSquareMeter);
    }

    [Fact]
    public void A_stitched_biax_is_two_layers_in_their_real_order()
    {
        WetCloth cloth = new(Gsm(400), EGlass, Epoxy, Part(0.5));
        LaminatePly biax = Plies.Stitched(cloth, [new(Deg(45), Part(0.5)), new(Deg(-45), Part(0.5))]);
        WetCloth half = cloth with { Cloth = Gsm(200) };
        Laminate two = new([Plies.Unidirectional(half, Deg(45)), Plies.Unidirectional(half, Deg(-45))]);
        Laminate one = new([biax]);
        Printed.Same(two.InPlaneStiffness, one.InPlaneStiffness);
        Printed.Same(two.Coupling, one.Coupling);
        Assert.NotEqual(0, one.Coupling.M16);
        Digits.Close(two.Mass.KilogramsPerSquareMeter, one.Mass.KilogramsPerSquareMeter);
    }

    [Fact]
    public void A_core_weighs_its_density_and_the_resin_it_takes()
    {
        LaminatePly core = Plies.Core(
            Lamina.Isotropic(Pressure.FromMegapascals(60), 0.3), Mm(5), Rho(80), resinTaken: Gsm(150));
        Digits.Close(0.55, core.Mass.KilogramsPerSquareMeter);
    }

    private static Laminate CrossPly(double degrees)
    {
        LaminatePly first = LaminatePly.Of(Glass, Mm(0.125), Deg(degrees));
        LaminatePly second = LaminatePly.Of(Glass, Mm(0.125), Deg(degrees + 90));
        return new Laminate([first, second, second, first]);
    }
}
