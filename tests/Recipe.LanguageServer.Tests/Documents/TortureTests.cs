using System.Text.Json.Nodes;
using Recipe.LanguageServer.Documents;
using Recipe.TestKit;

namespace Recipe.LanguageServer.Tests.Documents;

/// <summary>Thousands of random edits, and the server knows what one knows that has only seen the last text.</summary>
public sealed class TortureTests
{
    private const string Uri = "untitled:torture.recipe";

    private static readonly string[] Pieces =
    [
        "ä", "€", "𝛼", "µm", "\n", "\r\n", "\r", "\u2028", "part x {\n", "}\r", "  glass-twill-280 +/-45\r\n", "\"quote", "# note 𝛽\n", "300 g/m2", " ", "let a = 3 mm\n", "}", "{",
    ];

    [Theory]
    [InlineData("utf-8", 11)]
    [InlineData("utf-16", 12)]
    [InlineData("utf-32", 13)]
    public void After_random_edits_the_server_is_like_a_fresh_one(string encoding, int seed)
    {
        var random = new Random(seed);
        var unit = encoding switch { "utf-8" => PositionEncoding.Utf8, "utf-32" => PositionEncoding.Utf32, _ => PositionEncoding.Utf16 };
        var capabilities = $$"""{ "general": { "positionEncodings": ["{{encoding}}"] } }""";
        using var client = TestClient.Begin(capabilities);
        var text = Repository.Read("samples/hatch-lid.recipe");
        client.Open(Uri, text);
        var version = 1;
        for (var round = 0; round < 4; round++)
        {
            for (var i = 0; i < 60; i++)
            {
                client.Change(Uri, ++version, [.. Enumerable.Range(0, random.Next(1, 4)).Select(_ => Edit(random, ref text, unit))]);
            }

            var worn = Knowledge(client, version);
            using var fresh = TestClient.Begin(capabilities);
            fresh.Open(Uri, text, version);
            Assert.Equal(Knowledge(fresh, version), worn);
        }
    }

    private static JsonObject Edit(Random random, ref string text, PositionEncoding unit)
    {
        // From time to time the whole text, as the protocol allows.
        if (random.Next(40) == 0)
        {
            text = random.Next(2) == 0 ? Repository.Read("samples/telescope-tube.recipe") : text.Replace("\n", "\r\n").Replace("\r\r\n", "\r\n");
            return new JsonObject { ["text"] = text };
        }

        var cursors = TextModel.Cursors(text);
        var from = random.Next(cursors.Count);
        var to = random.Next(3) == 0 ? Math.Min(cursors.Count - 1, from + random.Next(30)) : from;
        var (start, end) = (cursors[from], cursors[to]);
        var inserted = random.Next(4) == 0 ? "" : Pieces[random.Next(Pieces.Length)];
        var change = new JsonObject
        {
            ["range"] = new JsonObject { ["start"] = Place(text, start, unit), ["end"] = Place(text, end, unit) },
            ["text"] = inserted,
        };
        text = string.Concat(text.AsSpan(0, start), inserted, text.AsSpan(end));
        return change;
    }

    private static JsonObject Place(string text, int offset, PositionEncoding unit)
    {
        var (line, column) = TextModel.Place(text, offset, unit);
        return new JsonObject { ["line"] = line, ["character"] = column };
    }

    private static string Knowledge(TestClient client, int version)
    {
        const string document = $$"""{ "textDocument": { "uri": "{{Uri}}" } }""";
        return string.Join(
            "\n",
            client.Diagnostics(Uri, version).ToJsonString(),
            client.Request("textDocument/semanticTokens/full", document)!["data"]!.ToJsonString(),
            client.Request("textDocument/documentSymbol", document)!.ToJsonString(),
            client.Request("textDocument/foldingRange", document)!.ToJsonString(),
            client.Request("textDocument/formatting", """{ "textDocument": { "uri": "untitled:torture.recipe" }, "options": { "tabSize": 2, "insertSpaces": true } }""")!.ToJsonString());
    }
}
