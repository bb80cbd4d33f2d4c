using BenchmarkDotNet.Attributes;
using Recipe.Engineering;
using UnitsNet;

namespace Recipe.Benchmarks;

/// <summary>
/// The cure of a part: what one evaluation of a plan pays. The aim is well under a millisecond for a schedule.
/// </summary>
[MemoryDiagnoser]
public class CureBenchmarks
{
    private CureKinetics _room = null!;
    private CureSchedule _oven = null!;
    private CureSchedule _day = null!;
    private CureOptions _braked = null!;

    [GlobalSetup]
    public void MakeResin()
    {
        _room = new KamalSourour(
            Frequency.FromHertz(1.233e5 / 60),
            TemperatureDelta.FromKelvins(6014),
            Frequency.FromHertz(6.165e6 / 60),
            TemperatureDelta.FromKelvins(5773),
            1,
            2);
        Temperature room = Temperature.FromDegreesCelsius(20);
        Temperature warm = Temperature.FromDegreesCelsius(50);
        TemperatureChangeRate rate = TemperatureChangeRate.FromDegreesCelsiusPerMinute(0.5);
        _day = CureSchedule.Create(room, [new HoldStep(room, Duration.FromHours(24))]);
        _oven = CureSchedule.Create(
            room,
            [new HoldStep(room, Duration.FromHours(12)), new RampStep(warm, rate), new HoldStep(warm, Duration.FromHours(16)), new CoolStep(room, rate)]);
        _braked = new CureOptions { GlassTransition = new DiBenedetto(DiBenedetto.UsualUncured, Temperature.FromDegreesCelsius(85)), Brake = DiffusionBrake.Usual };
    }

    /// <summary>A night in the room, a ramp, a post-cure, a cooling: chemistry alone.</summary>
    [Benchmark]
    public CureCurve Free() => CureSimulation.Along(_room, _oven);

    /// <summary>The same with glass transition and brake.</summary>
    [Benchmark]
    public CureCurve Braked() => CureSimulation.Along(_room, _oven, _braked);

    /// <summary>The brake fitted to a data sheet.</summary>
    [Benchmark]
    public GlassTransitionFit Fit() =>
        DiffusionBrake.Through(_room, _day, Temperature.FromDegreesCelsius(52), Temperature.FromDegreesCelsius(85));
}
