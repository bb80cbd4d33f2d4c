using CsCheck;
using UnitsNet;

namespace Recipe.Engineering.Tests;

public class CureScheduleTests
{
    private static Temperature C(double degrees) => Temperature.FromDegreesCelsius(degrees);

    private static TemperatureChangeRate PerMinute(double kelvins) =>
        TemperatureChangeRate.FromDegreesCelsiusPerMinute(kelvins);

    private static CureSchedule LightLid() => CureSchedule.Create(
        C(20),
        [
            new HoldStep(C(20), Duration.FromHours(12)),
            new RampStep(C(50), PerMinute(0.5)),
            new HoldStep(C(50), Duration.FromHours(6)),
            new CoolStep(C(30), PerMinute(1)),
        ]);

    [Fact]
    public void Steps_last_as_long_as_their_slopes_say()
    {
        // By hand: 12 h + 30 K at 0.5 K/min (60 min) + 6 h + 20 K at 1 K/min (20 min) = 19 h 20 min.
        CureSchedule cure = LightLid();
        Digits.Close((19 * 60) + 20, cure.Total.Minutes);
        Digits.Close(60, cure.Segments[1].Lasts.Minutes);
        Digits.Close(13 * 60, cure.Segments[1].End.Minutes);
        Digits.Close(50, cure.Peak.DegreesCelsius);
    }

    [Theory]
    [InlineData(0, 20)]
    [InlineData(720, 20)]
    [InlineData(735, 27.5)]
    [InlineData(780, 50)]
    [InlineData(1100, 50)]
    [InlineData(1150, 40)]
    [InlineData(1160, 30)]
    [InlineData(9999, 30)]
    public void Temperature_runs_straight_between_the_steps(double minutes, double celsius) =>
        Digits.Close(celsius, LightLid().TemperatureAt(Duration.FromMinutes(minutes)).DegreesCelsius, 1e-7);

    [Fact]
    public void A_hold_at_another_temperature_starts_at_once()
    {
        CureSchedule cure = CureSchedule.Create(
            C(20), [new HoldStep(C(20), Duration.FromHours(1)), new HoldStep(C(60), Duration.FromHours(2))]);
        Digits.Close(60, cure.TemperatureAt(Duration.FromHours(1)).DegreesCelsius);
    }

    [Fact]
    public void Rates_in_Fahrenheit_are_differences()
    {
        // NIST SP 811: a difference of 1 degF is 1/1.8 K. US Army TM 1-1500-204-23-11 dries at no more than 10 degF/min:
        // 70 to 250 degF takes 18 min.
        CureSchedule dry = CureSchedule.Create(
            Temperature.FromDegreesFahrenheit(70),
            [new RampStep(Temperature.FromDegreesFahrenheit(250), PerMinute(10 / 1.8))]);
        Digits.Close(18, dry.Total.Minutes);
    }

    [Fact]
    public void A_ramp_may_go_down_and_an_empty_schedule_stays_where_it_is()
    {
        CureSchedule down = CureSchedule.Create(C(80), [new RampStep(C(20), PerMinute(2))]);
        Digits.Close(30, down.Total.Minutes);
        Digits.Close(80, down.Peak.DegreesCelsius);

        CureSchedule none = CureSchedule.Create(C(21), []);
        Assert.Equal(Duration.Zero, none.Total);
        Digits.Close(21, none.TemperatureAt(Duration.FromHours(5)).DegreesCelsius);
        Digits.Close(21, none.Peak.DegreesCelsius);
    }

