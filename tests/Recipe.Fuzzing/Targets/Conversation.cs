using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Recipe.LanguageServer;

namespace Recipe.Fuzzing.Targets;

/// <summary>A client and the language server, on streams in memory.</summary>
internal static class Conversation
{
    /// <summary>Where a document that is nowhere on disk lives.</summary>
    public const string Document = "untitled:fuzzed";

    /// <summary>The first message of a client that can do much.</summary>
    public const string Initialize = """{"jsonrpc":"2.0","id":1,"method":"initialize","params":{"processId":null,"rootUri":null,"capabilities":{"textDocument":{"codeAction":{"codeActionLiteralSupport":{}},"documentSymbol":{"hierarchicalDocumentSymbolSupport":true},"completion":{"completionItem":{"snippetSupport":true}}},"workspace":{"workspaceEdit":{"documentChanges":true}}}}}""";

    private static readonly DateOnly Today = new(2026, 5, 14);

    /// <summary>Messages as bytes.</summary>
    public static byte[] Stream(IEnumerable<string> bodies) =>
        [.. bodies.SelectMany(body => Encoding.UTF8.GetBytes($"Content-Length: {Encoding.UTF8.GetByteCount(body)}\r\n\r\n{body}"))];

    /// <summary>
    /// Lets the server read bytes and holds what is true of every conversation: it ends with the input, with status 0 or 1; what it wrote are whole
    /// messages; none says that something failed inside, or shows the inside.
    /// </summary>
    public static IReadOnlyList<JsonObject> Hold(byte[] bytes)
    {
        using var input = new MemoryStream(bytes);
        using var output = new MemoryStream();
        var status = StdioServer.Run(input, output, () => Today);
        BrokenPropertyException.ThrowUnless(status is 0 or 1, $"Status {status}.");
        var answers = Frames(output.ToArray()).ToList();
        foreach (var answer in answers)
        {
            var text = answer.ToJsonString();
            BrokenPropertyException.ThrowUnless((string?)answer["jsonrpc"] == "2.0", "A message of no protocol.");
            BrokenPropertyException.ThrowUnless((int?)answer["error"]?["code"] != -32603, $"Something failed inside: {text}");
            BrokenPropertyException.ThrowUnless(!text.Contains("failed inside the server", StringComparison.Ordinal), $"Something failed inside: {text}");
            BrokenPropertyException.ThrowUnless(!text.Contains("   at Recipe.", StringComparison.Ordinal) && !text.Contains("   at System.", StringComparison.Ordinal), $"A stack trace: {text}");
        }

        return answers;
    }

    private static IEnumerable<JsonObject> Frames(byte[] bytes)
    {
        var at = 0;
        while (at < bytes.Length)
        {
            var end = bytes.AsSpan(at).IndexOf("\r\n\r\n"u8);
            BrokenPropertyException.ThrowUnless(end > 0, "The output ends inside a header.");
            var header = Encoding.ASCII.GetString(bytes, at, end);
            BrokenPropertyException.ThrowUnless(
                header.StartsWith("Content-Length: ", StringComparison.Ordinal) & int.TryParse(header.AsSpan(16), out var length) && at + end + 4 + length <= bytes.Length,
                $"A header that is none: {header}");
            JsonNode? body;
            try
            {
                body = JsonNode.Parse(bytes.AsSpan(at + end + 4, length));
            }
            catch (JsonException problem)
            {
                throw new BrokenPropertyException($"A message is no JSON: {problem.Message}");
            }

            yield return body as JsonObject ?? throw new BrokenPropertyException("A message is no object.");
            at += end + 4 + length;
        }
    }
}
