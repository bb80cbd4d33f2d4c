using BenchmarkDotNet.Attributes;
using Recipe.Compiler;
using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Benchmarks;

/// <summary>
/// From text to meaning: the book, one recipe, and a folder of a thousand files of a hundred lines that use one shop file. The
/// budgets are 1 ms for one recipe and 0.5 s for the folder, parsed and bound on one core.
/// </summary>
[MemoryDiagnoser]
public class BindingBenchmarks
{
    private const int Files = 1000;
    private const int Lines = 100;

    private readonly SourceText _recipe = Read("hatch-lid.recipe");
    private readonly SourceText _shop = Read("shop.recipe");
    private readonly SourceText[] _folder = [.. Enumerable.Range(0, Files).Select(i => new SourceText($"lid-{i}.recipe", OneOfMany()))];
    private readonly SyntaxTree _shopTree = SyntaxTree.Parse(Read("shop.recipe"));

    /// <summary>Indexes the parsed book; nothing in it is bound.</summary>
    [Benchmark]
    public Book IndexBook() => Book.Bind(ShippedTexts.Book.Files);

    /// <summary>Binds every entry of the book.</summary>
    [Benchmark]
    public int BindWholeBook() => Book.Bind(ShippedTexts.Book.Files).Findings.Length;

    /// <summary>One recipe and the shop it uses, both from their texts; the book is bound already.</summary>
    [Benchmark]
    public BoundFile RecipeAndShop() => Binder.Bind(SyntaxTree.Parse(_recipe), ShippedTexts.Book, Using(SyntaxTree.Parse(_shop)));

    /// <summary>Parses the folder.</summary>
    [Benchmark]
    public int ParseFolder() => _folder.Sum(text => SyntaxTree.Parse(text).Findings.Length);

    /// <summary>Parses and binds the folder.</summary>
    [Benchmark]
    public int ParseAndBindFolder()
    {
        var uses = Using(_shopTree);
        return _folder.Sum(text => Binder.Bind(SyntaxTree.Parse(text), ShippedTexts.Book, uses).Findings.Length);
    }

    private static UseScope Using(SyntaxTree shop) => new((_, path) => path == "shop.recipe" ? shop : null);

    /// <summary>The sample down to its part, which is about a hundred lines.</summary>
    private static string OneOfMany()
    {
        var text = Read("hatch-lid.recipe").Text;
        var part = text[..text.IndexOf("variant ", StringComparison.Ordinal)];
        var missing = Lines - part.Split('\n').Length;
        return part + string.Concat(Enumerable.Repeat("# padding\n", Math.Max(missing, 0)));
    }

    private static SourceText Read(string name)
    {
        using var stream = typeof(BindingBenchmarks).Assembly.GetManifestResourceStream(name)!;
        using var reader = new StreamReader(stream);
        return new SourceText(name, reader.ReadToEnd());
    }
}
