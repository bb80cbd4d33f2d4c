using Recipe.TestKit;

namespace Recipe.Cli.Tests.Pages;

/// <summary>What the documentation shows is what the program does: every block of these pages is run.</summary>
public sealed class PageTests
{
    private static readonly string[] Guide =
        ["grammar/guide.md", "grammar/guide-shop.md", "grammar/guide-better.md", "grammar/guide-ways.md", "grammar/guide-shapes.md"];

    private static readonly string[] Others = ["README.md", "grammar/commands.md", "grammar/house-rules.md", "grammar/language.md"];

    public static TheoryData<string> OtherPages => [.. Others];

    [Fact]
    public void The_guide_does_what_it_says()
    {
        // One reader, one folder, page after page.
        using var bench = new Bench();
        var runner = new PageRunner(bench);
        foreach (var page in Guide)
        {
            Assert.NotEqual(0, runner.Run(page));
        }

        Assert.Empty(runner.FoundInSketches());
    }

    [Theory]
    [MemberData(nameof(OtherPages))]
    public void A_page_does_what_it_says(string page)
    {
        using var bench = new Bench();
        foreach (var sample in Directory.EnumerateFiles(Repository.PathOf("samples"), "*.recipe", SearchOption.AllDirectories))
        {
            bench.Write(Path.GetRelativePath(Repository.Root, sample), File.ReadAllText(sample));
        }

        var runner = new PageRunner(bench);
        Assert.NotEqual(0, runner.Run(page));

        // The page of the language uses a file that the reader of the page has not.
        Assert.Equal(page == "grammar/language.md" ? ["import-missing"] : [], runner.FoundInSketches());
    }

    [Fact]
    public void Every_page_with_blocks_of_recipes_or_consoles_is_run()
    {
        var pages = Directory.EnumerateFiles(Repository.PathOf("grammar"), "*.md", SearchOption.AllDirectories)
            .Concat(Directory.EnumerateFiles(Repository.PathOf("editors"), "*.md", SearchOption.AllDirectories))
            .Concat([Repository.PathOf("README.md"), Repository.PathOf("DEVELOPERS.md")])
            .Where(path => !path.Contains("node_modules", StringComparison.Ordinal))
            .Where(path => File.ReadAllText(path).Split('\n').Any(line => line.StartsWith("```recipe", StringComparison.Ordinal) || line.StartsWith("```console", StringComparison.Ordinal)))
            .Select(path => Path.GetRelativePath(Repository.Root, path).Replace('\\', '/'));
        Assert.Equal(Guide.Concat(Others).Order(StringComparer.Ordinal), pages.Order(StringComparer.Ordinal));
    }

    [Theory]
    [InlineData("a\n...\nd\n", "a\nb\nc\nd\n", true)]
    [InlineData("a\n...\n", "a\n", true)]
    [InlineData("a\n...\nd\n", "a\nb\nc\n", false)]
    [InlineData("a\nb\n", "a\nb\nc\n", false)]
    [InlineData("...\nb\n", "a\nc\n", false)]
    [InlineData("a  \n", "a\n", true)]
    public void A_line_of_three_points_stands_for_what_is_left_out(string shown, string said, bool fits) => Assert.Equal(fits, ConsoleTalk.Fits(shown, said));

    [Fact]
    public void Quotes_keep_the_words_of_a_command_together() =>
        Assert.Equal(["git", "commit", "-m", "Lamp hood"], ConsoleTalk.Words("git commit -m \"Lamp hood\""));
}
