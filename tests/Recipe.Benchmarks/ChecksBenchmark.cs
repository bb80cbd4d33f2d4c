using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using Recipe.Checks;
using Recipe.Compiler;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;

namespace Recipe.Benchmarks;

/// <summary>All checks on one part that is planned already: a sound one, and one with a mistake of every family.</summary>
[MemoryDiagnoser]
public class ChecksBenchmark
{
    private static readonly DateOnly Today = new(2026, 5, 14);
    private RecipeModel _model = null!;
    private ImmutableArray<Plan> _plans;
    private ImmutableArray<Finding> _earlier;

    /// <summary>The file whose first part is checked.</summary>
    [Params("samples/hatch-lid.recipe", "samples/mistakes/hatch-lid.recipe")]
    public string Path { get; set; } = "";

    /// <summary>Reads, binds and plans the file.</summary>
    [GlobalSetup]
    public void Prepare()
    {
        if (!new Workspace(new RepositoryFiles(), Today).TryCompile(Path, out var file))
        {
            throw new FileNotFoundException(Path);
        }

        _model = file.Bound.Model;
        _plans = [file.Plans[0]];
        _earlier = [.. file.Tree.Findings, .. file.Bound.Findings];
    }

    /// <summary>Runs every check of the catalogue. The target is less than 2 ms.</summary>
    [Benchmark]
    public CheckReport AllChecksOnOnePart() => CheckRunner.Run(_plans, _model, Today, earlier: _earlier);
}
