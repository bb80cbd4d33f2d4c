using Recipe.Preview.Http;

namespace Recipe.Fuzzing.Targets;

/// <summary>What the live page's server reads from a connection: a request, a refusal, or the end.</summary>
internal sealed class HttpTarget : IFuzzTarget
{
    public string Name => "http";

    public IEnumerable<string> Words => ["GET ", "POST ", " HTTP/1.1\r\n", "\r\n\r\n", "Content-Length: ", "Transfer-Encoding: chunked", "Host: 127.0.0.1:1\r\n", "Origin: ", "\r\n ", "999999999999"];

    public IEnumerable<(string Name, byte[] Bytes)> Seeds() =>
    [
        ("get", "GET /view?part=lid HTTP/1.1\r\nHost: 127.0.0.1:1\r\nAccept: */*\r\n\r\n"u8.ToArray()),
        ("post", "POST /try HTTP/1.1\r\nHost: 127.0.0.1:1\r\nContent-Length: 4\r\nOrigin: http://127.0.0.1:1\r\n\r\nabcd"u8.ToArray()),
        ("chunked", "POST / HTTP/1.1\r\nTransfer-Encoding: chunked\r\n\r\n0\r\n\r\n"u8.ToArray()),
    ];

    public void Run(byte[] bytes)
    {
        using var stream = new MemoryStream(bytes);
        try
        {
            var request = RequestReader.Read(stream, CancellationToken.None).GetAwaiter().GetResult();
            BrokenPropertyException.ThrowUnless(request is null == (bytes.Length == 0), "Nothing was read from something.");
            BrokenPropertyException.ThrowUnless(request is null || (request.Path.StartsWith('/') && request.Body.Length <= bytes.Length), "A request that was not sent.");
        }
        catch (HttpRefusal refusal)
        {
            BrokenPropertyException.ThrowUnless(refusal.Status is >= 400 and < 500 && refusal.Message.Length > 0, "A refusal without a reason.");
        }
        catch (EndOfStreamException)
        {
            // The other side went away within the body; the connection is closed.
        }
    }
}
