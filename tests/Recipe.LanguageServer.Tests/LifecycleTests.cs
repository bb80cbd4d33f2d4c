using System.Text.Json.Nodes;

namespace Recipe.LanguageServer.Tests;

public sealed class LifecycleTests
{
    private const string Document = """{ "textDocument": { "uri": "untitled:a" }, "position": { "line": 0, "character": 0 } }""";

    [Fact]
    public void Shutdown_and_exit_end_with_0()
    {
        using var client = TestClient.Begin();
        Assert.Null(client.Request("shutdown", "null"));
        client.Notify("exit", "null");
        Assert.Equal(0, client.ExitStatus());
    }

    [Fact]
    public void Exit_without_shutdown_ends_with_1()
    {
        using var client = TestClient.Begin();
        client.Notify("exit", "null");
        Assert.Equal(1, client.ExitStatus());
    }

    [Fact]
    public void Exit_before_initialize_ends_with_1()
    {
        using var client = new TestClient();
        client.Notify("exit", "null");
        Assert.Equal(1, client.ExitStatus());
    }

    [Fact]
    public void A_client_that_goes_away_ends_it_with_1_and_after_shutdown_with_0()
    {
        using var rude = TestClient.Begin();
        Assert.Equal(1, rude.Leave());
        using var polite = TestClient.Begin();
        polite.Request("shutdown", "null");
        Assert.Equal(0, polite.Leave());
    }

    [Fact]
    public void Before_initialize_requests_are_refused_and_notifications_dropped()
    {
        using var client = new TestClient();
        client.Open("untitled:a", "language 1\n");
        Assert.Equal(-32002, client.Refused("textDocument/hover", Document));
        Assert.Equal(-32002, client.Refused("shutdown", "null"));
        client.Initialize();

        // The document of before was dropped.
        Assert.Equal(-32602, client.Refused("textDocument/hover", Document));
    }

    [Fact]
    public void After_shutdown_requests_are_refused()
    {
        using var client = TestClient.Begin();
        client.Request("shutdown", "null");
        Assert.Equal(-32600, client.Refused("textDocument/hover", Document));
        Assert.Equal(-32600, client.Refused("shutdown", "null"));
        Assert.Equal(-32600, client.Refused("initialize", """{ "capabilities": {} }"""));
    }

    [Fact]
    public void A_second_initialize_is_refused()
    {
        using var client = TestClient.Begin();
        Assert.Equal(-32600, client.Refused("initialize", """{ "capabilities": {} }"""));
    }

    [Fact]
    public void Unknown_requests_are_refused_and_unknown_notifications_passed_over()
    {
        using var client = TestClient.Begin();
        client.Notify("recipe/other", "{}");
        client.Notify("$/setTrace", """{ "value": "off" }""");
        Assert.Equal(-32601, client.Refused("recipe/other", "{}"));
        Assert.Equal(-32601, client.Refused("$/other", "{}"));
    }

    [Theory]
    [InlineData("null")]
    [InlineData("[]")]
    [InlineData("{}")]
    [InlineData("""{ "textDocument": "untitled:a", "position": { "line": 0, "character": 0 } }""")]
    [InlineData("""{ "textDocument": { "uri": null }, "position": { "line": 0, "character": 0 } }""")]
    [InlineData("""{ "textDocument": { "uri": "untitled:a" }, "position": { "line": "0", "character": 0 } }""")]
    [InlineData("""{ "textDocument": { "uri": "untitled:a" }, "position": { "line": 99999999999, "character": 0 } }""")]
    [InlineData("""{ "textDocument": { "uri": "untitled:a" } }""")]
    public void Wrong_parameters_are_invalid_and_name_the_place(string parameters)
    {
        using var client = TestClient.Begin();
        client.Open("untitled:a", "language 1\n");
        var answer = client.Ask("textDocument/hover", JsonNode.Parse(parameters));
        Assert.Equal(-32602, (int)answer["error"]!["code"]!);
        Assert.Contains("textDocument/hover", (string?)answer["error"]!["message"]);
        Assert.DoesNotContain("   at ", answer.ToJsonString());
    }

    [Fact]
    public void A_document_that_is_not_there_is_an_invalid_parameter()
    {
        using var client = TestClient.Begin();
        Assert.Equal(-32602, client.Refused("textDocument/hover", """{ "textDocument": { "uri": "file:///none/such.recipe" }, "position": { "line": 0, "character": 0 } }"""));
    }

    [Fact]
    public void The_server_says_who_it_is_and_what_it_can_do()
    {
        using var client = new TestClient();
        var result = client.Initialize();
        Assert.Equal("recipe", (string?)result["serverInfo"]!["name"]);
        var capabilities = result["capabilities"]!.AsObject();
        Assert.Equal(2, (int)capabilities["textDocumentSync"]!["change"]!);
        foreach (var name in (string[])["hoverProvider", "completionProvider", "definitionProvider", "renameProvider", "semanticTokensProvider", "inlayHintProvider", "diagnosticProvider"])
        {
            Assert.True(capabilities.ContainsKey(name), name);
        }
    }

    [Theory]
    [InlineData("""["utf-16", "utf-8"]""", "utf-8")]
    [InlineData("""["utf-32", "utf-16"]""", "utf-16")]
    [InlineData("""["utf-32"]""", "utf-32")]
    [InlineData("""["utf-7"]""", "utf-16")]
    [InlineData("[]", "utf-16")]
    [InlineData("null", "utf-16")]
    public void The_unit_of_columns_is_agreed_upon(string offered, string chosen)
    {
        using var client = new TestClient();
        Assert.Equal(chosen, (string?)client.Initialize($$"""{ "general": { "positionEncodings": {{offered}} } }""")["capabilities"]!["positionEncoding"]);
    }
}
