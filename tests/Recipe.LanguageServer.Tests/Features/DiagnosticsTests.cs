using System.Text.Json.Nodes;

namespace Recipe.LanguageServer.Tests.Features;

public sealed class DiagnosticsTests
{
    private const string Pulling = """{ "textDocument": { "diagnostic": {}, "publishDiagnostics": { "relatedInformation": true } } }""";

    [Fact]
    public void The_sample_is_clean_and_a_slip_is_found_and_goes_again()
    {
        using var bench = new Bench();
        Assert.DoesNotContain(bench.Client.Diagnostics(bench.Uri, 1), d => (int)d!["severity"]! == 1);
        var place = bench.Range("slow-laminating-epoxy");
        bench.Client.Change(bench.Uri, 2, new JsonObject { ["range"] = place.DeepClone(), ["text"] = "slow-laminating-epoxi" });
        var found = Assert.Single(bench.Client.Diagnostics(bench.Uri, 2), d => (int)d!["severity"]! == 1)!;
        Assert.Equal("recipe", (string?)found["source"]);
        Assert.StartsWith("RC12", (string?)found["code"]);
        Assert.Equal("unknown-name", (string?)found["data"]!["name"]);
        Assert.NotEmpty(found["data"]!["fixes"]!.AsArray());
        Assert.Equal(place.ToJsonString(), found["range"]!.ToJsonString());
        bench.Client.Change(bench.Uri, 3, new JsonObject { ["range"] = place.DeepClone(), ["text"] = "slow-laminating-epoxy" });
        Assert.DoesNotContain(bench.Client.Diagnostics(bench.Uri, 3), d => (int)d!["severity"]! == 1);
    }

