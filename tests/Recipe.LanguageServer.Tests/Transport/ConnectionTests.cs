using System.Text;
using System.Text.Json.Nodes;
using Recipe.LanguageServer.Transport;

namespace Recipe.LanguageServer.Tests.Transport;

public sealed class ConnectionTests
{
    [Fact]
    public void A_failure_inside_is_answered_without_a_stack_trace()
    {
        var answers = Serve("""{"jsonrpc":"2.0","id":1,"method":"fail"}""");
        var error = Assert.Single(answers)["error"]!;
        Assert.Equal(ErrorCode.InternalError, (int)error["code"]!);
        Assert.Equal("fail failed inside the server (InvalidOperationException).", (string?)error["message"]);
        Assert.Null(error["data"]);
    }

    [Fact]
    public void A_refusal_keeps_its_code_and_the_next_request_is_served()
    {
        var answers = Serve("""{"jsonrpc":"2.0","id":"a","method":"refuse"}""", """{"jsonrpc":"2.0","id":"b","method":"echo"}""");
        Assert.Equal(ErrorCode.InvalidParams, (int)answers[0]["error"]!["code"]!);
        Assert.Equal("a", (string?)answers[0]["id"]);
        Assert.Equal("b", (string?)answers[1]["id"]);
        Assert.Null(answers[1]["error"]);
    }

    [Fact]
    public void A_notification_that_fails_is_told_to_the_handler_and_not_answered()
    {
        var handler = new Handler();
        Assert.Empty(Serve(handler, """{"jsonrpc":"2.0","method":"fail"}"""));
        Assert.Equal(["fail failed inside the server (InvalidOperationException)."], handler.Failures);
    }

    [Fact]
    public void What_is_no_message_is_answered_with_a_null_id()
    {
        var answer = Assert.Single(Serve("garbage"));
        Assert.True(answer.ContainsKey("id"));
        Assert.Null(answer["id"]);
        Assert.Equal(ErrorCode.ParseError, (int)answer["error"]!["code"]!);
    }

    [Fact]
    public void An_answer_to_nothing_is_passed_over() => Assert.Empty(Serve("""{"jsonrpc":"2.0","id":5,"result":null}"""));

    [Fact]
    public void A_request_that_waits_is_cancelled_at_once()
    {
        using var handler = new Handler();
        using var client = new Pair(handler);
        client.Send("""{"jsonrpc":"2.0","id":1,"method":"wait"}""");
        handler.Entered.Wait();
        client.Send("""{"jsonrpc":"2.0","id":2,"method":"echo"}""");
        client.Send("""{"jsonrpc":"2.0","method":"$/cancelRequest","params":{"id":2}}""");

        // The first request still runs; the second is answered already.
        var cancelled = client.Next();
        Assert.Equal(2, (int)cancelled["id"]!);
        Assert.Equal(ErrorCode.RequestCancelled, (int)cancelled["error"]!["code"]!);
        handler.Go.Set();
        Assert.Equal(1, (int)client.Next()["id"]!);
        Assert.DoesNotContain(2L, handler.Served);
    }

    [Fact]
    public void A_request_that_runs_is_told_of_its_cancellation()
    {
        using var handler = new Handler();
        using var client = new Pair(handler);
        client.Send("""{"jsonrpc":"2.0","id":1,"method":"until-cancelled"}""");
        handler.Entered.Wait();
        client.Send("""{"jsonrpc":"2.0","method":"$/cancelRequest","params":{"id":1}}""");
        Assert.Equal(ErrorCode.RequestCancelled, (int)client.Next()["error"]!["code"]!);
    }

    [Theory]
    [InlineData("""{"id":99}""")]
    [InlineData("""{"id":"no"}""")]
    [InlineData("""{"id":1.5}""")]
    [InlineData("""{"id":"\ud800"}""")]
    [InlineData("[]")]
    [InlineData("null")]
    public void A_cancellation_of_nothing_does_nothing(string parameters)
    {
        var answers = Serve($$"""{"jsonrpc":"2.0","method":"$/cancelRequest","params":{{parameters}}}""", """{"jsonrpc":"2.0","id":1,"method":"echo"}""");
        Assert.Null(Assert.Single(answers)["error"]);
    }

    private static List<JsonObject> Serve(params string[] bodies)
    {
        using var handler = new Handler();
        return Serve(handler, bodies);
    }

    private static List<JsonObject> Serve(Handler handler, params string[] bodies)
    {
        using var input = new MemoryStream(Encoding.UTF8.GetBytes(string.Concat(bodies.Select(b => $"Content-Length: {Encoding.UTF8.GetByteCount(b)}\r\n\r\n{b}"))));
        using var output = new MemoryStream();
        using var connection = new Connection(input, output);
        Assert.Equal(1, connection.Run(handler));
        return [.. Frames.Read(new MemoryStream(output.ToArray())).Select(body => JsonNode.Parse(body)!.AsObject())];
    }

    private sealed class Handler : IMessageHandler, IDisposable
    {
        public List<string> Failures { get; } = [];

        public List<long?> Served { get; } = [];

        public ManualResetEventSlim Entered { get; } = new();

        public ManualResetEventSlim Go { get; } = new();

        public int? ExitStatus => null;

        public int StatusAtEnd => 1;

        public void OnRequest(Message request, MessageWriter writer, CancellationToken token)
        {
            Served.Add(request.Id.Number);
            Entered.Set();
            switch (request.Method)
            {
                case "fail":
                    throw new InvalidOperationException("secret");
                case "refuse":
                    throw new RpcException(ErrorCode.InvalidParams, "no");
                case "wait":
                    Go.Wait(CancellationToken.None);
                    break;
                case "until-cancelled":
                    token.WaitHandle.WaitOne();
                    token.ThrowIfCancellationRequested();
                    break;
            }

            writer.Result(request.Id, "done", LanguageServer.Protocol.ProtocolJson.Default.String);
        }

        public void OnNotification(Message notification) => throw new InvalidOperationException("secret");

        public void OnFailure(string what) => Failures.Add(what);

        public void Dispose()
        {
            Entered.Dispose();
            Go.Dispose();
        }
    }

    /// <summary>A connection served by another thread.</summary>
    private sealed class Pair : IDisposable
    {
        private readonly MemoryPipe _to = new();
        private readonly MemoryPipe _from = new();
        private readonly IEnumerator<byte[]> _frames;
        private readonly Task _serving;

        public Pair(Handler handler)
        {
            var connection = new Connection(_to, _from);
            _serving = Task.Run(() => connection.Run(handler));
            _frames = Frames.Read(_from).GetEnumerator();
        }

        public void Send(string body) => _to.Write(Encoding.UTF8.GetBytes($"Content-Length: {body.Length}\r\n\r\n{body}"));

        public JsonObject Next()
        {
            Assert.True(_frames.MoveNext());
            return JsonNode.Parse(_frames.Current)!.AsObject();
        }

        public void Dispose()
        {
            _to.End();
            _serving.Wait(TimeSpan.FromMinutes(1));
            _to.Dispose();
            _frames.Dispose();
            _from.Dispose();
        }
    }
}
