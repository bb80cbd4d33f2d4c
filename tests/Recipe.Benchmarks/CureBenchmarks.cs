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
    private ExothermicResin _mix = null!;
    private ThickLaminate _thick = null!;
    private LaminateFaceHeat _face = null!;

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
        _mix = new ExothermicResin(_room, SpecificEnergy.FromJoulesPerKilogram(450_000));
        _thick = new ThickLaminate(_mix, Length.FromMillimeters(20), Ratio.FromPercent(50));
        _face = new LaminateFaceHeat(_day, HeatTransferCoefficient.FromWattsPerSquareMeterKelvin(15));
        _braked = new CureOptions
        {
            GlassTransition = new DiBenedetto(DiBenedetto.UsualUncured, Temperature.FromDegreesCelsius(85)),
            Brake = DiffusionBrake.Usual,
        };
    }

    /// <summary>A night in the room, a ramp, a post-cure, a cooling: chemistry alone.</summary>
    [Benchmark]
    public CureCurve Free() => CureSimulation.Along(_room, _oven);

    /// <summary>The same with glass transition and brake.</summary>
    [Benchmark]
    public CureCurve Braked() => CureSimulation.Along(_room, _oven, _braked);

    /// <summary>A cup of 500 g through its runaway and back, twelve hours.</summary>
    [Benchmark]
    public PotCurve Cup() => PotModel.Along(
        _mix, new Pot(Mass.FromGrams(500), Temperature.FromDegreesCelsius(23)), Duration.FromHours(12));

    /// <summary>What a data sheet's pot life means, and the life of another pot by it.</summary>
    [Benchmark]
    public Duration? LifeByTheSheet() => SheetPot
        .OfPotLife(_mix, new PotLifeReference(Duration.FromMinutes(60), Temperature.FromDegreesCelsius(23), Mass.FromGrams(100)))
        .LifeOf(new Pot(Mass.FromGrams(300), Temperature.FromDegreesCelsius(28)));

    /// <summary>A laminate of 20 mm, a day, twenty cells.</summary>
    [Benchmark]
    public ThickCure Thick() => ThickCureSimulation.Along(_thick, _face, _face, Temperature.FromDegreesCelsius(20));

    /// <summary>The brake fitted to a data sheet.</summary>
    [Benchmark]
    public GlassTransitionFit Fit() =>
        DiffusionBrake.Through(_room, _day, Temperature.FromDegreesCelsius(52), Temperature.FromDegreesCelsius(85));
}
