using System.Text.RegularExpressions;
using Recipe.TestKit;

namespace Recipe.Cli.Tests;

/// <summary>The page of commands names all there is and nothing else.</summary>
public sealed partial class CommandsPageTests
{
    private static readonly string Page = Repository.Read("grammar/commands.md").ReplaceLineEndings("\n");

    [Fact]
    public void Every_option_and_verb_that_is_named_exists_and_every_verb_is_named()
    {
        var verbs = VerbOfHelp().Matches(Bench.Run("--help").Out).Select(match => match.Groups[1].Value).ToArray();
        Assert.NotEmpty(verbs);
        Assert.Equal(verbs.Order(StringComparer.Ordinal), VerbOfPage().Matches(Page).Select(match => match.Groups[1].Value).Distinct().Order(StringComparer.Ordinal));
        foreach (Match row in RowOfPage().Matches(Page))
        {
            var help = Bench.Run([.. row.Groups[1].Value.Split(' '), "--help"]).Out;
            Assert.All(Option().Matches(row.Value).Select(option => option.Value), option => Assert.Contains(option, help, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void A_new_recipe_of_each_process_that_is_named_can_be_started()
    {
        using var bench = new Bench();
        var readme = Repository.Read("README.md");
        foreach (var process in (string[])["bagged", "hand", "infused", "prepreg"])
        {
            Assert.Contains(process, Page, StringComparison.Ordinal);
            Assert.Contains(process, readme, StringComparison.Ordinal);
            Assert.Equal(ExitStatus.Clean, bench.RunHere("new", $"my-{process}", "--process", process).Status);
            Assert.Equal(ExitStatus.Clean, bench.RunHere("check", $"my-{process}.recipe").Status);
        }
    }

    [GeneratedRegex(@"^  ([a-z]+)  ?[ <]", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex VerbOfHelp();

    [GeneratedRegex(@"`recipe ([a-z]+)", RegexOptions.CultureInvariant)]
    private static partial Regex VerbOfPage();

    [GeneratedRegex(@"^\| `recipe ([a-z]+(?: rule| setup)?).*$", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex RowOfPage();

    [GeneratedRegex(@"--[a-z]+", RegexOptions.CultureInvariant)]
    private static partial Regex Option();
}
