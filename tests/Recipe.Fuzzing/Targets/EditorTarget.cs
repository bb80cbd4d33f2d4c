using System.Text;
using Recipe.TestKit;

namespace Recipe.Fuzzing.Targets;

/// <summary>Whatever text is open in an editor, every feature answers at a few places of it, before and after a change.</summary>
internal sealed class EditorTarget : IFuzzTarget
{
    private static readonly string[] AtAPlace =
    [
        "textDocument/hover", "textDocument/completion", "textDocument/signatureHelp", "textDocument/definition", "textDocument/documentHighlight", "textDocument/prepareRename",
    ];

    private static readonly string[] OfADocument =
    [
        "textDocument/documentSymbol", "textDocument/foldingRange", "textDocument/semanticTokens/full", "textDocument/codeLens", "textDocument/documentLink", "textDocument/diagnostic",
    ];

    public string Name => "editor";

    public IEnumerable<string> Words => new TextTarget().Words;

    public IEnumerable<(string Name, byte[] Bytes)> Seeds() =>
        [.. SeedFiles.In("samples", "*.recipe", largest: 4_000), .. SeedFiles.In("tests/corpus/sound", "*.recipe", largest: 2_000), SeedFiles.Of("shop", Repository.Read("samples/shop.recipe"))];

    public void Run(byte[] bytes)
    {
        var text = Encoding.UTF8.GetString(bytes);
        var id = 1;
        var bodies = new List<string>
        {
            Conversation.Initialize,
            """{"jsonrpc":"2.0","method":"initialized","params":{}}""",
            $$$"""{"jsonrpc":"2.0","method":"textDocument/didOpen","params":{"textDocument":{"uri":"{{{Conversation.Document}}}","languageId":"recipe","version":1,"text":{{{JsonEncodedText(text)}}} } }}""",
        };
        var lines = text.Count(c => c == '\n') + 1;

        // The places follow from the text, so that an input is the same each time it is run.
        var seed = 17;
        foreach (var b in bytes)
        {
            seed = unchecked((seed * 31) + b);
        }

        var random = new Random(seed);
        for (var i = 0; i < 3; i++)
        {
            var place = $$$"""{"line":{{{random.Next(lines + 1)}}},"character":{{{random.Next(60)}}} }""";
            bodies.AddRange(AtAPlace.Select(method => Request(method, $$$""","position":{{{place}}}""")));
            bodies.Add(Request("textDocument/references", $$$""","position":{{{place}}},"context":{"includeDeclaration":true}"""));
            bodies.Add(Request("textDocument/rename", $$$""","position":{{{place}}},"newName":"other-name" """));
            bodies.Add(Request("textDocument/selectionRange", $$$""","positions":[{{{place}}}]"""));
            bodies.Add(Request("textDocument/onTypeFormatting", $$$""","position":{{{place}}},"ch":"}","options":{"tabSize":2,"insertSpaces":true}"""));
        }

        var all = $$$"""{"start":{"line":0,"character":0},"end":{"line":{{{lines}}},"character":0}}""";
        bodies.AddRange(OfADocument.Select(method => Request(method, "")));
        bodies.Add(Request("textDocument/codeAction", $$$""","range":{{{all}}},"context":{"diagnostics":[]}"""));
        bodies.Add(Request("textDocument/inlayHint", $$$""","range":{{{all}}}"""));
        bodies.Add(Request("textDocument/formatting", ""","options":{"tabSize":2,"insertSpaces":true}"""));
        bodies.Add($$$"""{"jsonrpc":"2.0","method":"textDocument/didChange","params":{"textDocument":{"uri":"{{{Conversation.Document}}}","version":2},"contentChanges":[{"range":{"start":{"line":{{{random.Next(lines + 1)}}},"character":{{{random.Next(40)}}} },"end":{"line":{{{lines}}},"character":{{{random.Next(40)}}} }},"text":"}\n"}]}}""");
        bodies.AddRange(OfADocument.Select(method => Request(method, "")));
        bodies.Add($$$"""{"jsonrpc":"2.0","id":{{{++id}}},"method":"shutdown"}""");
        bodies.Add("""{"jsonrpc":"2.0","method":"exit"}""");
        var answers = Conversation.Hold(Conversation.Stream(bodies));
        var results = answers.Count(answer => answer["id"] is not null && answer["method"] is null);
        BrokenPropertyException.ThrowUnless(results == id, $"{id} requests and {results} answers.");

        string Request(string method, string more) => $$$"""{"jsonrpc":"2.0","id":{{{++id}}},"method":"{{{method}}}","params":{"textDocument":{"uri":"{{{Conversation.Document}}}"}{{{more}}} }}""";
    }

    private static string JsonEncodedText(string text) => '"' + System.Text.Json.JsonEncodedText.Encode(text).ToString() + '"';
}
