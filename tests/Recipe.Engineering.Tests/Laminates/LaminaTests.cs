using UnitsNet;
using static Recipe.Engineering.Tests.Stacks;

namespace Recipe.Engineering.Tests;

public class LaminaTests
{
    // Kaw, Mechanics of Composite Materials, 2nd ed. (2006), Ex. 2.6 and 2.7: from memory, recomputed in double precision.
    [Fact]
    public void Reduced_and_rotated_stiffness_agree_with_the_textbook()
    {
        Printed.Agrees("181.8 2.897 0 10.35 0 7.17", 1e-9 * Graphite.ReducedStiffness);
        Printed.Agrees("23.65 32.46 20.05 109.4 54.19 36.74", 1e-9 * Graphite.StiffnessAt(Deg(60)));
    }

    [Fact]
    public void Rotated_compliance_and_its_strains_agree_with_the_textbook()
    {
        PlaneMatrix compliance = Graphite.ComplianceAt(Deg(60));
        Printed.Agrees("8.053e-11 -7.878e-12 -3.234e-11 3.475e-11 -4.696e-11 1.141e-10", compliance);
        Printed.Agrees("5.534e-5 -3.078e-4 5.328e-4", compliance * new PlaneVector(2e6, -3e6, 4e6));
    }

    // Tsai and Hahn, Introduction to Composite Materials (1980): from memory, recomputed; the relations of E, nu, G are exact.
    [Fact]
    public void Invariants_agree_with_the_tables()
    {
        (double u1, double u2, double u3, double u4, double u5) = Graphite.Invariants;
        Printed.Agrees("76.37", u1 / 1e9);
        Printed.Agrees("85.73", u2 / 1e9);
        Printed.Agrees("19.71", u3 / 1e9);
        Printed.Agrees("22.61", u4 / 1e9);
        Printed.Agrees("26.88", u5 / 1e9);
        Printed.Agrees("69.68", ((u1 * u1) - (u4 * u4)) / u1 / 1e9);
        Printed.Agrees("0.30", u4 / u1);
        Digits.Close(u1 - u4, 2 * u5);
    }

    // Mallick, Fiber-Reinforced Composites, 3rd ed., Ex. 3.6: from memory; the book rounds nu21, hence one part in a thousand.
    [Fact]
    public void Angle_ply_stiffness_agrees_with_the_second_textbook()
    {
        Lamina lamina = Lamina.Orthotropic(Gpa(133.4), Gpa(8.78), 0.26, Gpa(3.254));
        Printed.Close("134.03 2.29 0 8.82 0 3.254", 1e-9 * lamina.ReducedStiffness, 1e-3);
        Printed.Close("40.11 33.61 31.3 40.11 31.3 34.57", 1e-9 * lamina.StiffnessAt(Deg(45)), 1e-3);
        Printed.Close("40.11 33.61 -31.3 40.11 -31.3 34.57", 1e-9 * lamina.StiffnessAt(Deg(-45)), 1e-3);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(17)]
    [InlineData(-45)]
    [InlineData(90)]
    [InlineData(200)]
    public void Two_ways_to_turn_a_ply_agree(double degrees)
    {
        // The invariants' form, the transformation of axes, and the inverse of the turned compliance.
        PlaneMatrix turned = Graphite.StiffnessAt(Deg(degrees));
        Printed.Same(turned, Graphite.ReducedStiffness.StiffnessInAxesTurnedBy(Deg(-degrees)));
        Printed.Same(turned, Graphite.ComplianceAt(Deg(degrees)).Inverse());
    }

    [Fact]
    public void Quarter_turns_are_exact()
    {
        PlaneMatrix q = Graphite.ReducedStiffness;
        PlaneMatrix across = Graphite.StiffnessAt(Deg(90));
        Assert.Equal(0, across.M16);
        Assert.Equal(0, across.M26);
        Digits.Close(q.M11, across.M22);
        Digits.Close(q.M22, across.M11);
    }

    [Fact]
    public void An_isotropic_layer_is_alike_in_all_directions()
    {
        Lamina foam = Lamina.Isotropic(Pressure.FromMegapascals(70), 0.3);
        Printed.Same(foam.ReducedStiffness, foam.StiffnessAt(Deg(33)));
        Digits.Close(70e6 / 2.6, foam.Shear.Pascals);
    }
}
