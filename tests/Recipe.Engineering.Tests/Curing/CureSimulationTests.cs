using CsCheck;
using UnitsNet;
using static Recipe.Engineering.Tests.Cures;

namespace Recipe.Engineering.Tests;

public class CureSimulationTests
{
    private static readonly Gen<CureKinetics> Resin = Gen.Select(
        Gen.Double[2, 6], Gen.Double[5000, 7000], Gen.Double[4, 7], Gen.Double[5000, 7000], Gen.Double[0.5, 2], Gen.Double[1, 2.5]).Select(
        (a1, e1, a2, e2, m, n) => Kamal(Math.Pow(10, a1) / 60, e1, Math.Pow(10, a2) / 60, e2, m, n));

    private static readonly Gen<double[]> Celsius = Gen.Double[5, 90].Array[2, 6];

    // Form of Kamal and Sourour (1973), constants for the test only; degrees computed by an independent program (RK4).
    [Theory]
    [InlineData(60, 0.011116)]
    [InlineData(480, 0.60169)]
    [InlineData(1440, 0.9267)]
    public void An_autocatalytic_cure_at_room_temperature_agrees(double minutes, double degree) =>
        Within(degree, CureSimulation.Along(Test, Hold(23, 1440)).At(minutes), 1e-5);

    [Fact]
    public void The_closed_form_for_orders_of_one_is_met()
    {
        // m = n = 1: a = (1 - exp(-(k1+k2) t)) / (1 + (k2/k1) exp(-(k1+k2) t)).
        const double k1 = 1e-5;
        const double k2 = 4e-4;
        CureCurve cure = CureSimulation.Along(Kamal(k1, 0, k2, 0, 1, 1), Hold(23, 1000));
        for (double minutes = 0; minutes <= 1000; minutes += 7)
        {
            double fall = Math.Exp(-(k1 + k2) * 60 * minutes);
            double exact = (1 - fall) / (1 + (k2 / k1 * fall));
            Within(exact, cure.At(minutes), 1e-7);
            if (exact is > 1e-6 and < 0.999)
            {
                Within(minutes, cure.TimeTo(Part(exact))!.Value.Minutes, 0.02);
            }
        }
    }

    [Theory]
    [InlineData(false, false)]
    [InlineData(true, false)]
    [InlineData(false, true)]
    public void A_fine_step_of_another_method_agrees_along_an_oven_cycle(bool hot, bool braked)
    {
        CureKinetics model = hot ? new LeeLoosSpringer() : Slow;
        CureSchedule schedule = hot ? Oven(95, 177, 2, 120) : Oven(20, 60, 0.5, 600);
        CureOptions options = braked ? SlowOptions : new CureOptions();
        CureCurve cure = CureSimulation.Along(model, schedule, options);
        double total = schedule.Total.Seconds;
        double[] fine = FineSteps(model, schedule, options, 400_000);
        for (int i = 0; i <= 20; i++)
        {
            Within(fine[i * 20_000], cure.DegreeAt(Duration.FromSeconds(total * i / 20)).DecimalFractions, 1e-6);
        }
    }

    // Ordinary fourth-order Runge-Kutta by the public rates; small enough steps make nothing of the jump at 0.3.
    private static double[] FineSteps(CureKinetics model, CureSchedule schedule, CureOptions options, int count)
    {
        double h = schedule.Total.Seconds / count;
        double[] pieces = [.. schedule.Segments.Select(s => s.End.Seconds)];
        double[] degrees = new double[count + 1];
        double Rate(double a, double seconds, ScheduleSegment segment)
        {
            double share = (seconds - segment.Start.Seconds) / segment.Lasts.Seconds;
            Temperature now = C(segment.From.DegreesCelsius + (share * (segment.To.DegreesCelsius - segment.From.DegreesCelsius)));
            Frequency chemical = model.RateAt(Part(a), now);
            return (options.Brake is { } brake ? brake.Slow(chemical, now, options.GlassTransition!.At(Part(a))) : chemical).Hertz;
        }

        for (int i = 0; i < count; i++)
        {
            double t = i * h;
            double a = degrees[i];
            ScheduleSegment segment = schedule.Segments[Array.FindIndex(pieces, end => t + (h / 2) < end)];
            double k1 = Rate(a, t, segment);
            double k2 = Rate(a + (h / 2 * k1), t + (h / 2), segment);
            double k3 = Rate(a + (h / 2 * k2), t + (h / 2), segment);
            double k4 = Rate(a + (h * k3), t + h, segment);
            degrees[i + 1] = a + (h / 6 * (k1 + (2 * k2) + (2 * k3) + k4));
        }

        return degrees;
    }

    [Fact]
    public void The_degree_never_falls_and_never_passes_one() =>
        Gen.Select(Resin, Celsius, Gen.Bool).Sample(
            (resin, celsius, braked) =>
            {
                CureOptions options = braked
                    ? new CureOptions { GlassTransition = new DiBenedetto(C(-35), C(85)), Brake = DiffusionBrake.Usual }
                    : new CureOptions();
                CureCurve cure = CureSimulation.Along(resin, Steps(celsius), options);
                double before = 0;
                for (int i = 0; i <= 200; i++)
                {
                    double minutes = cure.Total.Minutes * i / 200;
                    double degree = cure.At(minutes);

                    // Within a step the interpolant may waver by less than the error of a step, which is 5e-9.
                    Assert.True(degree >= before - 1e-8 && degree <= 1, FormattableString.Invariant($"{before:R} then {degree:R} at {minutes:R} min"));
                    before = Math.Max(before, degree);
                }

                Assert.True(before > 0);
            },
            iter: 300);

