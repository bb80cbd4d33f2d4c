using System.Collections.Concurrent;
using Recipe.Model;
using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.TestKit;
using Recipe.Text;

namespace Recipe.Planning.Tests;

/// <summary>The samples, the sound corpus and the starting points of the repository, from their text with the shipped book to their plans.</summary>
internal static class Corpus
{
    private static readonly Lazy<Book> Shipped = new(() => Book.Bind(Files("src/Recipe.Compiler/Book").Select(Tree)));
    private static readonly ConcurrentDictionary<string, Lazy<RecipeModel>> Models = new(StringComparer.Ordinal);

    /// <summary>Every recipe in which there is nothing to find, as a path from the root.</summary>
    public static IReadOnlyList<string> Sound { get; } = [.. Files("samples"), .. Files("tests/corpus/sound"), .. Files("src/Recipe.Compiler/Templates")];

    /// <summary>What a recipe means.</summary>
    public static RecipeModel Model(string path) => Models.GetOrAdd(path, static p => new Lazy<RecipeModel>(() => Bind(p))).Value;

    /// <summary>The plan of one part of it.</summary>
    public static Plan Plan(string path, string part)
    {
        var model = Model(path);
        return Planner.Plan(model.Parts.Single(p => p.Name == part), model);
    }

    /// <summary>The rows of a table of the corpus, comments and head left out.</summary>
    public static IEnumerable<string[]> Table(string path) =>
        Repository.Read(path).Split('\n', StringSplitOptions.RemoveEmptyEntries).Where(line => line[0] != '#').Skip(1).Select(line => line.Split('\t'));

    private static string[] Files(string folder) =>
        [.. Directory.EnumerateFiles(Repository.PathOf(folder), "*.recipe").Select(f => $"{folder}/{Path.GetFileName(f)}").Order(StringComparer.Ordinal)];

    private static SyntaxTree Tree(string path) => SyntaxTree.Parse(new SourceText(path, Repository.Read(path)));

    /// <summary>The plan of the only part of a text that must be sound.</summary>
    public static Plan PlanOf(string text)
    {
        var model = ModelOf(text, null);
        return Planner.Plan(Assert.Single(model.Parts), model);
    }

    /// <summary>What a sound text means that may name one file of a shape.</summary>
    public static RecipeModel ModelOf(string text, ShapeFile? shape)
    {
        var tree = SyntaxTree.Parse(new SourceText("this.recipe", text));
        var bound = Binder.Bind(tree, Shipped.Value, new UseScope((_, _) => null, (_, _) => shape));
        Assert.Empty(tree.Findings.Concat(bound.Findings).Select(finding => finding.Message));
        return bound.Model;
    }

    // The samples only use files of their own folder.
    private static RecipeModel Bind(string path)
    {
        var tree = Tree(path);
        Assert.Empty(tree.Findings);
        var bound = Binder.Bind(tree, Shipped.Value, new UseScope((from, used) => Tree($"{Path.GetDirectoryName(from)!.Replace('\\', '/')}/{used}")));
        Assert.Empty(bound.Findings);
        return bound.Model;
    }
}
