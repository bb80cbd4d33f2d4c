using System.Text.Json.Nodes;

namespace Recipe.LanguageServer.Tests.Features;

/// <summary>The command that shows a document on a page of this machine.</summary>
public sealed class PreviewTests
{
    [Fact]
    public async Task The_page_shows_what_is_typed_before_it_is_saved()
    {
        using var folder = new SampleFolder("hatch-lid.recipe", "shop.recipe");
        using var client = TestClient.Begin("""{ "window": { "showDocument": { "support": true } } }""", folder.Folders);
        client.Answers["window/showDocument"] = _ => new JsonObject { ["success"] = true };
        var uri = folder.UriOf("hatch-lid.recipe");
        var text = folder.Read("hatch-lid.recipe");
        client.Open(uri, text.Replace("Kayak hatch lid\"", "As it is typed\"", StringComparison.Ordinal));
        var address = (string)client.Request("workspace/executeCommand", Preview(uri, "hatch-lid"))![0]!;
        Assert.StartsWith("http://127.0.0.1:", address, StringComparison.Ordinal);
        Assert.EndsWith("/#part=hatch-lid", address, StringComparison.Ordinal);
        using var page = new HttpClient { BaseAddress = new Uri(address.Split('#')[0]) };
        Assert.Contains("As it is typed", await View(page), StringComparison.Ordinal);

        // Events come for what is typed, and again when the document is closed and the disk counts.
        using var events = new StreamReader(await page.GetStreamAsync(new Uri("events", UriKind.Relative)));
        Assert.Equal("event: changed", await Next(events));
        client.Change(uri, 2, new JsonObject { ["text"] = text.Replace("Kayak hatch lid\"", "Another word\"", StringComparison.Ordinal) });
        await Until(page, events, "Another word");
        client.Notify("textDocument/didClose", new JsonObject { ["textDocument"] = new JsonObject { ["uri"] = uri } });
        await Until(page, events, "Kayak hatch lid\"");
        Assert.Equal(text, folder.Read("hatch-lid.recipe"));

        // Asked again it is the same page; the client was asked to open it in the browser each time.
        Assert.Equal(address.Split('#')[0], (string)client.Request("workspace/executeCommand", Preview(uri))![0]!);
        Assert.All(client.Asked.Where(asked => (string?)asked["method"] == "window/showDocument"), asked => Assert.True((bool)asked["params"]!["external"]!));
        Assert.Equal(2, client.Asked.Count(asked => (string?)asked["method"] == "window/showDocument"));
    }

    [Fact]
    public void A_client_that_opens_nothing_is_told_the_address_and_an_unsaved_text_has_no_page()
    {
        using var folder = new SampleFolder("hatch-lid.recipe", "shop.recipe");
        using var client = TestClient.Begin("{}", folder.Folders);
        var uri = folder.UriOf("hatch-lid.recipe");
        client.Open(uri, folder.Read("hatch-lid.recipe"));
        var address = (string)client.Request("workspace/executeCommand", Preview(uri))![0]!;
        Assert.Contains(address, client.Notification("window/showMessage").ToJsonString(), StringComparison.Ordinal);
        client.Open("untitled:Untitled-1", "part x {\n}\n");
        Assert.Equal(-32803, client.Refused("workspace/executeCommand", Preview("untitled:Untitled-1").ToJsonString()));
    }

    private static JsonObject Preview(string uri, string? part = null) =>
        new() { ["command"] = "recipe.preview", ["arguments"] = part is null ? new JsonArray(uri) : new JsonArray(uri, part) };

    private static Task<string> View(HttpClient page) => page.GetStringAsync(new Uri("view", UriKind.Relative));

    private static async Task Until(HttpClient page, StreamReader events, string text)
    {
        while (!(await View(page)).Contains(text, StringComparison.Ordinal))
        {
            Assert.Equal("event: changed", await Next(events));
        }
    }

    private static async Task<string> Next(StreamReader events)
    {
        using var patience = new CancellationTokenSource(TimeSpan.FromMinutes(1));
        while (true)
        {
            var line = await events.ReadLineAsync(patience.Token) ?? throw new InvalidOperationException("The stream ended.");
            if (line.StartsWith("event:", StringComparison.Ordinal))
            {
                return line;
            }
        }
    }
}
