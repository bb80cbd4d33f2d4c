using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class MassBandTests
{
    [Fact]
    public void Bagged_work_has_the_bands_that_are_commonly_reckoned()
    {
        // Common practice, from memory: 7 % experienced, 15 % novice or first part.
        Digits.Close(7, MassBand.HalfWidth(LayUpProcess.Bagged, Experience.Experienced).Percent);
        Digits.Close(15, MassBand.HalfWidth(LayUpProcess.Bagged, Experience.Novice).Percent);
    }

    [Fact]
    public void A_practice_panel_lies_between_experienced_and_novice()
    {
        // Common practice: a hand-laid practice panel of six plies must weigh 10.5 to 12.5 oz, 9 % either way.
        double panel = (12.5 - 10.5) / (12.5 + 10.5);
        Digits.AsPrinted("0.09", panel);
        Assert.InRange(
            panel,
            MassBand.HalfWidth(LayUpProcess.Bagged, Experience.Experienced).DecimalFractions,
            MassBand.HalfWidth(LayUpProcess.Hand, Experience.Novice).DecimalFractions);
    }

    [Theory]
    [InlineData(Experience.Experienced)]
    [InlineData(Experience.Novice)]
    public void The_more_the_process_decides_the_narrower_the_band(Experience experience)
    {
        double[] widths =
        [
            .. new[] { LayUpProcess.Hand, LayUpProcess.Bagged, LayUpProcess.Infused, LayUpProcess.Prepreg }
                .Select(process => MassBand.HalfWidth(process, experience).DecimalFractions),
        ];
        Assert.Equal(widths.OrderDescending(), widths);
        Assert.All(widths, width => Assert.InRange(width, 0.02, 0.30));
    }

    [Fact]
    public void The_scale_between_processes_is_the_spread_of_laminate_mass()
    {
        // By hand: mass goes as 1/(1 - w). Bagged 36 to 48 %: (0.58/0.52 - 0.58/0.64)/2 = 0.10457;
        // infused 28 to 38 %: (0.67/0.62 - 0.67/0.72)/2 = 0.07504.
        double bagged = ((0.58 / 0.52) - (0.58 / 0.64)) / 2;
        double infused = ((0.67 / 0.62) - (0.67 / 0.72)) / 2;
        Digits.Close(0.07 * infused / bagged, MassBand.HalfWidth(LayUpProcess.Infused, Experience.Experienced).DecimalFractions);
    }

    [Fact]
    public void Independent_parts_combine_as_squares()
    {
        // JCGM 100, 5.1.2: 100 g with 3 g and 80 g with 4 g make 180 g with 5 g.
        MassRange range = MassBand.Combine(
            [new(Mass.FromGrams(100), Ratio.FromPercent(3)), new(Mass.FromGrams(80), Ratio.FromPercent(5))]);
        Digits.Close(180, range.Expected.Grams);
        Digits.Close(175, range.Low.Grams);
        Digits.Close(185, range.High.Grams);
        Assert.True(range.Contains(Mass.FromGrams(184)));
        Assert.False(range.Contains(Mass.FromGrams(186)));
    }

    [Fact]
    public void Combined_bands_are_never_wider_than_the_sum_nor_narrower_than_the_widest()
    {
        Gen.Select(Gen.Double[0, 5], Gen.Double[0, 0.5]).Array[1, 8].Sample(
            shares =>
            {
                MassRange range = MassBand.Combine(
                    [.. shares.Select(s => new MassShare(Mass.FromKilograms(s.Item1), Ratio.FromDecimalFractions(s.Item2)))]);
                double half = range.High.Kilograms - range.Expected.Kilograms;
                return half <= shares.Sum(s => s.Item1 * s.Item2) + 1e-9
                    && half >= shares.Max(s => s.Item1 * s.Item2) - 1e-9;
            },
            iter: 1000);
    }

    [Fact]
    public void What_is_none_of_its_kind_is_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => MassBand.HalfWidth((LayUpProcess)9, Experience.Novice));
        Assert.Throws<ArgumentOutOfRangeException>(() => MassBand.HalfWidth(LayUpProcess.Hand, (Experience)9));
    }
}
