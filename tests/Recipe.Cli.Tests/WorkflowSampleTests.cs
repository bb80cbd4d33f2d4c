using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Recipe.TestKit;

namespace Recipe.Cli.Tests;

/// <summary>The samples for version control do what they say: their steps run here as they stand.</summary>
public sealed partial class WorkflowSampleTests : IDisposable
{
    private static readonly string[] Steps = [.. Run().Matches(Repository.Read("samples/version-control/recipes.yml").ReplaceLineEndings("\n")).Select(match => match.Groups[1].Value)];

    private readonly Repo _repo = Repo.OfHatchLid();

    public void Dispose() => _repo.Dispose();

    [Fact]
    public void All_but_one_step_are_ours()
    {
        Assert.Equal(6, Steps.Length);
        Assert.Single(Steps, step => !step.StartsWith("recipe ", StringComparison.Ordinal));
    }

    [Fact]
    public void The_steps_pass_on_sound_recipes_and_leave_what_they_promise()
    {
        _repo.Change("hatch-lid.recipe", "    back   glass-twill-280", "    back   glass-twill-163");
        _repo.Change("hatch-lid.recipe", "target    mass 126 g", "target    mass 112 g");
        _repo.Change("hatch-lid.recipe", "target  mass 122 g", "target  mass 108 g");
        _repo.Change("hatch-lid.recipe", "  mass   131 g", "  mass   113 g");
        _repo.Change("hatch-lid.recipe", "  mass    127 g", "  mass    111 g");
        _repo.Commit("A lighter back");
        Assert.All(Ours(), step => Assert.Equal(new Outcome(0, "", ""), Start(step) with { Out = "" }));
        Assert.NotNull(JsonNode.Parse(_repo["recipes.sarif"])!["runs"]);
        Assert.Contains("glass-twill-163", _repo["what-changed.md"], StringComparison.Ordinal);
        Assert.NotEmpty(Directory.GetFiles(_repo.Bench.PathOf("papers"), "*.pdf"));
    }

    [Fact]
    public void A_bad_recipe_stops_them_and_its_findings_reach_the_review()
    {
        _repo.Change("hatch-lid.recipe", "hold           50 degC for 16 h", "hold 90 degC for 16 h");
        _repo.Commit("Too hot, and not laid out");
        Assert.Equal([1, 1, 1], Ours().Take(3).Select(step => Start(step).Status));
        Assert.NotEmpty(JsonNode.Parse(_repo["recipes.sarif"])!["runs"]![0]!["results"]!.AsArray());
    }

    [Fact]
    public void The_attributes_are_those_that_setup_writes()
    {
        _repo[".gitattributes"] = Repository.Read("samples/version-control/sample.gitattributes");
        Assert.DoesNotContain(".gitattributes", _repo.Bench.RunHere("git", "setup").Out, StringComparison.Ordinal);
        Assert.Equal("a.recipe: diff: recipe\na.recipe: merge: recipe\na.recipe: eol: lf\n", _repo.Git("check-attr", "diff", "merge", "eol", "--", "a.recipe"));
    }

    private static IEnumerable<string> Ours() => Steps.Where(step => step.StartsWith("recipe ", StringComparison.Ordinal));

    private Outcome Start(string step) => _repo.Shell(step, ("BASE", "HEAD~1"));

    [GeneratedRegex("^ +run: (.*)$", RegexOptions.Multiline | RegexOptions.CultureInvariant)]
    private static partial Regex Run();
}
