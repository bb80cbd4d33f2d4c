using UnitsNet;

namespace Recipe.Engineering.Tests;

public class MixingTests
{
    private static Density Rho(double gramsPerCubicCentimetre) => Density.FromGramsPerCubicCentimeter(gramsPerCubicCentimetre);

    private static double PerHundred(WeightRatio ratio) => 100 * ratio.HardenerParts / ratio.ResinParts;

    [Fact]
    public void A_ratio_by_volume_is_weighed_out_with_the_densities()
    {
        // Computed from the definition of density: B per 100 A by weight = by volume * rho_B / rho_A.
        Digits.AsPrinted("43.18", PerHundred(new VolumeRatio(2, 1).ToWeight(Rho(1.10), Rho(0.95))));
        Digits.AsPrinted("16.95", PerHundred(new VolumeRatio(5, 1).ToWeight(Rho(1.18), Rho(1.00))));
    }

    [Fact]
    public void Four_to_one_for_a_strip_of_woven_roving_agrees_with_the_Army_boat_manual()
    {
        // US Army TM 55-1905-223-SDC, para 8-24: 4 parts resin, 1 hardener; 400 g + 100 g = 500 g for a strip 6 in by 40 in;
        // said to be 2 g a square inch. Recomputed 2.083 g/in2 = 3.229 kg/m2.
        Mass pot = Mass.FromGrams(500);
        Digits.Close(100, pot.Grams * new WeightRatio(4, 1).HardenerShare.DecimalFractions);

        Area strip = Surfaces.FlatRectangle(Length.FromInches(6), Length.FromInches(40)).Area;
        Digits.AsPrinted("2.083", pot.Grams / strip.SquareInches);
        Digits.AsPrinted("2", pot.Grams / strip.SquareInches);
        Digits.AsPrinted("3.229", pot.Kilograms / strip.SquareMeters);
    }

    [Fact]
    public void Ratios_without_parts_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new WeightRatio(100, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new VolumeRatio(double.NaN, 1));
    }
}