    [Fact]
    public void Hotter_is_further() =>
        Gen.Select(Resin, Celsius, Gen.Double[0.5, 20], Gen.Bool).Sample(
            (resin, celsius, warmer, braked) =>
            {
                CureOptions options = braked
                    ? new CureOptions { GlassTransition = new DiBenedetto(C(-35), C(85)), Brake = DiffusionBrake.Usual }
                    : new CureOptions();
                double cool = CureSimulation.Along(resin, Steps(celsius), options).FinalDegree.DecimalFractions;
                double warm = CureSimulation.Along(resin, Steps([.. celsius.Select(c => c + warmer)]), options).FinalDegree.DecimalFractions;
                Assert.True(warm > cool - 1e-6);
                Assert.True(warm > cool || cool > 0.99);
            },
            iter: 300);

    [Fact]
    public void A_schedule_in_two_halves_ends_alike() =>
        Gen.Select(Resin, Celsius, Gen.Int[1, 4]).Sample(
            (resin, celsius, cut) =>
            {
                cut = Math.Min(cut, celsius.Length - 1);
                double whole = CureSimulation.Along(resin, Steps(celsius)).FinalDegree.DecimalFractions;
                Ratio half = CureSimulation.Along(resin, Steps(celsius[..cut])).FinalDegree;
                CureSchedule rest = CureSchedule.Create(C(celsius[cut - 1]), [.. Steps(celsius).Segments.Skip(2 * cut).Select(s => s.Step)]);
                Within(whole, CureSimulation.Along(resin, rest, new CureOptions { Start = half }).FinalDegree.DecimalFractions, 1e-6);
            },
            iter: 300);

    [Fact]
    public void The_time_to_a_degree_is_the_time_at_which_it_has_it() =>
        Gen.Select(Resin, Celsius, Gen.Double[0, 1]).Sample(
            (resin, celsius, degree) =>
            {
                CureCurve cure = CureSimulation.Along(resin, Steps(celsius));
                Duration? time = cure.TimeTo(Part(degree));
                Assert.Equal(degree > cure.FinalDegree.DecimalFractions, time is null);
                if (time is { } t)
                {
                    Within(degree, cure.DegreeAt(t).DecimalFractions, 1e-7);
                }
            },
            iter: 300);

    [Fact]
    public void The_ends_are_the_ends()
    {
        CureCurve none = CureSimulation.Along(Slow, CureSchedule.Create(C(20), []), SlowOptions with { Start = Part(0.4) });
        Digits.Close(0.4, none.FinalDegree.DecimalFractions);
        Digits.Close(0.4, none.At(0));
        Assert.Null(none.TimeTo(Part(0.5)));
        Assert.Equal(Duration.Zero, none.TimeTo(Part(0.3)));

        CureCurve full = CureSimulation.Along(Slow, Day, new CureOptions { Start = Part(1) });
        Assert.Equal(1, full.FinalDegree.DecimalFractions);
        Assert.Equal(1, full.At(700));
        Assert.Null(full.GlassTransitionAt(Min(5)));
        Assert.Null(full.Vitrification);
        Assert.Equal(24 * 60, full.Total.Minutes, 9);

        CureCurve oven = CureSimulation.Along(Slow, Oven(20, 60, 0.5, 600), SlowOptions);
        Digits.Close(820, oven.Total.Minutes);
        Digits.Close(60 + 273.15, oven.TemperatureAt(Min(410)).Kelvins);
        Assert.NotNull(oven.GlassTransitionAt(Min(410)));
    }

    [Fact]
    public void Questions_that_have_no_answer_are_refused()
    {
        CureCurve cure = CureSimulation.Along(Slow, Day);
        Assert.Throws<ArgumentOutOfRangeException>(() => cure.DegreeAt(Min(-1)));
        Assert.Throws<ArgumentOutOfRangeException>(() => cure.DegreeAt(Duration.FromHours(25)));
        Assert.Throws<ArgumentOutOfRangeException>(() => cure.TimeTo(Part(1.2)));
        Assert.Throws<ArgumentException>(() => CureSimulation.Along(Slow, Day, new CureOptions { Brake = DiffusionBrake.Usual }));
        Assert.Throws<ArgumentOutOfRangeException>(() => CureSimulation.Along(Slow, Day, new CureOptions { Start = Part(-0.1) }));
        Assert.Throws<ArgumentOutOfRangeException>(() => CureSimulation.Along(Slow, Hold(400, 1)));
    }

    // A ramp of an hour or less to each temperature, then an hour there.
    private static CureSchedule Steps(double[] celsius) => CureSchedule.Create(
        C(20),
        [
            .. celsius.SelectMany(to => new ScheduleStep[] { new RampStep(C(to), PerMinute(2)), new HoldStep(C(to), Min(60)) }),
        ]);
}
