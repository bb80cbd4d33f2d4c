using System.Text.Json.Nodes;

namespace Recipe.LanguageServer.Tests.Features;

public sealed class WorkspaceTests
{
    [Fact]
    public void The_client_is_asked_to_tell_of_files_and_for_settings()
    {
        using var folder = new SampleFolder("hatch-lid.recipe", "shop.recipe");
        using var client = new TestClient();
        client.Answers["workspace/configuration"] = _ => new JsonArray(JsonNode.Parse("""{ "inlayHints": { "thickness": false, "resin": false, "clock": false, "pressure": false, "cure": false } }"""));
        client.Initialize("""{ "workspace": { "configuration": true, "didChangeWatchedFiles": { "dynamicRegistration": true } } }""", folder.Folders);
        var uri = folder.UriOf("hatch-lid.recipe");
        client.Open(uri, folder.Read("hatch-lid.recipe"));

        // The findings are sent a second time when the settings have come.
        client.Diagnostics(uri, 1);
        client.Diagnostics(uri, 1);
        Assert.Equal(["client/registerCapability", "workspace/configuration"], client.Asked.Select(a => (string)a["method"]!));
        var watchers = client.Asked[0]["params"]!["registrations"]![0]!["registerOptions"]!["watchers"]!.AsArray();
        Assert.Equal(["**/*.recipe", "**/*.rule.cs", "**/*.stl", "**/*.obj", "**/*.ply", "**/*.3mf"], watchers.Select(watcher => (string?)watcher!["globPattern"]));
        Assert.Empty(Hints(client, uri));

        client.Answers["workspace/configuration"] = _ => new JsonArray(JsonNode.Parse("""{ "inlayHints": { "thickness": true } }"""));
        client.Notify("workspace/didChangeConfiguration", """{ "settings": null }""");
        client.Diagnostics(uri, 1);
        Assert.NotEmpty(Hints(client, uri));
    }

    [Fact]
    public void A_drawing_that_is_saved_anew_is_read_anew()
    {
        using var folder = new SampleFolder("hatch-lid.recipe", "shop.recipe");
        using var client = new TestClient();
        client.Initialize("{}", folder.Folders);
        var uri = folder.UriOf("tray.recipe");
        client.Open(uri, "mould tray-mould {\n  surface mesh \"tray.stl\" unit mm\n}\n\npart tray {\n  mould tray-mould\n}\n");
        Assert.Contains("RC2121", Codes(client.Diagnostics(uri, 1)));

        File.WriteAllText(folder.PathOf("tray.stl"), "solid\nfacet\nouter loop\nvertex 0 0 0\nvertex 400 0 0\nvertex 400 300 0\nendloop\nendfacet\nendsolid\n");
        client.Notify("workspace/didChangeWatchedFiles", $$"""{ "changes": [{ "uri": "{{folder.UriOf("tray.stl")}}", "type": 1 }] }""");
        Assert.DoesNotContain("RC2121", Codes(client.Diagnostics(uri, 1)));

        static IEnumerable<string?> Codes(JsonArray found) => found.Select(one => ((string?)one!["code"])?[..6]);
    }

    [Fact]
    public void An_old_client_sends_its_settings_along()
    {
        using var bench = new Bench();
        Assert.NotEmpty(Hints(bench.Client, bench.Uri));
        bench.Client.Notify("workspace/didChangeConfiguration", """{ "settings": { "recipe": { "inlayHints": { "thickness": false, "resin": false, "clock": false, "pressure": false, "cure": false } } } }""");
        Assert.Empty(Hints(bench.Client, bench.Uri));
    }

    [Theory]
    [InlineData("""{ "inlayHints": OFF }""")]
    [InlineData("""{ "recipe": { "inlayHints": OFF } }""")]
    public void Settings_may_come_with_the_first_message_wrapped_or_not(string options)
    {
        using var folder = new SampleFolder("hatch-lid.recipe", "shop.recipe");
        using var client = new TestClient();
        client.Initialize("{}", folder.Folders, options.Replace("OFF", """{ "thickness": false, "resin": false, "clock": false, "pressure": false, "cure": false }""", StringComparison.Ordinal));
        var uri = folder.UriOf("hatch-lid.recipe");
        client.Open(uri, folder.Read("hatch-lid.recipe"));
        Assert.Empty(Hints(client, uri));
    }

    [Fact]
    public void Folders_come_and_go()
    {
        using var first = new SampleFolder("telescope-tube.recipe");
        using var second = new SampleFolder("rudder-cheek.recipe");
        using var client = TestClient.Begin("{}", first.Folders);
        Assert.Contains("telescope-tube", Symbols(client));
        Assert.DoesNotContain("rudder-cheek", Symbols(client));
        client.Notify("workspace/didChangeWorkspaceFolders", $$"""{ "event": { "added": {{second.Folders}}, "removed": {{first.Folders}} } }""");
        Assert.DoesNotContain("telescope-tube", Symbols(client));
        Assert.Contains("rudder-cheek", Symbols(client));
    }

    [Fact]
    public void What_is_shown_is_asked_for_anew_where_the_client_can()
    {
        using var bench = new Bench(capabilities: """{ "workspace": { "inlayHint": { "refreshSupport": true }, "codeLens": { "refreshSupport": true } } }""");
        bench.Client.Diagnostics(bench.Uri, 1);
        bench.Client.Notify("workspace/didChangeWatchedFiles", """{ "changes": [] }""");
        bench.Client.Diagnostics(bench.Uri, 1);
        bench.Client.Request("workspace/symbol", """{ "query": "" }""");
        Assert.Equal(["workspace/inlayHint/refresh", "workspace/codeLens/refresh"], bench.Client.Asked.Select(a => (string)a["method"]!));
    }

    private static JsonArray Hints(TestClient client, string uri) => client.Request(
        "textDocument/inlayHint",
        $$"""{ "textDocument": { "uri": "{{uri}}" }, "range": { "start": { "line": 0, "character": 0 }, "end": { "line": 999, "character": 0 } } }""")!.AsArray();

    private static List<string> Symbols(TestClient client) =>
        [.. client.Request("workspace/symbol", """{ "query": "" }""")!.AsArray().Select(symbol => (string)symbol!["name"]!)];
}
