using Recipe.Semantics.Schema;
using Recipe.TestKit;

namespace Recipe.Semantics.Tests.Editors;

/// <summary>The highlighting of every editor knows the words of the schema and the units of the table, and no others.</summary>
public sealed class EditorWordsTests
{
    public static TheoryData<string> Paths => [.. EditorFile.All.Select(file => file.RelativePath)];

    [Theory]
    [MemberData(nameof(Paths))]
    public void The_lists_of_words_are_fresh(string path)
    {
        var file = EditorFile.All.Single(one => one.RelativePath == path);
        var fresh = file.Fresh();
        if (Environment.GetEnvironmentVariable("RECIPE_UPDATE_GOLDENS") == "1" && fresh != file.Text)
        {
            File.WriteAllText(Repository.PathOf(path), fresh);
            return;
        }

        Assert.Equal(fresh, file.Text);
    }

    /// <summary>Tree-sitter has its words in the query and its units in the grammar; every other file has all lists.</summary>
    [Fact]
    public void No_list_is_missing()
    {
        var isTreeSitter = EditorFile.All.ToLookup(file => file.RelativePath.Contains("tree-sitter", StringComparison.Ordinal));

        Assert.All(isTreeSitter[false], file => Assert.Empty(EditorWords.Lists.Keys.Except(file.Names())));
        Assert.Empty(EditorWords.Lists.Keys.Except(isTreeSitter[true].SelectMany(file => file.Names())));
    }

    [Fact]
    public void Every_word_that_may_begin_a_line_is_in_a_list()
    {
        var known = EditorWords.Declarations.Concat(EditorWords.Directives).Concat(EditorWords.Blocks).Concat(EditorWords.Lines).ToHashSet();

        Assert.Empty(RecipeSchema.Blocks.SelectMany(b => b.Words).Select(w => w.Word).Except(known));
    }

    [Fact]
    public void Declarations_and_directives_are_told_apart()
    {
        Assert.Superset(new HashSet<string> { "part", "mould", "resin", "variant", "shop", "build", "peel-ply" }, EditorWords.Declarations.ToHashSet());
        Assert.Equivalent(new[] { "language", "use", "stock", "prices", "accept", "findings" }, EditorWords.Directives);
    }
}
