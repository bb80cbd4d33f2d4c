using BenchmarkDotNet.Attributes;
using Recipe.Compiler;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Benchmarks;

/// <summary>The plan of one part, its meaning already known: what an editor pays after every key. The budget is 5 ms.</summary>
[MemoryDiagnoser]
public class PlanBenchmarks
{
    private Part _part = null!;
    private RecipeModel _model = null!;

    /// <summary>A sample: the first part of its file is planned.</summary>
    [Params("hatch-lid", "instrument-housing", "rudder-cheek", "telescope-tube")]
    public string Sample { get; set; } = string.Empty;

    [GlobalSetup]
    public void Bind()
    {
        if (!new Workspace(new RepositoryFiles(), new DateOnly(2026, 5, 14)).TryCompile($"samples/{Sample}.recipe", out var file))
        {
            throw new InvalidOperationException($"The sample {Sample} cannot be read.");
        }

        _model = file.Bound.Model;
        _part = _model.Parts[0];
    }

    [Benchmark]
    public Plan Plan() => Planner.Plan(_part, _model);
}
