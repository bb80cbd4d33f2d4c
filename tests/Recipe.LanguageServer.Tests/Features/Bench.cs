using System.Text.Json.Nodes;
using Recipe.LanguageServer.Documents;
using Recipe.LanguageServer.Tests.Documents;

namespace Recipe.LanguageServer.Tests.Features;

/// <summary>A server with the hatch lid of the samples open beside its shop.</summary>
internal sealed class Bench : IDisposable
{
    public const string Capabilities = """
        {
          "workspace": { "workspaceEdit": { "documentChanges": true } },
          "textDocument": {
            "completion": { "completionItem": { "snippetSupport": true, "documentationFormat": ["markdown"] } },
            "hover": { "contentFormat": ["markdown"] },
            "documentSymbol": { "hierarchicalDocumentSymbolSupport": true },
            "codeAction": { "codeActionLiteralSupport": { "codeActionKind": { "valueSet": ["quickfix"] } } },
            "foldingRange": { "lineFoldingOnly": true },
            "publishDiagnostics": { "relatedInformation": true, "versionSupport": true }
          }
        }
        """;

    public Bench(string? text = null, string capabilities = Capabilities, string? bookFolder = null)
    {
        Files = new SampleFolder("hatch-lid.recipe", "shop.recipe");
        Client = TestClient.Begin(capabilities, Files.Folders, bookFolder);
        Text = text ?? Files.Read("hatch-lid.recipe");
        Client.Open(Uri, Text);
    }

    public SampleFolder Files { get; }

    public TestClient Client { get; }

    public string Text { get; }

    public string Uri => Files.UriOf("hatch-lid.recipe");

    public JsonObject Document => new() { ["uri"] = Uri };

    /// <summary>The place of a text: of its beginning, or of the character with this number in it.</summary>
    public JsonObject Place(string of, int plus = 0)
    {
        var offset = Text.IndexOf(of, StringComparison.Ordinal);
        Assert.True(offset >= 0, of);
        var (line, column) = TextModel.Place(Text, offset + plus, PositionEncoding.Utf16);
        return new JsonObject { ["line"] = line, ["character"] = column };
    }

    public JsonObject Range(string of) => new() { ["start"] = Place(of), ["end"] = Place(of, of.Length) };

    public JsonObject All => new()
    {
        ["start"] = new JsonObject { ["line"] = 0, ["character"] = 0 },
        ["end"] = new JsonObject { ["line"] = 1000, ["character"] = 0 },
    };

    /// <summary>Asks about the document; more members as given.</summary>
    public JsonNode? Ask(string method, params (string Name, JsonNode? Value)[] more)
    {
        var parameters = new JsonObject { ["textDocument"] = Document };
        foreach (var (name, value) in more)
        {
            parameters[name] = value;
        }

        return Client.Request(method, parameters);
    }

    /// <summary>The text that a range of the protocol means.</summary>
    public string Slice(JsonNode range) => Text[Offset(range["start"]!)..Offset(range["end"]!)];

    /// <summary>The document after edits of the protocol.</summary>
    public string With(JsonArray edits)
    {
        var text = Text;
        foreach (var edit in edits.OrderByDescending(e => Offset(e!["range"]!["start"]!)))
        {
            text = string.Concat(text.AsSpan(0, Offset(edit!["range"]!["start"]!)), (string)edit["newText"]!, text.AsSpan(Offset(edit["range"]!["end"]!)));
        }

        return text;
    }

    public void Dispose()
    {
        Client.Dispose();
        Files.Dispose();
    }

    private int Offset(JsonNode position)
    {
        var lines = Text.Split('\n');
        return lines.Take((int)position["line"]!).Sum(line => line.Length + 1) + (int)position["character"]!;
    }
}
