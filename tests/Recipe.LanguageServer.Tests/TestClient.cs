using System.Collections.Concurrent;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;
using Recipe.Compiler.Comparing;

namespace Recipe.LanguageServer.Tests;

/// <summary>An editor that speaks to a server in this process over two pipes.</summary>
internal sealed class TestClient : IDisposable
{
    /// <summary>The day that the server believes in.</summary>
    public static readonly DateOnly Today = new(2026, 6, 1);

    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(2);

    private readonly MemoryPipe _toServer = new();
    private readonly MemoryPipe _fromServer = new();
    private readonly BlockingCollection<JsonObject> _received = [];
    private readonly List<JsonObject> _notifications = [];
    private readonly Task<int> _server;
    private int _lastId;

    public TestClient(Func<string, OpenedRevision>? lastCommit = null, string? bookFolder = null)
    {
        _server = Task.Factory.StartNew(
            () =>
            {
                using (_fromServer)
                {
                    return StdioServer.Run(_toServer, _fromServer, () => Today, lastCommit, Rules, bookFolder);
                }
            },
            CancellationToken.None,
            TaskCreationOptions.LongRunning,
            TaskScheduler.Default);
        new Thread(Receive) { IsBackground = true }.Start();
    }

    /// <summary>Who runs rules in C#.</summary>
    public TrustsNobody Rules { get; } = new();

    /// <summary>Requests of the server, and how this client answers them; an answer of null stands for JSON's null.</summary>
    public Dictionary<string, Func<JsonObject, JsonNode?>> Answers { get; } = [];

    /// <summary>What the server asked for, in order.</summary>
    public List<JsonObject> Asked { get; } = [];

    /// <summary>A client that has said hello, with these capabilities.</summary>
    public static TestClient Begin(string capabilities = "{}", string folders = "null", string? bookFolder = null)
    {
        var client = new TestClient(bookFolder: bookFolder);
        client.Initialize(capabilities, folders);
        return client;
    }

    public JsonNode Initialize(string capabilities = "{}", string folders = "null", string options = "null")
    {
        var result = Request("initialize", $$"""{ "processId": null, "rootUri": null, "capabilities": {{capabilities}}, "workspaceFolders": {{folders}}, "initializationOptions": {{options}} }""")!;
        Notify("initialized", "{}");
        return result;
    }

    public void Open(string uri, string text, int version = 1) => Notify("textDocument/didOpen", new JsonObject
    {
        ["textDocument"] = new JsonObject { ["uri"] = uri, ["languageId"] = "recipe", ["version"] = version, ["text"] = text },
    });

    public void Change(string uri, int version, params JsonNode[] changes) => Notify("textDocument/didChange", new JsonObject
    {
        ["textDocument"] = new JsonObject { ["uri"] = uri, ["version"] = version },
        ["contentChanges"] = new JsonArray(changes),
    });

    public void Notify(string method, string parameters) => Notify(method, JsonNode.Parse(parameters));

    public void Notify(string method, JsonNode? parameters) => Send(new JsonObject { ["jsonrpc"] = "2.0", ["method"] = method, ["params"] = parameters });

    /// <summary>Asks and waits for the result.</summary>
    public JsonNode? Request(string method, string parameters) => Request(method, JsonNode.Parse(parameters));

    public JsonNode? Request(string method, JsonNode? parameters)
    {
        var answer = Ask(method, parameters);
        Assert.True(answer["error"] is null, answer["error"]?.ToJsonString());
        return answer["result"];
    }

    /// <summary>Asks and waits for the error: its code.</summary>
    public int Refused(string method, string parameters) => (int)Ask(method, JsonNode.Parse(parameters))["error"]!["code"]!;

    /// <summary>Asks and waits for the whole answer.</summary>
    public JsonObject Ask(string method, JsonNode? parameters)
    {
        var id = Begin(method, parameters);
        return AnswerTo(id);
    }

    /// <summary>Asks and does not wait.</summary>
    public int Begin(string method, JsonNode? parameters)
    {
        Send(new JsonObject { ["jsonrpc"] = "2.0", ["id"] = ++_lastId, ["method"] = method, ["params"] = parameters });
        return _lastId;
    }

    public JsonObject AnswerTo(int id) => Await(message => message["method"] is null && message["id"]?.GetValueKind() == JsonValueKind.Number && (int)message["id"]! == id);

    /// <summary>The next notification of this kind, whether it has come already or not.</summary>
    public JsonObject Notification(string method, Func<JsonObject, bool>? wanted = null)
    {
        var found = _notifications.Find(Fits) ?? Await(Fits);
        _notifications.Remove(found);
        return found["params"]!.AsObject();

        bool Fits(JsonObject message) => (string?)message["method"] == method && (wanted is null || wanted(message["params"]!.AsObject()));
    }

    /// <summary>Whether a notification of this kind came before the last answer and was not looked at.</summary>
    public bool HasNotification(string method) => _notifications.Exists(message => (string?)message["method"] == method);

    /// <summary>The diagnostics that the server sends for a version of a document.</summary>
    public JsonArray Diagnostics(string uri, int version) => Notification(
        "textDocument/publishDiagnostics",
        p => (string?)p["uri"] == uri && (int?)p["version"] == version)["diagnostics"]!.AsArray();

    public void SendBytes(ReadOnlySpan<byte> bytes)
    {
        _toServer.Write(bytes);
        _toServer.Flush();
    }

    public void Send(JsonNode message)
    {
        var body = Encoding.UTF8.GetBytes(message.ToJsonString());
        SendBytes([.. Encoding.ASCII.GetBytes($"Content-Length: {body.Length}\r\n\r\n"), .. body]);
    }

    /// <summary>The next message that is not a request of the server.</summary>
    public JsonObject Next() => Await(_ => true);

    /// <summary>Closes the way to the server and waits until it has left.</summary>
    public int Leave()
    {
        _toServer.End();
        Assert.True(_server.Wait(Patience), "the server stays");
        return _server.Result;
    }

    /// <summary>Waits until the server leaves by itself.</summary>
    public int ExitStatus()
    {
        Assert.True(_server.Wait(Patience), "the server stays");
        return _server.Result;
    }

    public void Dispose()
    {
        _toServer.End();
        _server.Wait(Patience);
        _toServer.Dispose();
    }

    private JsonObject Await(Func<JsonObject, bool> wanted)
    {
        while (_received.TryTake(out var message, Patience))
        {
            if (message["method"] is not null && message.ContainsKey("id"))
            {
                Asked.Add(message);
                var answer = Answers.GetValueOrDefault((string)message["method"]!)?.Invoke(message["params"] as JsonObject ?? []);
                Send(new JsonObject { ["jsonrpc"] = "2.0", ["id"] = message["id"]!.DeepClone(), ["result"] = answer });
            }
            else if (wanted(message))
            {
                return message;
            }
            else if (message["method"] is not null)
            {
                _notifications.Add(message);
            }
        }

        throw new TimeoutException("The server does not answer.");
    }

    private void Receive()
    {
        foreach (var body in Frames.Read(_fromServer))
        {
            _received.Add(JsonNode.Parse(body)!.AsObject());
        }

        _received.CompleteAdding();
    }
}
