using System.Text.RegularExpressions;
using Recipe.TestKit;

namespace Recipe.Cli.Tests;

/// <summary>What the README shows is what the program does.</summary>
public sealed partial class ReadmeTests
{
    private static readonly string Readme = Repository.Read("README.md").ReplaceLineEndings("\n");

    [Fact]
    public void The_recipe_with_a_mistake_earns_the_message_that_is_shown()
    {
        using var bench = new Bench();
        bench.Write("lid.recipe", Fence("recipe"));
        Assert.Equal(Fence("text"), bench.RunHere("check", "lid.recipe").Out);
        Assert.Equal(ExitStatus.Clean, bench.RunHere("fmt", "--check", "lid.recipe").Status);
    }

    [Fact]
    public void Every_option_and_verb_that_is_named_exists_and_every_verb_is_named()
    {
        var verbs = VerbOfHelp().Matches(Bench.Run("--help").Out).Select(match => match.Groups[1].Value).ToArray();
        Assert.NotEmpty(verbs);
        Assert.Equal(verbs.Order(StringComparer.Ordinal), VerbOfReadme().Matches(Readme).Select(match => match.Groups[1].Value).Distinct().Order(StringComparer.Ordinal));
        foreach (Match row in RowOfReadme().Matches(Readme))
        {
            var help = Bench.Run([.. row.Groups[1].Value.Split(' '), "--help"]).Out;
            Assert.All(Option().Matches(row.Value).Select(option => option.Value), option => Assert.Contains(option, help, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Every_link_leads_somewhere() =>
        Assert.All(Link().Matches(Readme).Select(link => link.Groups[1].Value), path => Assert.True(File.Exists(Repository.PathOf(path)), path));

    [Fact]
    public void A_new_recipe_of_each_process_that_is_named_can_be_started()
    {
        using var bench = new Bench();
        foreach (var process in (string[])["bagged", "hand", "infused", "prepreg"])
        {
            Assert.Contains(process, Readme, StringComparison.Ordinal);
            Assert.Equal(ExitStatus.Clean, bench.RunHere("new", $"my-{process}", "--process", process).Status);
            Assert.Equal(ExitStatus.Clean, bench.RunHere("check", $"my-{process}.recipe").Status);
        }
    }

    private static string Fence(string language)
    {
        var start = $"```{language}\n";
        var from = Readme.IndexOf(start, StringComparison.Ordinal) + start.Length;
        return Readme[from..Readme.IndexOf("```", from, StringComparison.Ordinal)];
    }

    [GeneratedRegex(@"^  ([a-z]+)  ?[ <]", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex VerbOfHelp();

    [GeneratedRegex(@"`recipe ([a-z]+)", RegexOptions.CultureInvariant)]
    private static partial Regex VerbOfReadme();

    [GeneratedRegex(@"^\| `recipe ([a-z]+(?: rule| setup)?).*$", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex RowOfReadme();

    [GeneratedRegex(@"--[a-z]+", RegexOptions.CultureInvariant)]
    private static partial Regex Option();

    [GeneratedRegex(@"\]\(([^)]+)\)", RegexOptions.CultureInvariant)]
    private static partial Regex Link();
}
