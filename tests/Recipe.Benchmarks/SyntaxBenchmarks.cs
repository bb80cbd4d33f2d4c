using BenchmarkDotNet.Attributes;
using Recipe.Syntax;
using Recipe.TestKit;
using Recipe.Text;

namespace Recipe.Benchmarks;

/// <summary>
/// Reading and laying out recipe lines as people write them. One operation is one line: 2,000 ns are 500,000 lines a second.
/// Run with: dotnet run -c Release --project tests/Recipe.Benchmarks -- --filter '*SyntaxBenchmarks*'
/// </summary>
[MemoryDiagnoser]
public class SyntaxBenchmarks
{
    private const int Lines = 20_000;

    private SourceText _source = null!;
    private SyntaxTree _tree = null!;

    [GlobalSetup]
    public void Setup()
    {
        var whole = string.Concat(new[] { "hatch-lid", "resin" }.Select(name => Repository.Read($"tests/Recipe.Syntax.Tests/cases/{name}/input.recipe")));
        var lines = whole.Count(c => c == '\n');

        // Only whole files, so that every block is closed; the lines that are then left of the number are named values.
        var text = string.Concat(Enumerable.Repeat(whole, Lines / lines)) + string.Concat(Enumerable.Repeat("let lap = 20 mm\n", Lines % lines));
        _source = new SourceText("all.recipe", text);
        _tree = SyntaxTree.Parse(_source);
    }

    [Benchmark(OperationsPerInvoke = Lines)]
    public SyntaxTree Parse() => SyntaxTree.Parse(_source);

    [Benchmark(OperationsPerInvoke = Lines)]
    public string Format() => Formatter.Format(_tree);

    [Benchmark(OperationsPerInvoke = Lines)]
    public string ParseAndFormat() => Formatter.Format(SyntaxTree.Parse(_source));
}
