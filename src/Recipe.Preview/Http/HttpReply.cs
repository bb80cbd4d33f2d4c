using System.Buffers;
using System.Text;
using System.Text.Json;

namespace Recipe.Preview.Http;

/// <summary>An answer.</summary>
/// <param name="Status">The status of HTTP.</param>
/// <param name="Type">The type of the body.</param>
/// <param name="Body">The body.</param>
internal sealed record HttpReply(int Status, string Type, ReadOnlyMemory<byte> Body)
{
    public const string Json = "application/json; charset=utf-8";

    // Nothing from outside, nothing inline, no frame round us, no form that leads away. The page makes text with textContent; the one place where
    // markup is read is the parser of our own drawings, named here, so that a slip elsewhere is refused by the browser.
    private const string Policy =
        "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; connect-src 'self'; base-uri 'none'; form-action 'none'; frame-ancestors 'none'; "
        + "require-trusted-types-for 'script'; trusted-types recipe-drawings";

    /// <summary>A refusal, in words that the page shows.</summary>
    public static HttpReply Refused(int status, string message)
    {
        var body = new ArrayBufferWriter<byte>();
        using (var json = new Utf8JsonWriter(body))
        {
            json.WriteStartObject();
            json.WriteString("error", message);
            json.WriteEndObject();
        }

        return new HttpReply(status, Json, body.WrittenMemory);
    }

    /// <summary>The head as it goes over the wire.</summary>
    /// <param name="length">Length of the body; null for one that goes on until it ends.</param>
    public byte[] Head(int? length)
    {
        var head = new StringBuilder();
        head.Append(System.Globalization.CultureInfo.InvariantCulture, $"HTTP/1.1 {Status} {Phrase(Status)}\r\n")
            .Append("Content-Type: ").Append(Type).Append("\r\n");
        if (length is { } bytes)
        {
            head.Append(System.Globalization.CultureInfo.InvariantCulture, $"Content-Length: {bytes}\r\n");
        }

        head.Append("Connection: close\r\nCache-Control: no-store\r\nX-Content-Type-Options: nosniff\r\nReferrer-Policy: no-referrer\r\n")
            .Append("Cross-Origin-Resource-Policy: same-origin\r\nCross-Origin-Opener-Policy: same-origin\r\nContent-Security-Policy: ").Append(Policy)
            .Append("\r\n\r\n");
        return Encoding.ASCII.GetBytes(head.ToString());
    }

    private static string Phrase(int status) => status switch
    {
        200 => "OK",
        400 => "Bad Request",
        403 => "Forbidden",
        404 => "Not Found",
        405 => "Method Not Allowed",
        408 => "Request Timeout",
        409 => "Conflict",
        413 => "Content Too Large",
        422 => "Unprocessable Content",
        431 => "Request Header Fields Too Large",
        500 => "Internal Server Error",
        503 => "Service Unavailable",
        _ => "Answer",
    };
}
