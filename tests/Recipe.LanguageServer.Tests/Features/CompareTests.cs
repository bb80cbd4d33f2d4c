using System.Diagnostics.CodeAnalysis;
using System.Text.Json.Nodes;
using Recipe.Compiler;
using Recipe.Compiler.Comparing;

namespace Recipe.LanguageServer.Tests.Features;

/// <summary>The lens that compares a part with the last commit, and the command behind it.</summary>
public sealed class CompareTests
{
    [Fact]
    public void A_part_is_compared_with_the_last_commit_as_it_stands_in_the_editor()
    {
        using var folder = new SampleFolder("hatch-lid.recipe", "shop.recipe");
        Directory.CreateDirectory(Path.Combine(folder.Folder, ".git"));
        var committed = folder.Read("hatch-lid.recipe");
        using var client = new TestClient(_ => new OpenedRevision(new Committed(committed, folder.Read("shop.recipe")), null));
        client.Initialize("{}", folder.Folders);
        var uri = folder.UriOf("hatch-lid.recipe");
        client.Open(uri, committed.Replace("back   glass-twill-280", "back   glass-twill-163", StringComparison.Ordinal));
        Assert.Contains(Lenses(client, uri), command => command == "recipe.compare");
        var page = (string)client.Request("workspace/executeCommand", Compare(uri))![0]!;
        Assert.Contains("| back | changed | 4: glass-twill-280 0/90 | 4: glass-twill-163 0/90 |", page, StringComparison.Ordinal);
        Assert.Contains("| Mass, trimmed |", page, StringComparison.Ordinal);
        Assert.DoesNotContain("no-veil", page, StringComparison.Ordinal);
    }

    [Fact]
    public void Without_a_repository_there_is_no_such_line_and_the_command_says_why()
    {
        using var folder = new SampleFolder("hatch-lid.recipe", "shop.recipe");
        using var client = TestClient.Begin("{}", folder.Folders);
        var uri = folder.UriOf("hatch-lid.recipe");
        client.Open(uri, folder.Read("hatch-lid.recipe"));
        Assert.DoesNotContain(Lenses(client, uri), command => command == "recipe.compare");
        Assert.Equal(-32803, client.Refused("workspace/executeCommand", Compare(uri).ToJsonString()));
    }

    [Fact]
    public void A_refusal_of_git_is_passed_on()
    {
        using var folder = new SampleFolder("hatch-lid.recipe", "shop.recipe");
        Directory.CreateDirectory(Path.Combine(folder.Folder, ".git"));
        using var client = new TestClient(_ => new OpenedRevision(null, "git is not installed."));
        client.Initialize("{}", folder.Folders);
        var uri = folder.UriOf("hatch-lid.recipe");
        client.Open(uri, folder.Read("hatch-lid.recipe"));
        Assert.Equal(-32803, client.Refused("workspace/executeCommand", Compare(uri).ToJsonString()));
    }

    private static JsonObject Compare(string uri) => new() { ["command"] = "recipe.compare", ["arguments"] = new JsonArray(uri, "hatch-lid") };

    private static IEnumerable<string?> Lenses(TestClient client, string uri) =>
        client.Request("textDocument/codeLens", new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = uri } })!.AsArray().Select(lens => (string?)lens!["command"]!["command"]);

    private sealed class Committed(string lid, string shop) : IFileStore
    {
        public bool TryRead(string name, [NotNullWhen(true)] out string? text)
        {
            text = name.EndsWith("/hatch-lid.recipe", StringComparison.Ordinal) ? lid : name.EndsWith("/shop.recipe", StringComparison.Ordinal) ? shop : null;
            return text is not null;
        }
    }
}
