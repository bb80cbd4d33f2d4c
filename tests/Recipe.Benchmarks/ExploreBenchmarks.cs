using BenchmarkDotNet.Attributes;
using Recipe.Compiler;
using Recipe.Engineering;
using Recipe.Planning.Exploring;

namespace Recipe.Benchmarks;

/// <summary>Exploring: one candidate, and the front of 100,000 points. The budget of 100,000 candidates is 60 s on two cores: 1.2 ms each.</summary>
[MemoryDiagnoser]
public class ExploreBenchmarks
{
    private const int Points = 100_000;
    private CandidatePlanner _planner = null!;
    private ParetoPoint[] _scattered = null!;
    private ParetoPoint[] _allFront = null!;
    private long _next;

    [GlobalSetup]
    public void Bind()
    {
        if (!new Workspace(new RepositoryFiles(), new DateOnly(2026, 5, 14)).TryCompile("samples/hatch-lid-lighter.recipe", out var file))
        {
            throw new InvalidOperationException("The sample cannot be read.");
        }

        _planner = new CandidatePlanner(file.Bound.Model.Studies[0], file.Bound.Model);
        var random = new Random(1);
        _scattered = [.. Enumerable.Range(0, Points).Select(i => new ParetoPoint(i, [random.NextDouble(), random.NextDouble(), random.NextDouble()]))];
        _allFront = [.. _scattered.Select(point => point with { Values = [point.Values[0], point.Values[1], -point.Values[0] - point.Values[1]] })];
    }

    [Benchmark]
    public Candidate OneCandidate() => _planner.Look(_next++ % _planner.Study.Candidates);

    [Benchmark]
    public int FrontOf100000() => ParetoFront.Of(_scattered).Length;

    [Benchmark]
    public int FrontOf100000AllOnIt() => ParetoFront.Of(_allFront).Length;
}
