using System.Text;
using System.Text.Json.Nodes;

namespace Recipe.LanguageServer.Tests;

/// <summary>Whatever comes in, the server answers with whole messages, shows no stack trace, and ends when the stream ends.</summary>
public sealed class FuzzTests
{
    private static readonly string[] Conversation =
    [
        """{"jsonrpc":"2.0","id":1,"method":"initialize","params":{"processId":null,"rootUri":null,"capabilities":{"textDocument":{"codeAction":{"codeActionLiteralSupport":{}}}}}}""",
        """{"jsonrpc":"2.0","method":"initialized","params":{}}""",
        """{"jsonrpc":"2.0","method":"textDocument/didOpen","params":{"textDocument":{"uri":"untitled:a","languageId":"recipe","version":1,"text":"language 1\npart lid {\n  title \"𝛼\"\n}\n"}}}""",
        """{"jsonrpc":"2.0","id":2,"method":"textDocument/hover","params":{"textDocument":{"uri":"untitled:a"},"position":{"line":1,"character":1}}}""",
        """{"jsonrpc":"2.0","method":"textDocument/didChange","params":{"textDocument":{"uri":"untitled:a","version":2},"contentChanges":[{"range":{"start":{"line":1,"character":5},"end":{"line":1,"character":8}},"text":"ö"}]}}""",
        """{"jsonrpc":"2.0","id":"three","method":"textDocument/completion","params":{"textDocument":{"uri":"untitled:a"},"position":{"line":2,"character":2}}}""",
        """{"jsonrpc":"2.0","method":"$/cancelRequest","params":{"id":"three"}}""",
        """{"jsonrpc":"2.0","id":4,"method":"textDocument/codeAction","params":{"textDocument":{"uri":"untitled:a"},"range":{"start":{"line":0,"character":0},"end":{"line":4,"character":0}},"context":{"diagnostics":[]}}}""",
        """{"jsonrpc":"2.0","id":5,"method":"shutdown"}""",
        """{"jsonrpc":"2.0","method":"exit"}""",
    ];

    [Fact]
    public void The_conversation_itself_is_sound()
    {
        var (status, answers) = Serve(Stream(Conversation));
        Assert.Equal(0, status);
        Assert.DoesNotContain(answers, answer => answer["error"] is { } error && (int)error["code"]! != -32800);
        Assert.Contains(answers, answer => (string?)answer["method"] == "textDocument/publishDiagnostics");
    }

    [Fact]
    public void A_stream_that_breaks_off_anywhere_ends_it()
    {
        var stream = Stream(Conversation);
        for (var length = 0; length < stream.Length; length += 7)
        {
            Assert.InRange(Serve(stream[..length]).Status, 0, 1);
        }
    }

    [Theory]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void Bytes_that_are_changed_never_break_it(int seed)
    {
        var random = new Random(seed);
        var stream = Stream(Conversation);
        for (var i = 0; i < 150; i++)
        {
            var bytes = stream.ToArray().ToList();
            for (var changes = random.Next(1, 8); changes > 0; changes--)
            {
                Change(random, bytes);
            }

            Assert.InRange(Serve([.. bytes]).Status, 0, 1);
        }
    }

    [Theory]
    [InlineData(4)]
    [InlineData(5)]
    public void Messages_whose_json_is_changed_are_answered(int seed)
    {
        var random = new Random(seed);
        for (var i = 0; i < 100; i++)
        {
            var bodies = Conversation.Select(body => random.Next(3) == 0 ? Changed(random, body) : body).ToArray();
            var (status, answers) = Serve(Stream(bodies));
            Assert.InRange(status, 0, 1);
            Assert.All(answers, answer => Assert.Equal("2.0", (string?)answer["jsonrpc"]));
        }
    }

    [Fact]
    public void Pure_noise_ends_it()
    {
        var random = new Random(6);
        for (var i = 0; i < 100; i++)
        {
            var noise = new byte[random.Next(4000)];
            random.NextBytes(noise);
            Assert.Equal(1, Serve(noise).Status);
        }
    }

    [Fact]
    public void Text_that_is_no_unicode_keeps_the_documents_alike()
    {
        var (status, answers) = Serve(Stream(
        [
            Conversation[0], Conversation[1],
            """{"jsonrpc":"2.0","method":"textDocument/didOpen","params":{"textDocument":{"uri":"untitled:a","languageId":"recipe","version":1,"text":"# \ud800\npart lid {\n}\n"}}}""",
            """{"jsonrpc":"2.0","id":2,"method":"textDocument/foldingRange","params":{"textDocument":{"uri":"untitled:a"}}}""",
        ]));
        Assert.Equal(1, status);
        Assert.Single(answers, answer => answer["id"] is { } id && (int)id == 2 && answer["result"] is JsonArray { Count: 1 });
    }

    [Fact]
    public void Deep_nesting_is_refused()
    {
        var (_, answers) = Serve(Stream([Conversation[0], new string('[', 1_000_000), $$"""{"jsonrpc":"2.0","id":9,"method":"textDocument/hover","params":{{new string('[', 5000)}}{{new string(']', 5000)}}}"""]));
        Assert.Equal(2, answers.Count(answer => answer["error"] is { } error && (int)error["code"]! == -32700));
    }

    private static void Change(Random random, List<byte> bytes)
    {
        var at = random.Next(bytes.Count);
        switch (random.Next(5))
        {
            case 0:
                bytes[at] = (byte)random.Next(256);
                break;
            case 1:
                bytes.Insert(at, (byte)random.Next(256));
                break;
            case 2:
                bytes.RemoveRange(at, Math.Min(random.Next(40), bytes.Count - at - 1));
                break;
            case 3:
                bytes.InsertRange(at, bytes.GetRange(at, Math.Min(random.Next(80), bytes.Count - at)));
                break;
            default:
                bytes.Insert(at, (byte)"{}[]\",:\r\n0123456789"[random.Next(19)]);
                break;
        }
    }

    private static string Changed(Random random, string body)
    {
        string[] odd = ["null", "-1", "1e400", "\"\\udc00\"", "[]", "{}", "true", "99999999999999999999", "\"\"", "2147483647"];
        var colons = Enumerable.Range(0, body.Length).Where(i => body[i] == ':').ToList();
        var at = colons[random.Next(colons.Count)] + 1;
        var end = body.IndexOfAny([',', '}', ']'], at);
        return end < 0 ? body[..at] : string.Concat(body.AsSpan(0, at), odd[random.Next(odd.Length)], body.AsSpan(end));
    }

    private static byte[] Stream(IEnumerable<string> bodies) =>
        [.. bodies.SelectMany(body => Encoding.UTF8.GetBytes($"Content-Length: {Encoding.UTF8.GetByteCount(body)}\r\n\r\n{body}"))];

    private static (int Status, List<JsonObject> Answers) Serve(byte[] stream)
    {
        using var input = new MemoryStream(stream);
        using var output = new MemoryStream();
        var status = StdioServer.Run(input, output, () => TestClient.Today);
        var answers = Frames.Read(new MemoryStream(output.ToArray())).Select(body => JsonNode.Parse(body)!.AsObject()).ToList();
        Assert.All(answers, answer => Assert.DoesNotContain("   at ", answer.ToJsonString()));
        Assert.All(answers, answer => Assert.NotEqual(-32603, (int?)answer["error"]?["code"]));
        return (status, answers);
    }
}
