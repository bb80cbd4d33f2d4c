using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class MixRatioTests
{
    private static Density Rho(double gramsPerCubicCentimetre) => Density.FromGramsPerCubicCentimeter(gramsPerCubicCentimetre);

    [Fact]
    public void Ratios_by_weight_and_by_volume_convert_with_the_densities()
    {
        // Computed from the definition of density: B per 100 A by volume = by weight * rho_A / rho_B.
        Digits.AsPrinted("37.94", new WeightRatio(100, 32).ToVolume(Rho(1.15), Rho(0.97)).HardenerPerHundred);
        Digits.AsPrinted("43.18", new VolumeRatio(2, 1).ToWeight(Rho(1.10), Rho(0.95)).HardenerPerHundred);
        Digits.AsPrinted("16.95", new VolumeRatio(5, 1).ToWeight(Rho(1.18), Rho(1.00)).HardenerPerHundred);
    }

    [Fact]
    public void Weight_and_volume_ratios_are_inverse()
    {
        Gen.Select(Gen.Double[1, 100], Gen.Double[1, 100], Gen.Double[0.9, 1.4], Gen.Double[0.8, 1.4]).Sample(
            (a, b, resin, hardener) =>
            {
                WeightRatio back = new WeightRatio(a, b).ToVolume(Rho(resin), Rho(hardener)).ToWeight(Rho(resin), Rho(hardener));
                Digits.Close(100 * b / a, back.HardenerPerHundred);
            },
            iter: 2000);
    }

    [Fact]
    public void Four_to_one_for_a_strip_of_woven_roving_agrees_with_the_Army_boat_manual()
    {
        // US Army TM 55-1905-223-SDC, para 8-24: 4 parts resin, 1 hardener; 400 g + 100 g = 500 g for a strip 6 in by 40 in;
        // said to be 2 g a square inch. Recomputed 2.083 g/in2 = 3.229 kg/m2.
        MixComponents pot = MixRatio.Components(new WeightRatio(4, 1), Mass.FromGrams(500));
        Digits.Close(400, pot.Resin.Grams);
        Digits.Close(100, pot.Hardener.Grams);

        Area strip = Surfaces.FlatRectangle(Length.FromInches(6), Length.FromInches(40)).Area;
        Digits.AsPrinted("2.083", pot.Total.Grams / strip.SquareInches);
        Digits.AsPrinted("2", pot.Total.Grams / strip.SquareInches);
        Digits.AsPrinted("3.229", pot.Total.Kilograms / strip.SquareMeters);
    }

    [Fact]
    public void Components_keep_the_ratio_and_add_up()
    {
        Gen.Select(Gen.Double[1, 100], Gen.Double[1, 100], Gen.Double[0, 10]).Sample(
            (a, b, total) =>
            {
                MixComponents pot = MixRatio.Components(new WeightRatio(a, b), Mass.FromKilograms(total));
                return Digits.IsClose(total, pot.Total.Kilograms)
                    && Digits.IsClose(pot.Resin.Kilograms * b, pot.Hardener.Kilograms * a);
            },
            iter: 2000);
    }

    [Fact]
    public void Peroxide_is_a_share_of_the_resin()
    {
        // Supplier pages: 1 kg of resin at 1 % takes about 10 ml, taken as 10 g; percent added is grams over grams, 454 g to the lb.
        Digits.Close(10, MixRatio.Peroxide(Mass.FromKilograms(1), Ratio.FromPercent(1)).Grams);
        Digits.AsPrinted("454", 100 * MixRatio.Peroxide(Mass.FromPounds(1), Ratio.FromPercent(1)).Grams);
        Digits.Close(2, MixRatio.PeroxidePercent(Mass.FromGrams(20), Mass.FromKilograms(1)).Percent);
        Assert.Throws<ArgumentOutOfRangeException>(
            () => MixRatio.Peroxide(Mass.FromKilograms(1), Ratio.FromPercent(20)));
    }

    [Fact]
    public void Scale_division_limits_the_smallest_mix()
    {
        // By hand: 100:25 in 10 g is 8 g and 2 g; at 1 g division each may be off by 0.5 g: (2.5/7.5)/(2/8) = 1.3333.
        WeightRatio ratio = new(100, 25);
        Digits.Close(1 / 3.0, MixRatio.RatioErrorFromScale(ratio, Mass.FromGrams(10), Mass.FromGrams(1))!.Value.DecimalFractions);
        Assert.Null(MixRatio.RatioErrorFromScale(ratio, Mass.FromGrams(2), Mass.FromGrams(1)));

        Mass least = MixRatio.SmallestMix(ratio, Mass.FromGrams(1), Ratio.FromDecimalFractions(1 / 3.0));
        Digits.Close(10, least.Grams);
    }

    [Fact]
    public void Smallest_mix_just_holds_the_tolerance()
    {
        Gen.Select(Gen.Double[5, 100], Gen.Double[0.001, 5], Gen.Double[0.001, 0.5]).Sample(
            (hardener, division, tolerance) =>
            {
                WeightRatio ratio = new(100, hardener);
                Mass step = Mass.FromGrams(division);
                Mass least = MixRatio.SmallestMix(ratio, step, Ratio.FromDecimalFractions(tolerance));
                Digits.Close(tolerance, MixRatio.RatioErrorFromScale(ratio, least, step)!.Value.DecimalFractions, 1e-7);
                Ratio larger = MixRatio.RatioErrorFromScale(ratio, least * 2, step)!.Value;
                Assert.True(larger.DecimalFractions < tolerance);
            },
            iter: 1000);
    }

    [Fact]
    public void Ratios_without_parts_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => new WeightRatio(100, 0));
        Assert.Throws<ArgumentOutOfRangeException>(() => new VolumeRatio(double.NaN, 1));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => MixRatio.Components(new WeightRatio(1, 1), Mass.FromGrams(-1)));
    }
}
