using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class VacuumTests
{
    private static Pressure Mbar(double value) => Pressure.FromMillibars(value);

    private static Volume Litres(double value) => Volume.FromLiters(value);

    private static VolumeFlow M3PerHour(double value) => VolumeFlow.FromCubicMetersPerHour(value);

    // A published pump-down table: 1 m3 at 0.1 m3/s from 1000 mbar; recomputed 6.931, 23.026 and 46.052 s.
    [Theory]
    [InlineData(500, "6.9", "6.931")]
    [InlineData(100, "23", "23.026")]
    [InlineData(10, "46", "46.052")]
    public void Pump_down_agrees_with_the_published_table(double to, string printed, string recomputed)
    {
        Duration? time = Vacuum.PumpDownTime(
            Volume.FromCubicMeters(1), VolumeFlow.FromCubicMetersPerSecond(0.1), Mbar(1000), Mbar(to));
        Digits.AsPrinted(printed, time!.Value.Seconds);
        Digits.AsPrinted(recomputed, time.Value.Seconds);
    }

    [Fact]
    public void Pump_size_agrees_with_a_vacuum_guide()
    {
        // A vacuum guide: 1000 m3 to 200 mbar in 10 min from 1000 mbar needs 160 m3/min; recomputed 160.94.
        Duration? time = Vacuum.PumpDownTime(
            Volume.FromCubicMeters(1000), VolumeFlow.FromCubicMetersPerMinute(160.94), Mbar(1000), Mbar(200));
        Digits.Close(10, time!.Value.Minutes, 5e-5);
    }

    [Fact]
    public void Ultimate_pressure_and_leak_slow_the_pump_down()
    {
        // By hand: V/S = 6 s; the floor is 5 mbar + 1 mbar L/s / (1 L/s) = 6 mbar.
        VolumeFlow speed = VolumeFlow.FromLitersPerSecond(1);
        LeakRate leak = LeakRate.FromMillibarLitresPerSecond(1);
        Digits.Close(6, Vacuum.LowestHeld(speed, Mbar(5), leak).Millibars);
        Duration? time = Vacuum.PumpDownTime(Litres(6), speed, Mbar(1000), Mbar(50), Mbar(5), leak);
        Digits.Close(6 * Math.Log(994.0 / 44), time!.Value.Seconds);
    }

    [Fact]
    public void What_the_pump_cannot_reach_has_no_time()
    {
        VolumeFlow speed = VolumeFlow.FromLitersPerSecond(1);
        Assert.Null(Vacuum.PumpDownTime(Litres(6), speed, Mbar(1000), Mbar(5), Mbar(5)));
        Assert.Null(Vacuum.PumpDownTime(
            Litres(6), speed, Mbar(1000), Mbar(20), Mbar(5), LeakRate.FromMillibarLitresPerSecond(15)));
        Assert.Equal(Duration.Zero, Vacuum.PumpDownTime(Litres(6), speed, Mbar(100), Mbar(200)));
    }

    [Fact]
    public void Pressure_rise_gives_the_leak_of_the_worked_case()
    {
        // Computed from Q = V dp/dt: a 20 L bag that rises 1 inHg in 60 s leaks 11.288 mbar L/s, and a pump of 3 m3/h holds it
        // 13.55 mbar above its ultimate pressure.
        LeakRate leak = LeakRate.FromRise(Litres(20), Pressure.FromInchesOfMercury(1), Duration.FromSeconds(60));
        Digits.AsPrinted("11.288", leak.MillibarLitresPerSecond);
        Digits.AsPrinted("13.55", Vacuum.LowestHeld(M3PerHour(3), Pressure.Zero, leak).Millibars);
    }

    [Fact]
    public void Handbook_conversions_of_vacuum_agree()
    {
        // US Army TM 1-1500-204-23-11: inHg x 0.49116 = psi (exact 0.491154, so its last digit is one off), psi x 2.036 = inHg.
        double psi = Pressure.FromInchesOfMercury(1).PoundsForcePerSquareInch;
        Assert.InRange(psi, 0.49115, 0.49117);
        Digits.AsPrinted("0.491154", psi);
        Digits.AsPrinted("2.036", 1 / psi);
        Digits.AsPrinted("2.036021", 1 / psi);
    }

    [Fact]
    public void Pump_down_takes_longer_for_deeper_vacuum_larger_bags_smaller_pumps_and_leaks()
    {
        Gen.Select(
            Gen.Double[0.1, 500], Gen.Double[0.5, 20], Gen.Double[60, 900], Gen.Double[0, 20], Gen.Double[0, 1]).Sample(
            (litres, speed, to, ultimate, leak) =>
            {
                double Time(double v, double s, double p, double q) =>
                    Vacuum.PumpDownTime(
                        Litres(v), M3PerHour(s), Mbar(1013), Mbar(p), Mbar(ultimate), LeakRate.FromMillibarLitresPerSecond(q))
                    is { } time
                        ? time.Seconds
                        : double.PositiveInfinity;
                double here = Time(litres, speed, to, leak);
                return double.IsFinite(here)
                    && Time(litres, speed, to * 0.9, leak) > here
                    && Digits.IsClose(2 * here, Time(2 * litres, speed, to, leak))
                    && Time(litres, speed / 1.2, to, leak) > here
                    && Time(litres, speed, to, leak + 1) >= here;
            },
            iter: 2000);
    }

    [Fact]
    public void Pump_margin_is_what_it_moves_over_what_leaks()
    {
        // By hand: 1 L/s at 100 mbar above an ultimate of 10 mbar moves 90 mbar L/s.
        VolumeFlow speed = VolumeFlow.FromLitersPerSecond(1);
        LeakRate leak = LeakRate.FromMillibarLitresPerSecond(9);
        Digits.Close(10, Vacuum.PumpMargin(speed, Mbar(100), Mbar(10), leak));
        Assert.Equal(0, Vacuum.PumpMargin(speed, Mbar(10), Mbar(10), leak));
        Assert.Equal(double.PositiveInfinity, Vacuum.PumpMargin(speed, Mbar(100), Mbar(10), default));
    }

    [Fact]
    public void Free_volume_is_bag_hose_and_trap()
    {
        // By hand: 0.25 m2 at 10 mm is 2.5 L; 3 m of 12 mm bore at 113 mL/m (common practice: 113 g of resin a metre); trap 1 L.
        Volume free = Vacuum.BagFreeVolume(
            Area.FromSquareMeters(0.25),
            Length.FromMillimeters(10),
            Length.FromMillimeters(12),
            Length.FromMeters(3),
            Litres(1));
        Digits.Close(2.5 + (3 * Math.PI * 0.036) + 1, free.Liters);
        Volume hose = Vacuum.BagFreeVolume(
            Area.Zero, Length.Zero, Length.FromMillimeters(12), Length.FromMeters(1), Volume.Zero);
        Digits.AsPrinted("113", hose.Milliliters);
    }

    [Fact]
    public void Figures_out_of_range_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Vacuum.PumpDownTime(Volume.Zero, M3PerHour(3), Mbar(1000), Mbar(100)));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Vacuum.PumpDownTime(Litres(5), VolumeFlow.Zero, Mbar(1000), Mbar(100)));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => Vacuum.PumpDownTime(Litres(5), M3PerHour(3), Mbar(1000), Mbar(-100)));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => LeakRate.FromRise(Litres(5), Mbar(10), Duration.Zero));
        Assert.Throws<ArgumentOutOfRangeException>(() => LeakRate.FromMillibarLitresPerSecond(-1));
    }
}
