namespace Recipe.Cli.Tests.Pages;

/// <summary>What the documentation shows is what the program does: every block of these pages is run.</summary>
public sealed class PageTests
{
    private static readonly string[] Guide = ["grammar/guide.md", "grammar/guide-shop.md", "grammar/guide-better.md", "grammar/guide-ways.md", "grammar/guide-shapes.md"];

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
    }
}
