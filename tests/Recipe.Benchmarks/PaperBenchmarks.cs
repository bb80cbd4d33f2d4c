using BenchmarkDotNet.Attributes;
using Recipe.Compiler;

namespace Recipe.Benchmarks;

/// <summary>
/// All papers of one part, warm, in one format or in all of them. The budget is 150 ms for all of them, started anew; that is what
/// the published binary is measured for.
/// </summary>
[MemoryDiagnoser]
public class PaperBenchmarks
{
    private CompiledFile _file = null!;

    /// <summary>A format, or all.</summary>
    [Params("all", "pdf", "html", "md", "xlsx", "svg", "json")]
    public string Format { get; set; } = string.Empty;

    [GlobalSetup]
    public void Compile()
    {
        if (!new Workspace(new RepositoryFiles(), new DateOnly(2026, 5, 14)).TryCompile("samples/hatch-lid.recipe", out var file))
        {
            throw new InvalidOperationException("The sample cannot be read.");
        }

        _file = file;
    }

    [Benchmark]
    public int Write() => BenchPapers.Write(_file, new PaperWish { Part = "hatch-lid", Formats = Format == "all" ? [] : [Format] }).Sum(paper => paper.Bytes.Length);
}

/// <summary>All papers of 100 parts in all formats, several parts at a time. The budget is 5 s on two cores.</summary>
[MemoryDiagnoser]
public class ManyPapersBenchmark
{
    private const int Parts = 100;

    private CompiledFile _file = null!;

    [GlobalSetup]
    public void Compile()
    {
        if (!new Workspace(new RepositoryFiles(), new DateOnly(2026, 5, 14)).TryCompile("samples/hatch-lid.recipe", out var file))
        {
            throw new InvalidOperationException("The sample cannot be read.");
        }

        _file = file;
    }

    [Benchmark]
    public long Write()
    {
        var written = 0L;
        BenchPapers.WriteAll([.. Enumerable.Repeat(_file, Parts)], new PaperWish { Part = "hatch-lid" }, part => Interlocked.Add(ref written, part.Papers.Sum(paper => (long)paper.Bytes.Length)));
        return written;
    }
}
