using BenchmarkDotNet.Attributes;
using Recipe.Engineering;
using UnitsNet;

namespace Recipe.Benchmarks;

/// <summary>
/// A stack of eight plies: what one evaluation of a plan pays. The aim is 5 microseconds for A, B, D and the whole inverse.
/// </summary>
[MemoryDiagnoser]
public class LaminateBenchmarks
{
    private static readonly double[] Degrees = [0, 45, -45, 90, 90, -45, 45, 0];

    private LaminatePly[] _parallel = [];
    private LaminatePly[] _woven = [];
    private Laminate _laminate = null!;
    private WetCloth _cloth = null!;

    [GlobalSetup]
    public void MakePlies()
    {
        _cloth = new WetCloth(
            AreaDensity.FromGramsPerSquareMeter(200),
            FibreConstants.Isotropic(Pressure.FromGigapascals(72), 0.22, Density.FromKilogramsPerCubicMeter(2540)),
            new ResinConstants(Pressure.FromGigapascals(3.2), 0.35, Density.FromKilogramsPerCubicMeter(1150)),
            Ratio.FromPercent(45),
            new StrainLimits(StretchAlong: Ratio.FromPercent(2), PressAlong: Ratio.FromPercent(1.5)));
        _parallel = [.. Degrees.Select(angle => Plies.Unidirectional(_cloth, Angle.FromDegrees(angle)))];
        _woven = [.. Degrees.Select(angle => Plies.Woven(_cloth, Ratio.FromPercent(50), Angle.FromDegrees(angle)))];
        _laminate = new Laminate(_parallel);
    }

    /// <summary>A, B, D and the inverse of eight plies of parallel fibre.</summary>
    [Benchmark]
    public Laminate Parallel() => new(_parallel);

    /// <summary>The same of eight woven plies, forty layers.</summary>
    [Benchmark]
    public Laminate Woven() => new(_woven);

    /// <summary>One woven ply from cloth, fibre and resin.</summary>
    [Benchmark]
    public LaminatePly MakeWoven() => Plies.Woven(_cloth, Ratio.FromPercent(50), Angle.FromDegrees(30));

    /// <summary>Eight plies, each taken out in turn.</summary>
    [Benchmark]
    public IReadOnlyList<PlyContribution> Contribute() => Contributions.Of(_laminate);

    /// <summary>The first limit that a pull reaches.</summary>
    [Benchmark]
    public FirstPlyAnswer Margin() => FirstPly.Margin(_laminate, new LaminateLoad(Nx: ForcePerLength.FromNewtonsPerMeter(1000)));
}