    [Fact]
    public void The_set_temperature_never_leaves_its_steps_and_lasts_their_sum()
    {
        Gen.Select(Gen.Int[0, 2], Gen.Double[0, 180], Gen.Double[0.1, 20]).Array[1, 8].Sample(
            drawn =>
            {
                double now = 20;
                List<ScheduleStep> steps = [];
                foreach ((int kind, double celsius, double amount) in drawn)
                {
                    double to = kind == 2 ? Math.Min(now, celsius) : celsius;
                    steps.Add(kind switch
                    {
                        0 => new HoldStep(C(to), Duration.FromMinutes(amount)),
                        1 => new RampStep(C(to), PerMinute(amount)),
                        _ => new CoolStep(C(to), PerMinute(amount)),
                    });
                    now = to;
                }

                CureSchedule cure = CureSchedule.Create(C(20), steps);
                Digits.Close(cure.Segments.Sum(s => s.Lasts.Seconds) + 1e-6, cure.Total.Seconds + 1e-6);
                foreach (ScheduleSegment segment in cure.Segments)
                {
                    double middle = segment.Start.Seconds + (segment.Lasts.Seconds / 2);
                    double there = cure.TemperatureAt(Duration.FromSeconds(middle)).DegreesCelsius;
                    double straight = (segment.From.DegreesCelsius + segment.To.DegreesCelsius) / 2;
                    Assert.True(segment.Lasts.Seconds < 1e-6 || Math.Abs(there - straight) < 1e-6);
                    Assert.True(there <= cure.Peak.DegreesCelsius + 1e-9);
                }
            },
            iter: 1000);
    }

    /// <summary>Common practice: twice as fast for each 10 K more. 6 h at 20, then 9 h at 30 degC, are worth 24 h at 20 degC.</summary>
    [Fact]
    public void Warm_hours_count_for_more()
    {
        CureSchedule cure = CureSchedule.Create(C(20), [new HoldStep(C(20), Duration.FromHours(6)), new HoldStep(C(30), Duration.FromHours(10))]);
        Assert.Equal(15, cure.TimeWorth(Duration.FromHours(24), C(20))!.Value.Hours, 1e-9);
        Assert.Equal(3, cure.TimeWorth(Duration.FromHours(1.5), C(30))!.Value.Hours, 1e-9);
        Assert.Null(cure.TimeWorth(Duration.FromHours(26.1), C(20)));
        Assert.Equal(0, cure.TimeWorth(Duration.Zero, C(20))!.Value.Hours);
        Assert.Throws<ArgumentOutOfRangeException>(() => cure.TimeWorth(Duration.FromHours(-1), C(20)));
    }

    /// <summary>
    /// The integral of 2^((T - 20)/10) by hand: up at 10 K/h the first 4.1397 h are worth (2^4.1397 - 1)/ln 2 = 24 h at 20 degC, where the mean
    /// temperature of the whole ramp would let the part go an hour too early. Down again the same hours count, the warm ones first.
    /// </summary>
    [Fact]
    public void A_ramp_counts_as_warm_as_it_is_at_each_moment()
    {
        CureSchedule up = CureSchedule.Create(C(20), [new RampStep(C(80), TemperatureChangeRate.FromDegreesCelsiusPerHour(10))]);
        double hours = Math.Log2(1 + (24 * Math.Log(2)));
        Assert.Equal(hours, up.TimeWorth(Duration.FromHours(24), C(20))!.Value.Hours, 1e-9);
        double whole = (Math.Pow(2, 6) - 1) / Math.Log(2);
        Assert.Equal(6, up.TimeWorth(Duration.FromHours(whole * (1 - 1e-12)), C(20))!.Value.Hours, 1e-9);
        Assert.Null(up.TimeWorth(Duration.FromHours(whole * (1 + 1e-9)), C(20)));

        CureSchedule down = CureSchedule.Create(C(80), [new CoolStep(C(20), TemperatureChangeRate.FromDegreesCelsiusPerHour(10))]);
        Assert.Equal(6 - hours, down.TimeWorth(Duration.FromHours(whole - 24), C(20))!.Value.Hours, 1e-9);
    }

    [Fact]
    public void Steps_that_cannot_be_are_refused()
    {
        Assert.Throws<ArgumentOutOfRangeException>(() => CureSchedule.Create(C(20), [new CoolStep(C(30), PerMinute(1))]));
        Assert.Throws<ArgumentOutOfRangeException>(() => CureSchedule.Create(C(20), [new RampStep(C(30), PerMinute(0))]));
        Assert.Throws<ArgumentOutOfRangeException>(
            () => CureSchedule.Create(C(20), [new HoldStep(C(30), Duration.FromMinutes(-1))]));
        Assert.Throws<ArgumentOutOfRangeException>(() => CureSchedule.Create(C(-300), []));
        Assert.Throws<ArgumentOutOfRangeException>(() => LightLid().TemperatureAt(Duration.FromMinutes(-1)));
    }
}
