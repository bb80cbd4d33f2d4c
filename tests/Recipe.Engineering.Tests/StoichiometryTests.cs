using UnitsNet;

namespace Recipe.Engineering.Tests;

public class StoichiometryTests
{
    private static MolarMass Eq(double gramsPerEquivalent) => MolarMass.FromGramsPerMole(gramsPerEquivalent);

    [Fact]
    public void Blend_and_hardener_agree_with_the_worked_example()
    {
        // A published curing-agent calculation sheet: 80 parts of EEW 189, 10 of EEW 183, 10 of filler give EEW 209;
        // AHEW 43 then needs 20.6 phr. Exact: 209.238 and 20.5508 (20.5742 from the rounded EEW).
        MolarMass eew = Stoichiometry.EpoxideEquivalentOfBlend([new(80, Eq(189)), new(10, Eq(183)), new(10, null)]);
        Digits.AsPrinted("209", eew.GramsPerMole);
        Digits.AsPrinted("209.238", eew.GramsPerMole);
        Digits.AsPrinted("20.6", Stoichiometry.HardenerPerHundred(Eq(43), Eq(209)));
        Digits.AsPrinted("20.5742", Stoichiometry.HardenerPerHundred(Eq(43), Eq(209)));
        Digits.AsPrinted("20.5508", Stoichiometry.HardenerPerHundred(Eq(43), eew));
    }

    // Textbook amines, Lee and Neville 1967 (recalled; molar masses exact).
    [Theory]
    [InlineData(103.17, 5, "20.63", "20.6", "10.86")]
    [InlineData(146.23, 6, "24.37", "24.4", "12.83")]
    [InlineData(170.30, 4, "42.58", "42.6", "22.41")]
    public void Textbook_amines_agree(double molarMass, int hydrogens, string ahew, string rounded, string phr)
    {
        MolarMass equivalent = Stoichiometry.AmineHydrogenEquivalent(Eq(molarMass), hydrogens);
        Digits.AsPrinted(ahew, equivalent.GramsPerMole);
        Digits.AsPrinted(rounded, equivalent.GramsPerMole);
        Digits.AsPrinted(phr, Stoichiometry.HardenerPerHundred(equivalent, Eq(190)));
        Digits.AsPrinted(phr, Stoichiometry.BalancedMix(equivalent, Eq(190)).HardenerPerHundred);
    }

    [Fact]
    public void Filler_thins_the_epoxide_and_changes_nothing_else()
    {
        MolarMass neat = Stoichiometry.EpoxideEquivalentOfBlend([new(100, Eq(190))]);
        MolarMass filled = Stoichiometry.EpoxideEquivalentOfBlend([new(100, Eq(190)), new(50, null)]);
        Digits.Close(190, neat.GramsPerMole);
        Digits.Close(285, filled.GramsPerMole);

        // The hardener for the whole filled mass is the same as for the resin in it.
        Digits.Close(
            Stoichiometry.HardenerPerHundred(Eq(43), neat), 1.5 * Stoichiometry.HardenerPerHundred(Eq(43), filled));
    }

    [Fact]
    public void Blends_without_epoxide_and_amines_without_hydrogen_are_refused()
    {
        Assert.Throws<ArgumentException>(() => Stoichiometry.EpoxideEquivalentOfBlend([new(10, null)]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Stoichiometry.EpoxideEquivalentOfBlend([new(0, Eq(190))]));
        Assert.Throws<ArgumentOutOfRangeException>(() => Stoichiometry.AmineHydrogenEquivalent(Eq(100), 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => Stoichiometry.HardenerPerHundred(Eq(0), Eq(190)));
    }
}
