using System.Globalization;
using System.Text;

namespace Recipe.LanguageServer.Transport;

/// <summary>
/// Takes messages out of a byte stream: header lines, an empty line, then as many bytes as <c>Content-Length</c> says. Headers may
/// come in any order and case, and others beside them. After a header block that says no length the next one is read, so a client that
/// stumbles once is understood again.
/// </summary>
internal sealed class MessageReader(Stream input)
{
    /// <summary>Most bytes in a header block. Past it the stream is something else.</summary>
    public const int LargestHeader = 8 * 1024;

    /// <summary>Most bytes in a message: the largest recipe file there may be, with each character escaped.</summary>
    public const int LargestBody = 128 * 1024 * 1024;

    private readonly byte[] _buffer = new byte[16 * 1024];
    private int _start;
    private int _end;

    /// <summary>The next message; <see cref="MessageKind.End"/> when the stream ends or can no longer be understood.</summary>
    public Message Next()
    {
        long? length = null;
        string? charset = null;
        var headerBytes = 0;
        var line = new StringBuilder();
        while (true)
        {
            line.Clear();
            if (!ReadLine(line, ref headerBytes))
            {
                return new Message(MessageKind.End)
                {
                    Fault = headerBytes > LargestHeader ? new RpcException(ErrorCode.ParseError, "The header is too long.") : null,
                };
            }

            if (line.Length == 0)
            {
                if (headerBytes <= 2)
                {
                    // A line end too many between two messages.
                    headerBytes = 0;
                    continue;
                }

                break;
            }

            ReadHeader(line.ToString(), ref length, ref charset);
        }

        return length is { } bytes
            ? ReadBody(bytes, charset)
            : Message.Faulty(ErrorCode.ParseError, "The header gives no Content-Length that can be read.");
    }

    private static void ReadHeader(string line, ref long? length, ref string? charset)
    {
        var colon = line.IndexOf(':', StringComparison.Ordinal);
        if (colon < 0)
        {
            return;
        }

        var name = line.AsSpan(0, colon).Trim();
        var value = line.AsSpan(colon + 1).Trim();
        if (name.Equals("Content-Length", StringComparison.OrdinalIgnoreCase))
        {
            length = long.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out var bytes) ? bytes : null;
        }
        else if (name.Equals("Content-Type", StringComparison.OrdinalIgnoreCase))
        {
            var at = value.IndexOf("charset=", StringComparison.OrdinalIgnoreCase);
            charset = at < 0 ? null : value[(at + "charset=".Length)..].Trim(" \"';").ToString();
        }
    }

    private Message ReadBody(long length, string? charset)
    {
        if (length > LargestBody)
        {
            return Skip(length)
                ? Message.Faulty(ErrorCode.InvalidRequest, $"A message has at most {LargestBody / (1024 * 1024)} MB.")
                : new Message(MessageKind.End);
        }

        // Grown as the bytes arrive: a length that promises much and sends nothing costs nothing.
        var body = new byte[Math.Min(length, 1024 * 1024)];
        var read = 0;
        while (read < length)
        {
            if (read == body.Length)
            {
                Array.Resize(ref body, (int)Math.Min(length, body.Length * 2L));
            }

            var got = Take(body.AsSpan(read, (int)Math.Min(body.Length - read, length - read)));
            if (got == 0)
            {
                return new Message(MessageKind.End);
            }

            read += got;
        }

        return charset is null || charset.Equals("utf-8", StringComparison.OrdinalIgnoreCase) || charset.Equals("utf8", StringComparison.OrdinalIgnoreCase)
            ? MessageParser.Parse(body.AsMemory(0, read))
            : Message.Faulty(ErrorCode.ParseError, "Messages are UTF-8.");
    }

    private bool Skip(long length)
    {
        var waste = new byte[64 * 1024];
        while (length > 0)
        {
            var got = Take(waste.AsSpan(0, (int)Math.Min(waste.Length, length)));
            if (got == 0)
            {
                return false;
            }

            length -= got;
        }

        return true;
    }

    /// <summary>Reads a line without its end, LF or CRLF; false at the end of the stream or past the largest header.</summary>
    private bool ReadLine(StringBuilder line, ref int headerBytes)
    {
        while (true)
        {
            if (_start == _end && !Fill())
            {
                return false;
            }

            var next = _buffer[_start++];
            if (++headerBytes > LargestHeader)
            {
                return false;
            }

            if (next == (byte)'\n')
            {
                if (line.Length > 0 && line[^1] == '\r')
                {
                    line.Length--;
                }

                return true;
            }

            line.Append((char)next);
        }
    }

    private int Take(Span<byte> into)
    {
        if (_start < _end)
        {
            var count = Math.Min(into.Length, _end - _start);
            _buffer.AsSpan(_start, count).CopyTo(into);
            _start += count;
            return count;
        }

        return Read(into);
    }

    private bool Fill()
    {
        _start = 0;
        _end = Read(_buffer);
        return _end > 0;
    }

    private int Read(Span<byte> into)
    {
        try
        {
            return input.Read(into);
        }
        catch (Exception problem) when (problem is IOException or ObjectDisposedException)
        {
            // The other side went away in the middle of a word: that is an end too.
            return 0;
        }
    }
}
