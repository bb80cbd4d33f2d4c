namespace Recipe.Fuzzing.Targets;

/// <summary>The bytes that a client sends to the language server: whatever they are, it answers with whole messages and ends when they end.</summary>
internal sealed class ProtocolTarget : IFuzzTarget
{
    private static readonly string[] Requests =
    [
        """{"jsonrpc":"2.0","id":2,"method":"textDocument/hover","params":{"textDocument":{"uri":"untitled:a"},"position":{"line":1,"character":1}}}""",
        """{"jsonrpc":"2.0","id":"three","method":"textDocument/completion","params":{"textDocument":{"uri":"untitled:a"},"position":{"line":2,"character":2}}}""",
        """{"jsonrpc":"2.0","id":4,"method":"textDocument/codeAction","params":{"textDocument":{"uri":"untitled:a"},"range":{"start":{"line":0,"character":0},"end":{"line":4,"character":0}},"context":{"diagnostics":[]}}}""",
        """{"jsonrpc":"2.0","id":5,"method":"textDocument/rename","params":{"textDocument":{"uri":"untitled:a"},"position":{"line":1,"character":6},"newName":"b"}}""",
        """{"jsonrpc":"2.0","id":6,"method":"textDocument/semanticTokens/full/delta","params":{"textDocument":{"uri":"untitled:a"},"previousResultId":"1"}}""",
        """{"jsonrpc":"2.0","id":7,"method":"textDocument/rangeFormatting","params":{"textDocument":{"uri":"untitled:a"},"range":{"start":{"line":0,"character":0},"end":{"line":9,"character":0}},"options":{"tabSize":2,"insertSpaces":true}}}""",
        """{"jsonrpc":"2.0","id":8,"method":"textDocument/selectionRange","params":{"textDocument":{"uri":"untitled:a"},"positions":[{"line":1,"character":1}]}}""",
        """{"jsonrpc":"2.0","id":9,"method":"textDocument/inlayHint","params":{"textDocument":{"uri":"untitled:a"},"range":{"start":{"line":0,"character":0},"end":{"line":9,"character":0}}}}""",
        """{"jsonrpc":"2.0","id":10,"method":"workspace/symbol","params":{"query":"l"}}""",
        """{"jsonrpc":"2.0","id":11,"method":"workspace/executeCommand","params":{"command":"recipe.showNumbers","arguments":["untitled:a","lid"]}}""",
        """{"jsonrpc":"2.0","id":12,"method":"textDocument/diagnostic","params":{"textDocument":{"uri":"untitled:a"}}}""",
        """{"jsonrpc":"2.0","id":13,"method":"completionItem/resolve","params":{"label":"part"}}""",
    ];

    private static readonly string[] Opening =
    [
        Conversation.Initialize,
        """{"jsonrpc":"2.0","method":"initialized","params":{}}""",
        """{"jsonrpc":"2.0","method":"textDocument/didOpen","params":{"textDocument":{"uri":"untitled:a","languageId":"recipe","version":1,"text":"language 1\npart lid {\n  title \"\u00f6\"\n}\n"}}}""",
    ];

    private static readonly string[] Closing =
    [
        """{"jsonrpc":"2.0","method":"textDocument/didChange","params":{"textDocument":{"uri":"untitled:a","version":2},"contentChanges":[{"range":{"start":{"line":1,"character":5},"end":{"line":1,"character":8}},"text":"x"}]}}""",
        """{"jsonrpc":"2.0","method":"$/cancelRequest","params":{"id":2}}""",
        """{"jsonrpc":"2.0","method":"textDocument/didClose","params":{"textDocument":{"uri":"untitled:a"}}}""",
        """{"jsonrpc":"2.0","id":14,"method":"shutdown"}""",
        """{"jsonrpc":"2.0","method":"exit"}""",
    ];

    public string Name => "protocol";

    public IEnumerable<string> Words =>
    [
        "Content-Length: ", "\r\n\r\n", "Content-Type: ", "charset=utf-8", "\"id\":", "\"method\":", "\"params\":", "null", "true", "[]", "{}", "-1", "1e400", "2147483647", "\"\\ud800\"", "\"range\":", "\"position\":", "\"line\":", "\"character\":",
        "textDocument/references", "textDocument/documentSymbol", "textDocument/foldingRange", "textDocument/documentLink", "textDocument/codeLens", "textDocument/onTypeFormatting", "textDocument/signatureHelp", "workspace/didChangeConfiguration", "workspace/diagnostic", "utf-8", "utf-16", "utf-32",
    ];

    public IEnumerable<(string Name, byte[] Bytes)> Seeds() =>
    [
        .. Requests.Select((request, i) => ($"request-{i + 2}", Conversation.Stream([.. Opening, request, .. Closing]))),
        ("header", "content-type: application/vscode-jsonrpc; charset=utf-8\r\nContent-Length: 2\r\n\r\n{}"u8.ToArray()),
        ("batch", Conversation.Stream([Conversation.Initialize, "[" + Requests[0] + "," + Requests[1] + "]"])),
    ];

    public void Run(byte[] bytes)
    {
        // Only documents that are nowhere: no input of a fuzzer shall list, read or write the disk that it runs on.
        if (Touches(bytes, "file:"u8) || Touches(bytes, "\"/"u8) || Touches(bytes, "makePapers"u8) || Touches(bytes, "recipe.preview"u8))
        {
            return;
        }

        Conversation.Hold(bytes);
    }

    private static bool Touches(byte[] bytes, ReadOnlySpan<byte> word) => bytes.AsSpan().IndexOf(word) >= 0;
}
