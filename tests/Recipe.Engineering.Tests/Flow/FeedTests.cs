using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Resins;

namespace Recipe.Engineering.Tests;

public class FeedTests
{
    private static readonly Density Resin = Density.FromKilogramsPerCubicMeter(1100);

    [Fact]
    public void A_line_spaced_for_a_time_fills_in_that_time()
    {
        Gen.Select(AnyMedium, AnyViscosity, AnyPull, Gen.Double[60, 1e4], Gen.Double[100, 1e5]).Sample(
            (medium, mu, pull, within, doubling) =>
            {
                ViscosityCurve resin = ViscosityCurve.Doubling(PaS(mu), S(doubling));
                Duration opened = S(doubling / 3);
                Length one = FeedLines.GreatestSpacing(medium, Kpa(pull), resin, S(within), FeedSides.One, opened);
                Length both = FeedLines.GreatestSpacing(medium, Kpa(pull), resin, S(within), FeedSides.Both, opened);
                Digits.Close(2 * one.Meters, both.Meters);

                // Long after the resin is thick, time no longer tells and only the reach can be compared.
                if (within < 10 * doubling)
                {
                    FillOutcome fill = InfusionFill.Line(medium, Kpa(pull), one * (1 - 1e-12), resin, opened: opened);
                    Digits.Close(within, fill.Time!.Value.Seconds, 1e-6);
                }
            },
            iter: 500);
    }

    [Fact]
    public void The_worked_fill_gives_its_own_length_as_spacing()
    {
        // The worked case of a line: 0.5 m in 1973.684 s.
        ViscosityCurve resin = ViscosityCurve.Constant(PaS(0.3));
        Length spacing = FeedLines.GreatestSpacing(Glass, Pull, resin, S(1973.684), FeedSides.Both);
        Digits.Close(1, spacing.Meters, 1e-6);
        Assert.Equal(1, FeedLines.Count(M(1), M(1)));
        Assert.Equal(2, FeedLines.Count(M(1.001), M(1)));
        Assert.Equal(3, FeedLines.Count(M(0.3), M(0.1)));
        Assert.Equal(1, FeedLines.Count(M(0.01), M(1)));
    }

    [Fact]
    public void A_feed_line_of_12_mm_holds_113_mL_a_metre()
    {
        // Common practice counts 113 g a metre, at 1 g/mL.
        ResinDemand demand = ResinDemand.Of(
            [], [], [new(Mm(12), M(1))], Volume.Zero, Density.FromGramsPerCubicCentimeter(1), Part(0));
        Digits.AsPrinted("113", demand.Lines.Grams);
        Digits.Close(demand.Lines.Grams, demand.ToMix.Grams);
    }

    [Fact]
    public void A_small_infusion_adds_up_by_hand()
    {
        // 0.5 m2 of 3 mm laminate at half pores is 750 mL; 0.4 m2 of 1 mm medium at 0.9 is 360 mL; trap 90 mL; tail 20 % (common practice).
        ResinDemand demand = ResinDemand.Of(
            [new(M2(0.5), Mm(3), Part(0.5))],
            [new(M2(0.4), Mm(1), Part(0.9))],
            [],
            Volume.FromMilliliters(90),
            Resin,
            ResinDemand.CommonTail);
        Digits.Close(825, demand.Laminate.Grams);
        Digits.Close(396, demand.Consumables.Grams);
        Digits.Close(99, demand.Trap.Grams);
        Digits.Close(264, demand.Tail.Grams);
        Digits.Close(1584, demand.ToMix.Grams);
    }

    [Fact]
    public void The_resin_of_a_laminate_is_that_of_its_fibre_content()
    {
        // Two ways to the same resin: pores of the pressed thickness, and cloth weight with the fibre's share by volume.
        Gen.Select(Gen.Double[100, 2000], Gen.Double[0.3, 0.65], Gen.Double[0.1, 10]).Sample(
            (gsm, fibre, area) =>
            {
                Density glass = Density.FromKilogramsPerCubicMeter(2540);
                AreaDensity cloth = AreaDensity.FromGramsPerSquareMeter(gsm);
                Length thickness = FibreContent.PlyThickness(cloth, glass, Part(fibre));
                ResinDemand demand = ResinDemand.Of(
                    [new(M2(area), thickness, Part(1 - fibre))], [], [], Volume.Zero, Resin, Part(0));
                Digits.Close(ResinBalance.InLaminate(cloth, M2(area), Part(fibre), glass, Resin).Grams, demand.Laminate.Grams);
            },
            iter: 1000);
    }

    [Fact]
    public void No_resin_is_lost_or_made()
    {
        Gen<FilledLayer[]> layers = Gen.Select(Gen.Double[0, 20], Gen.Double[0, 30], Gen.Double[0, 1])
            .Select((area, mm, pores) => new FilledLayer(M2(area), Mm(mm), Part(pores))).Array[0, 6];
        Gen<FilledLine[]> lines = Gen.Select(Gen.Double[0, 25], Gen.Double[0, 20])
            .Select((bore, length) => new FilledLine(Mm(bore), M(length))).Array[0, 4];
        Gen.Select(layers, layers, lines, Gen.Double[0, 5], Gen.Double[0, 0.9]).Sample(
            (laminate, consumables, tubes, trap, tail) =>
            {
                ResinDemand demand = ResinDemand.Of(laminate, consumables, tubes, Litres(trap), Resin, Part(tail));
                double Pores(FilledLayer[] all) => all.Sum(l => l.Area.SquareMeters * l.Thickness.Meters * l.Porosity.DecimalFractions);
                double need = 1100 * (Pores(laminate) + Pores(consumables)
                    + tubes.Sum(t => Math.PI / 4 * t.Bore.Meters * t.Bore.Meters * t.Length.Meters) + (trap / 1000));
                Digits.Close((need * (1 + tail)) + 1e-9, demand.ToMix.Kilograms + 1e-9);
                Digits.Close(
                    demand.ToMix.Kilograms + 1e-9,
                    (demand.Laminate + demand.Consumables + demand.Lines + demand.Trap + demand.Tail).Kilograms + 1e-9);
            },
            iter: 1000);
    }

    [Fact]
    public void Figures_out_of_range_are_refused()
    {
        ViscosityCurve resin = ViscosityCurve.Measured([(S(0), PaS(1)), (S(10), PaS(2))]);
        Refused("within", () => FeedLines.GreatestSpacing(Glass, Pull, resin, S(11), FeedSides.One));
        Refused("sides", () => FeedLines.GreatestSpacing(Glass, Pull, resin, S(1), (FeedSides)9));
        Refused("width", () => FeedLines.Count(M(0), M(1)));
        Refused("spacing", () => FeedLines.Count(M(1e5), M(1e-9)));
        ResinDemand One(FilledLayer layer) => ResinDemand.Of([layer], [], [], Volume.Zero, Resin, Part(0));
        Refused("Area", () => One(new(M2(-1), Mm(1), Part(0.5))));
        Refused("Thickness", () => One(new(M2(1), Mm(-1), Part(0.5))));
        Refused("Porosity", () => One(new(M2(1), Mm(1), Part(1.1))));
        Refused("Bore", () => ResinDemand.Of([], [], [new(Mm(-1), M(1))], Volume.Zero, Resin, Part(0)));
        Refused("trap", () => ResinDemand.Of([], [], [], Litres(-1), Resin, Part(0)));
        Refused("resin", () => ResinDemand.Of([], [], [], Litres(1), Density.Zero, Part(0)));
        Refused("tail", () => ResinDemand.Of([], [], [], Litres(1), Resin, Part(1)));
    }
}
