using UnitsNet;
using static Recipe.Engineering.Tests.Stacks;

namespace Recipe.Engineering.Tests;

public class MicromechanicsTests
{
    private static readonly FibreConstants Glass85 = new(Gpa(85), Gpa(85), Gpa(35.42), 0.2, Rho(2500), PerKelvin(5e-6), PerKelvin(5e-6));
    private static readonly ResinConstants Epoxy = new(Gpa(3.4), 0.3, Rho(1200), PerKelvin(63e-6));

    // Kaw, Mechanics of Composite Materials, 2nd ed., Ex. 3.1 to 3.8: from memory, recomputed; agrees in every printed digit.
    [Fact]
    public void Glass_epoxy_agrees_with_the_textbook()
    {
        Ratio v = Part(0.7);
        Printed.Agrees("60.52", Micromechanics.RuleOfMixtures(Gpa(85), Gpa(3.4), v).Gigapascals);
        Printed.Agrees("10.37", Micromechanics.InverseRule(Gpa(85), Gpa(3.4), v).Gigapascals);
        Printed.Agrees("0.230", Micromechanics.Poisson(0.2, 0.3, v));
        Printed.Agrees("4.014", Micromechanics.InverseRule(Gpa(35.42), Gpa(1.308), v).Gigapascals);
        Printed.Agrees("20.20", Micromechanics.HalpinTsai(Gpa(85), Gpa(3.4), v, 2).Gigapascals);
        Printed.Agrees("6.169", Micromechanics.HalpinTsai(Gpa(35.42), Gpa(1.308), v, 1).Gigapascals);
        Printed.Agrees("0.8294", FibreContent.MassFraction(v, Rho(2500), Rho(1200)).DecimalFractions);
        Printed.Agrees("0.1706", 1 - FibreContent.MassFraction(v, Rho(2500), Rho(1200)).DecimalFractions);
        Printed.Agrees("2110", FibreContent.CompositeDensity(v, Rho(2500), Rho(1200)).KilogramsPerCubicMeter);

        // nu21 from the book's own rounded E1 and E2.
        Lamina book = Lamina.Orthotropic(Gpa(60.52), Gpa(10.37), 0.23, Gpa(4.014));
        Printed.Agrees("0.03941", book.MinorPoisson);
    }

    [Fact]
    public void A_layer_is_made_by_these_rules()
    {
        Lamina layer = Micromechanics.Unidirectional(Glass85, Epoxy, Part(0.7));
        Printed.Agrees("60.52", layer.Along.Gigapascals);
        Printed.Agrees("20.20", layer.Across.Gigapascals);
        Printed.Agrees("0.230", layer.Poisson);

        // The book rounds the resin's shear modulus to 1.308 GPa; E/(2 (1 + nu)) is 1.30769.
        Digits.Close(6.169, layer.Shear.Gigapascals, 2e-4);
    }

    // Kaw, 2nd ed., the example on thermal expansion in ch. 3 (Schapery's rules): from memory; agrees in every printed digit.
    [Fact]
    public void Thermal_expansion_agrees_with_the_textbook()
    {
        Lamina layer = Micromechanics.Unidirectional(Glass85, Epoxy, Part(0.7));
        Printed.Agrees("5.978e-6", layer.ExpansionAlong!.Value.PerKelvin);
        Printed.Agrees("27.40e-6", layer.ExpansionAcross!.Value.PerKelvin);
    }

    [Fact]
    public void Without_a_figure_there_is_no_thermal_expansion()
    {
        Lamina layer = Micromechanics.Unidirectional(Glass85 with { ExpansionAcross = null }, Epoxy, Part(0.5));
        Assert.NotNull(layer.ExpansionAlong);
        Assert.Null(layer.ExpansionAcross);
        Assert.Null(Micromechanics.ExpansionAlong(Glass85, Epoxy with { Expansion = null }, Part(0.5)));
    }

    [Fact]
    public void Like_constituents_make_their_own_constants()
    {
        // The same solid as fibre and as resin, at any share, is that solid: an identity of every rule.
        FibreConstants fibre = FibreConstants.Isotropic(Gpa(3.4), 0.3, Rho(1200), PerKelvin(63e-6));
        Lamina solid = Micromechanics.Unidirectional(fibre, Epoxy, Part(0.42));
        Digits.Close(3.4e9, solid.Along.Pascals);
        Digits.Close(3.4e9, solid.Across.Pascals);
        Digits.Close(3.4e9 / 2.6, solid.Shear.Pascals);
        Digits.Close(63e-6, solid.ExpansionAlong!.Value.PerKelvin);
        Digits.Close(63e-6, solid.ExpansionAcross!.Value.PerKelvin);
        Digits.Close(3.4e9, Micromechanics.InverseRule(Gpa(3.4), Gpa(3.4), Part(0.42)).Pascals);
    }

    [Fact]
    public void Interpolation_runs_from_the_inverse_rule_to_the_rule_of_mixtures()
    {
        // Halpin and Tsai (1969): xi = 0 and xi without bound.
        Ratio v = Part(0.55);
        Digits.Close(
            Micromechanics.InverseRule(Gpa(72), Gpa(3.1), v).Pascals, Micromechanics.HalpinTsai(Gpa(72), Gpa(3.1), v, 0).Pascals);
        Digits.Close(
            Micromechanics.RuleOfMixtures(Gpa(72), Gpa(3.1), v).Pascals,
            Micromechanics.HalpinTsai(Gpa(72), Gpa(3.1), v, 1e6).Pascals,
            1e-4);
    }

    // Tsai and Pagano (1968), the usual handbook form: from memory; figures computed from the glass/epoxy constants of Kaw.
    [Fact]
    public void Random_mat_agrees_with_the_computed_figures()
    {
        Lamina mat = Micromechanics.RandomInPlane(Glass);
        Printed.Agrees("19.644", mat.Along.Gigapascals);
        Digits.Close(6.8925, mat.Shear.Gigapascals);
        Digits.Close(mat.Along.Pascals, 2 * mat.Shear.Pascals * (1 + mat.Poisson));
        Printed.Same(mat.ReducedStiffness, mat.StiffnessAt(Deg(41)));
    }

    [Fact]
    public void Random_mat_is_near_the_exact_mean_of_all_directions()
    {
        // E = (U1^2 - U4^2)/U1 of Tsai and Hahn is the exact mean; the handbook form lies a few per cent below it.
        (double u1, _, _, double u4, double u5) = Glass.Invariants;
        Lamina mat = Micromechanics.RandomInPlane(Glass);
        Digits.Close(((u1 * u1) - (u4 * u4)) / u1, mat.Along.Pascals, 0.1);
        Digits.Close(u5, mat.Shear.Pascals, 0.1);
    }
}
