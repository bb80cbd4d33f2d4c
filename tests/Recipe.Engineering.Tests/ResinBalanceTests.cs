using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class ResinBalanceTests
{
    private static Mass G(double grams) => Mass.FromGrams(grams);

    private static AreaDensity Gsm(double grams) => AreaDensity.FromGramsPerSquareMeter(grams);

    private static Area M2(double value) => Area.FromSquareMeters(value);

    private static Ratio Percent(double value) => Ratio.FromPercent(value);

    // A light-aircraft maintenance manual (51-00-00, 2013): dry glass to resin 100:70 (resin share 0.41), carbon 100:85 (0.46).
    [Theory]
    [InlineData(70, "0.41")]
    [InlineData(85, "0.46")]
    public void Laminate_resin_agrees_with_the_maintenance_manual(double resinFor100, string share)
    {
        double w = resinFor100 / (100 + resinFor100);
        Digits.AsPrinted(share, w);
        Digits.Close(resinFor100, ResinBalance.InLaminate(Gsm(200), M2(0.5), Ratio.FromDecimalFractions(w)).Grams);
    }

    [Fact]
    public void Equal_weights_of_cloth_and_resin_for_hand_patches()
    {
        // FAA AC 43.13-1B ch. 3: 1:1 by weight for hand patches.
        Digits.Close(163 * 0.25, ResinBalance.InLaminate(Gsm(163), M2(0.25), Percent(50)).Grams);
    }

    [Fact]
    public void Mat_takes_more_than_twice_its_weight_by_hand()
    {
        // Common practice: chopped strand mat is laid at 30 % glass by weight, 2.33 times its weight in resin (roughly 2 to 2.5).
        Mass resin = ResinBalance.InLaminate(Gsm(450), M2(1), Percent(70));
        Digits.Close(1050, resin.Grams);
        Assert.InRange(resin.Grams / 450, 2, 2.5);
    }

    [Fact]
    public void Mass_and_volume_give_the_same_resin()
    {
        Density fibre = Density.FromKilogramsPerCubicMeter(1780);
        Density resin = Density.FromKilogramsPerCubicMeter(1150);
        Ratio volume = FibreContent.VolumeFraction(Percent(58), fibre, resin);
        Digits.Close(
            ResinBalance.InLaminate(Gsm(200), M2(2), Percent(42)).Grams,
            ResinBalance.InLaminate(Gsm(200), M2(2), volume, fibre, resin).Grams);
    }

    [Fact]
    public void A_consumable_takes_no_more_than_it_holds()
    {
        Digits.Close(10, ResinBalance.TakenBy(new PickUp(M2(0.25), Gsm(40))).Grams);
        Digits.Close(10, ResinBalance.TakenBy(new PickUp(M2(0.25), Gsm(40), Gsm(400))).Grams);
        Digits.Close(100, ResinBalance.TakenBy(new PickUp(M2(0.25), Gsm(900), Gsm(400))).Grams);
    }

    [Fact]
    public void For_a_small_part_the_consumables_take_as_much_as_the_cloth()
    {
        // Common practice: half a square metre of two light plies, where peel ply, breather, brush and pot can take as much resin
        // as the laminate holds. 2 x 49 g/m2 at 42 % by weight; peel ply 40, breather 50 g/m2; brush 30 g.
        Mass laminate = ResinBalance.InLaminate(Gsm(98), M2(0.5), Percent(42));
        ResinSheet sheet = ResinBalance.ToMix(
            laminate, [new(M2(0.5), Gsm(40)), new(M2(0.5), Gsm(50))], G(30), Percent(3), Percent(10));
        Assert.True(sheet.ToMix - sheet.Laminate > sheet.Laminate);
        Digits.Close((laminate.Grams + 20 + 25 + 30) * 1.1 / 0.97, sheet.ToMix.Grams);
        Digits.Close(0.03 * sheet.ToMix.Grams, sheet.PotLoss.Grams);
    }

    [Fact]
    public void No_resin_is_lost_or_made()
    {
        Gen.Select(
            Gen.Double[0, 50],
            Gen.Select(Gen.Double[0, 20], Gen.Double[0, 0.6], Gen.Double[0, 1.4]).Array[0, 5],
            Gen.Double[0, 1],
            Gen.Double[0, 0.5],
            Gen.Double[0, 0.5]).Sample(
            (laminate, consumables, tools, pot, spare) =>
            {
                PickUp[] pickUps =
                [
                    .. consumables.Select(c => new PickUp(
                        M2(c.Item1), AreaDensity.FromKilogramsPerSquareMeter(c.Item2), AreaDensity.FromKilogramsPerSquareMeter(c.Item3))),
                ];
                ResinSheet sheet = ResinBalance.ToMix(
                    Mass.FromKilograms(laminate),
                    pickUps,
                    Mass.FromKilograms(tools),
                    Ratio.FromDecimalFractions(pot),
                    Ratio.FromDecimalFractions(spare));
                double goes = sheet.Laminate.Kilograms + sheet.PickUp.Kilograms + sheet.ToolLoss.Kilograms
                    + sheet.PotLoss.Kilograms + sheet.Spare.Kilograms;
                Digits.Close(goes, sheet.ToMix.Kilograms);
                Digits.Close(
                    consumables.Sum(c => c.Item1 * Math.Min(c.Item2, c.Item3)) + 1e-9, sheet.PickUp.Kilograms + 1e-9);
            },
            iter: 2000);
    }

    [Fact]
    public void Shares_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => ResinBalance.ToMix(G(-1), [], G(0), Percent(3), Percent(10)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ResinBalance.ToMix(G(1), [], G(0), Percent(100), Percent(10)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ResinBalance.ToMix(G(1), [], G(0), Percent(3), Percent(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => ResinBalance.TakenBy(new PickUp(M2(1), Gsm(-1))));
        Assert.Throws<ArgumentOutOfRangeException>(() => ResinBalance.InLaminate(Gsm(100), M2(1), Percent(100)));
    }
}
