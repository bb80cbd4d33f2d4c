using UnitsNet;

namespace Recipe.Engineering.Tests;

/// <summary>Facts of the trade that the calculations have to bring out together. Source: common practice throughout.</summary>
public class CommonPracticeTests
{
    // The exact ounce per square yard, NIST SP 811: 33.90574747 g/m2.
    private static readonly double[] LightStack = [0.75, 3, 0.5, 0.2, 0.2];

    private static AreaDensity Dry => AreaDensity.FromGramsPerSquareMeter(LightStack.Sum() * 33.90574747);

    private static double WetGramsPerSquareMetre(double resin) =>
        (Dry + FibreContent.ResinPerArea(Dry, Ratio.FromDecimalFractions(resin))).GramsPerSquareMeter;

    [Fact]
    public void A_light_five_ply_stack_weighs_158_grams_a_square_metre_dry() =>
        Digits.AsPrinted("158", Dry.GramsPerSquareMeter);

    [Fact]
    public void That_stack_wetted_weighs_260_to_350_grams_a_square_metre()
    {
        Digits.Close(260, WetGramsPerSquareMetre(0.40), 0.02);
        Digits.Close(350, WetGramsPerSquareMetre(0.55), 0.02);
    }

    [Fact]
    public void Seven_grams_of_it_cover_200_to_270_square_centimetres()
    {
        double large = 7 / WetGramsPerSquareMetre(0.40) * 1e4;
        double small = 7 / WetGramsPerSquareMetre(0.55) * 1e4;
        Digits.Close(200, small, 0.02);
        Digits.Close(270, large, 0.02);
    }

    [Fact]
    public void An_hour_of_pot_life_is_enough_for_a_small_five_ply_lay_up_and_its_bag()
    {
        // One pair of hands, 230 cm2, doubly curved, a warm room; release film and breather over the peel ply.
        Surface shell = BowlSurfaces.HalfEllipsoid(
            Length.FromMillimeters(220), Length.FromMillimeters(110), Length.FromMillimeters(30));
        Assert.InRange(shell.Area.SquareCentimeters, 200, 270);
        WorkPace pace = WorkPace.Experienced;
        Duration wetOut = WorkingTime.WetOut(shell.Area, 5, pace.WetOutPerSquareMetrePly * pace.DoubleCurvatureFactor) + (5 * pace.HandlingPerPly);
        Duration bagging = WorkingTime.Bagging(shell.Area, BagSize.TapeLine(shell, new BagAllowances()), 2, true, pace);
        Duration clock = pace.MixingPerPot + wetOut + bagging + pace.LeakHunt + Duration.FromMinutes(1);

        PotLifeReference sheet = new(
            Duration.FromMinutes(60), Temperature.FromDegreesCelsius(23), Mass.FromGrams(100));
        Duration life = PotLife.At(sheet, Temperature.FromDegreesCelsius(25), Mass.FromGrams(40)).Life;
        Assert.True(clock < life);

        // The same work does not fit a quick resin of 15 minutes.
        Assert.True(clock > Duration.FromMinutes(15));
    }

    [Fact]
    public void A_pump_of_two_and_a_half_cfm_is_ample_for_a_bag_of_a_few_litres()
    {
        VolumeFlow pump = VolumeFlow.FromCubicFeetPerMinute(2.5);
        Pressure ambient = Atmosphere.AtAltitude(Length.Zero);
        Pressure level = ambient - Pressure.FromInchesOfMercury(25);
        Volume bag = Volume.FromLiters(4);
        Pressure ultimate = Pressure.FromMillibars(1);

        // The Army manual's leak limit, 1 inHg in a minute, is far below what the pump carries off at that level.
        LeakRate leak = LeakRate.FromRise(bag, Pressure.FromInchesOfMercury(1), Duration.FromMinutes(1));
        Assert.True(Vacuum.PumpMargin(pump, level, ultimate, leak) >= 5);
        Duration? time = Vacuum.PumpDownTime(bag, pump, ambient, level, ultimate, leak);
        Assert.NotNull(time);
        Assert.InRange(time.Value.Seconds, 1, 60);
    }
}
