using System.Text.RegularExpressions;
using Recipe.Semantics.Schema;
using Recipe.TestKit;
using Recipe.Text.Units;

namespace Recipe.Semantics.Tests;

public partial class WordsPageTests
{
    [Fact]
    public void The_page_of_words_is_fresh()
    {
        var path = Repository.PathOf("grammar/words.md");
        if (Environment.GetEnvironmentVariable("RECIPE_UPDATE_GOLDENS") == "1")
        {
            File.WriteAllText(path, WordsPage.Write());
        }

        Assert.True(File.Exists(path), "grammar/words.md is missing: run the tests once with RECIPE_UPDATE_GOLDENS=1.");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), WordsPage.Write());
    }

    [Fact]
    public void Every_word_stands_on_the_page()
    {
        var page = WordsPage.Write();
        Assert.All(RecipeSchema.Blocks.SelectMany(b => b.Words), w => Assert.Contains($"| `{w.Word}` |", page));
    }

    [Fact]
    public void Every_spelling_of_a_unit_stands_on_the_page()
    {
        var page = WordsPage.Write();
        var table = page[page.IndexOf("## Every spelling of a unit", StringComparison.Ordinal)..];
        Assert.All(UnitTable.Spellings.Where(spelling => UnitTable.Get(spelling).Currency is null), spelling => Assert.Contains($"`{spelling}`", table, StringComparison.Ordinal));
    }

    [Fact]
    public void Every_word_is_said_on_the_page_of_the_language()
    {
        var said = Word().Matches(Repository.Read("grammar/language.md")).Select(match => match.Value).ToHashSet();
        Assert.Empty(RecipeSchema.Blocks.SelectMany(block => block.Words).Select(word => word.Word).Where(word => !said.Contains(word)).Distinct());
    }

    [Fact]
    public void The_page_of_facts_is_fresh()
    {
        var path = Repository.PathOf("grammar/facts.md");
        if (Environment.GetEnvironmentVariable("RECIPE_UPDATE_GOLDENS") == "1")
        {
            File.WriteAllText(path, FactsPage.Write());
        }

        Assert.True(File.Exists(path), "grammar/facts.md is missing: run the tests once with RECIPE_UPDATE_GOLDENS=1.");
        Assert.Equal(File.ReadAllText(path).ReplaceLineEndings("\n"), FactsPage.Write());
    }

    [GeneratedRegex(@"[\p{L}_][\p{L}\p{N}_]*(-[\p{L}\p{N}_]+)*", RegexOptions.CultureInvariant)]
    private static partial Regex Word();
}
