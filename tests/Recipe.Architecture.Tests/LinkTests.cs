namespace Recipe.Architecture.Tests;

/// <summary>No link of the documentation leads nowhere. Nothing is asked of a network.</summary>
public sealed class LinkTests
{
    // Papers that were kept as expected outputs are no pages of the repository.
    private static IReadOnlyList<string> Pages { get; } =
        [.. Repository.Files().Where(file => file.EndsWith(".md", StringComparison.Ordinal) && !file.Contains("/goldens/", StringComparison.Ordinal))];

    [Fact]
    public void Every_link_leads_somewhere() => Assert.Empty(Pages.SelectMany(page => MarkdownLinks.Dead(page, Repository.Read(page), Exists, Repository.Read)));

    [Fact]
    public void The_pages_and_their_links_are_found()
    {
        Assert.Contains("README.md", Pages);
        Assert.Contains("grammar/guide.md", Pages);
        Assert.True(Pages.Sum(page => MarkdownLinks.Targets(Repository.Read(page)).Count()) > 60);
    }

    [Fact]
    public void Every_page_of_the_grammar_can_be_reached_from_the_readme()
    {
        var reached = new HashSet<string>(StringComparer.Ordinal) { "README.md" };
        for (var next = new Queue<string>(reached); next.TryDequeue(out var page);)
        {
            foreach (var other in Pages.Where(other => MarkdownLinks.Targets(Repository.Read(page)).Any(target => Leads(page, target, other)) && reached.Add(other)))
            {
                next.Enqueue(other);
            }
        }

        Assert.Empty(Pages.Where(page => !page.Contains("/vscode/", StringComparison.Ordinal)).Except(reached));
    }

    [Theory]
    [InlineData("[a](b.md)", true)]
    [InlineData("[a](c.md)", false)]
    [InlineData("![a](c.png)", false)]
    [InlineData("[a](b.md#what-it-is)", true)]
    [InlineData("[a](b.md#what-is-it)", false)]
    [InlineData("[a](#here)\n\n# Here", true)]
    [InlineData("[a](#here)", false)]
    [InlineData("[a](b.md#same-1)", true)]
    [InlineData("[a](https://nowhere.invalid)", true)]
    [InlineData("`[a](c.md)`", true)]
    [InlineData("```\n[a](c.md)\n```", true)]
    public void A_dead_link_is_caught(string page, bool isSound) => Assert.Equal(
        isSound, !MarkdownLinks.Dead("grammar/a.md", page, path => path is "grammar/b.md" or "grammar/a.md", _ => "# What it `is`?\n## Same\n## Same\n").Any());

    private static bool Exists(string path) => File.Exists(Repository.Absolute(path)) || Directory.Exists(Repository.Absolute(path));

    private static bool Leads(string page, string target, string other) =>
        !target.Contains("://", StringComparison.Ordinal)
        && Path.GetRelativePath(Repository.Root, Path.GetFullPath(Path.Combine(Repository.Root, Path.GetDirectoryName(page)!, target.Split('#')[0]))).Replace('\\', '/') == other;
}