    [Fact]
    public void A_change_of_the_shop_reaches_the_recipe_that_uses_it()
    {
        // The mould stands in the shop file, so the recipe is sound as long as that says so.
        using var sample = new SampleFolder("hatch-lid.recipe");
        var text = sample.Read("hatch-lid.recipe");
        var start = text.IndexOf("mould hatch-lid-mould", StringComparison.Ordinal);
        var end = text.IndexOf("part hatch-lid", StringComparison.Ordinal);
        using var bench = new Bench(text.Remove(start, end - start));
        var shop = bench.Files.UriOf("shop.recipe");
        Assert.True(MouldIsMissing(1));
        bench.Client.Open(shop, bench.Files.Read("shop.recipe") + text[start..end]);
        Assert.False(MouldIsMissing(1));
        bench.Client.Change(shop, 2, new JsonObject { ["text"] = bench.Files.Read("shop.recipe") });
        Assert.True(MouldIsMissing(1));
        bench.Client.Change(shop, 3, new JsonObject { ["text"] = bench.Files.Read("shop.recipe") + text[start..end] });
        Assert.False(MouldIsMissing(1));
        bench.Client.Notify("textDocument/didClose", new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = shop } });

        // Closed unsaved: what is on disk counts again.
        Assert.Empty(bench.Client.Notification("textDocument/publishDiagnostics", p => (string?)p["uri"] == shop && p["version"] is null)["diagnostics"]!.AsArray());
        Assert.True(MouldIsMissing(1));

        bool MouldIsMissing(int version) => bench.Client.Diagnostics(bench.Uri, version).Any(d => (string?)d!["data"]!["name"] == "unknown-name");
    }

    [Fact]
    public void A_used_file_that_appears_on_disk_is_noticed()
    {
        using var bench = new Bench();
        bench.Client.Diagnostics(bench.Uri, 1);
        File.Delete(bench.Files.PathOf("shop.recipe"));
        bench.Client.Notify("workspace/didChangeWatchedFiles", $$"""{ "changes": [{ "uri": "{{bench.Files.UriOf("shop.recipe")}}", "type": 3 }] }""");
        Assert.Contains(bench.Client.Diagnostics(bench.Uri, 1), d => (string?)d!["data"]!["name"] == "import-missing");
        bench.Files.Write("shop.recipe", "language 1\n");
        bench.Client.Notify("workspace/didChangeWatchedFiles", $$"""{ "changes": [{ "uri": "{{bench.Files.UriOf("shop.recipe")}}", "type": 1 }] }""");
        Assert.DoesNotContain(bench.Client.Diagnostics(bench.Uri, 1), d => (string?)d!["data"]!["name"] == "import-missing");
    }

    [Fact]
    public void Rules_in_CSharp_are_never_run_by_opening_a_file()
    {
        using var bench = new Bench("language 1\nuse \"heavy.rule.cs\"\n");
        bench.Files.Write("heavy.rule.cs", "this is no program");
        bench.Client.Change(bench.Uri, 2, new JsonObject { ["text"] = "language 1\nuse \"heavy.rule.cs\"\n\n" });
        Assert.Equal("RC9205", (string?)Assert.Single(bench.Client.Diagnostics(bench.Uri, 2))!["code"]);
        Assert.Contains(bench.Files.PathOf("heavy.rule.cs").Replace('\\', '/'), bench.Client.Rules.Asked);
        var rules = bench.Files.UriOf("heavy.rule.cs");
        Assert.Empty(bench.Client.Notification("textDocument/publishDiagnostics", p => (string?)p["uri"] == rules)["diagnostics"]!.AsArray());
    }

    [Fact]
    public void A_second_place_of_the_story_is_told_to_a_client_that_can_show_it()
    {
        const string twice = "language 1\nlet a = 1 mm\nlet a = 2 mm\n";
        using var bench = new Bench(twice);
        var found = Assert.Single(bench.Client.Diagnostics(bench.Uri, 1), d => (string?)d!["data"]!["name"] == "duplicate-name")!;
        var related = found["relatedInformation"]!.AsArray();
        Assert.All(related, place => Assert.Equal(bench.Uri, (string?)place!["location"]!["uri"]));
        Assert.Contains(related, place => (int)place!["location"]!["range"]!["start"]!["line"]! == 1);
        using var simple = new Bench(twice, "{}");
        Assert.Null(simple.Client.Diagnostics(simple.Uri, 1)[0]!["relatedInformation"]);
    }

    [Fact]
    public void A_client_that_asks_is_sent_nothing_and_told_when_nothing_changed()
    {
        using var bench = new Bench(capabilities: Pulling);
        var report = bench.Ask("textDocument/diagnostic")!;
        Assert.Equal("full", (string?)report["kind"]);
        var again = bench.Ask("textDocument/diagnostic", ("previousResultId", (string)report["resultId"]!))!;
        Assert.Equal("unchanged", (string?)again["kind"]);
        Assert.Null(again["items"]);
        bench.Client.Change(bench.Uri, 2, new JsonObject { ["text"] = "language 1\npart {\n" });
        var changed = bench.Ask("textDocument/diagnostic", ("previousResultId", (string)report["resultId"]!))!;
        Assert.Equal("full", (string?)changed["kind"]);
        Assert.NotEmpty(changed["items"]!.AsArray());
        Assert.False(bench.Client.HasNotification("textDocument/publishDiagnostics"));
    }

    [Fact]
    public void All_files_of_the_folder_are_reported_and_then_unchanged()
    {
        using var bench = new Bench(capabilities: Pulling);
        var items = bench.Client.Request("workspace/diagnostic", """{ "previousResultIds": [] }""")!["items"]!.AsArray();
        Assert.Equal(
            [bench.Uri, bench.Files.UriOf("shop.recipe")],
            items.Select(item => (string)item!["uri"]!));
        Assert.Equal(1, (int)items[0]!["version"]!);
        Assert.True(items[1]!.AsObject().ContainsKey("version"));
        var known = new JsonArray([.. items.Select(item => new JsonObject { ["uri"] = (string)item!["uri"]!, ["value"] = (string)item["resultId"]! })]);
        var again = bench.Client.Request("workspace/diagnostic", new JsonObject { ["previousResultIds"] = known })!["items"]!.AsArray();
        Assert.All(again, item => Assert.Equal("unchanged", (string?)item!["kind"]));
    }

    [Fact]
    public void An_address_for_codes_is_given_when_there_is_one()
    {
        using var client = new TestClient();
        client.Request("initialize", """{ "capabilities": {}, "initializationOptions": { "documentation": "https://shop.example/{code}/{name}" } }""");
        client.Open("untitled:a", "language 1\nlet a = 1 mm\nlet a = 2 mm\n");
        var found = client.Diagnostics("untitled:a", 1)[0]!;
        Assert.Equal($"https://shop.example/{found["code"]}/{found["data"]!["name"]}", (string?)found["codeDescription"]!["href"]);
    }
}
