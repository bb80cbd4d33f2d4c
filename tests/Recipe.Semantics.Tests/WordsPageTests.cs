using Recipe.Semantics.Schema;

namespace Recipe.Semantics.Tests;

public class WordsPageTests
{
    [Fact]
    public void The_page_of_words_is_fresh()
    {
        var path = Path.Combine(Root(), "grammar", "words.md");
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

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Recipe.sln")))
        {
            folder = folder.Parent;
        }

        Assert.NotNull(folder);
        return folder.FullName;
    }
}
