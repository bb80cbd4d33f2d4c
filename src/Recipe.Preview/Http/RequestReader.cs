using System.Globalization;
using System.Text;

namespace Recipe.Preview.Http;

/// <summary>
/// Reads one request of HTTP/1.1, strictly: a browser writes clean ones. Bodies come with their length and in no other way; nothing is read
/// that is larger than what the page ever sends.
/// </summary>
internal static class RequestReader
{
    private const int MostHead = 16 * 1024;
    private const int MostBody = 1024 * 1024;

    /// <summary>Reads it; null when the other side said nothing.</summary>
    /// <exception cref="HttpRefusal">It is no request that is answered here.</exception>
    public static async Task<HttpRequest?> Read(Stream stream, CancellationToken stop)
    {
        var buffer = new byte[MostHead];
        var (filled, end) = (0, -1);
        while (end < 0)
        {
            if (filled == buffer.Length)
            {
                throw new HttpRefusal(431, "The head of the request is too long.");
            }

            var read = await stream.ReadAsync(buffer.AsMemory(filled), stop).ConfigureAwait(false);
            if (read == 0)
            {
                return filled == 0 ? null : throw new HttpRefusal(400, "The request broke off.");
            }

            var from = Math.Max(0, filled - 3);
            filled += read;
            end = buffer.AsSpan(from, filled - from).IndexOf("\r\n\r\n"u8) is >= 0 and var at ? from + at : -1;
        }

        var (method, target, headers) = Head(buffer.AsSpan(0, end));
        var body = new byte[LengthOf(method, headers)];
        var early = Math.Min(body.Length, filled - end - 4);
        buffer.AsSpan(end + 4, early).CopyTo(body);
        await stream.ReadExactlyAsync(body.AsMemory(early), stop).ConfigureAwait(false);
        var query = target.IndexOf('?', StringComparison.Ordinal);
        return new HttpRequest(method, query < 0 ? target : target[..query], query < 0 ? "" : target[(query + 1)..], headers, body);
    }

    private static (string Method, string Target, Dictionary<string, string> Headers) Head(ReadOnlySpan<byte> head)
    {
        if (!IsPlain(head))
        {
            throw new HttpRefusal(400, "The head of the request is not plain text.");
        }

        var lines = Encoding.ASCII.GetString(head).Split("\r\n");
        if (lines[0].Split(' ') is not [var method, ['/', ..] target, "HTTP/1.1"])
        {
            throw new HttpRefusal(400, "That is no request of HTTP/1.1.");
        }

        if (method is not ("GET" or "POST"))
        {
            throw new HttpRefusal(405, "Only GET and POST are answered here.");
        }

        var headers = new Dictionary<string, string>(StringComparer.OrdinalIgnoreCase);
        foreach (var line in lines.Skip(1))
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            if (colon <= 0 || line[0] is ' ' or '\t' || line[colon - 1] is ' ' or '\t' || !headers.TryAdd(line[..colon], line[(colon + 1)..].Trim()))
            {
                throw new HttpRefusal(400, "A header of the request is not well formed, or stands twice.");
            }
        }

        return (method, target, headers);
    }

    private static bool IsPlain(ReadOnlySpan<byte> head)
    {
        foreach (var b in head)
        {
            if (b is (< 0x20 or > 0x7E) and not ((byte)'\r' or (byte)'\n' or (byte)'\t'))
            {
                return false;
            }
        }

        return true;
    }

    private static int LengthOf(string method, Dictionary<string, string> headers)
    {
        if (headers.ContainsKey("Transfer-Encoding"))
        {
            throw new HttpRefusal(400, "A body in chunks is not read here.");
        }

        if (!headers.TryGetValue("Content-Length", out var text))
        {
            return method == "GET" ? 0 : throw new HttpRefusal(400, "The length of the body is missing.");
        }

        return int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out var length) && length <= MostBody
            ? length
            : throw new HttpRefusal(413, "The body is too long.");
    }
}
