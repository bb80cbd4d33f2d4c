using System.Text;
using Recipe.LanguageServer.Transport;

namespace Recipe.LanguageServer.Tests.Transport;

public sealed class MessageReaderTests
{
    private const string Body = """{"jsonrpc":"2.0","method":"a"}""";

    [Theory]
    [InlineData("Content-Length: 30\r\n\r\n")]
    [InlineData("content-length:30\r\n\r\n")]
    [InlineData("CONTENT-LENGTH :  30  \r\n\r\n")]
    [InlineData("Content-Type: application/vscode-jsonrpc; charset=utf-8\r\nContent-Length: 30\r\n\r\n")]
    [InlineData("Content-Length: 30\r\nContent-Type: application/vscode-jsonrpc; charset=\"UTF8\"\r\n\r\n")]
    [InlineData("X-Other: 1\r\nContent-Length: 30\r\nX-More: 2\r\n\r\n")]
    [InlineData("Content-Length: 30\n\n")]
    [InlineData("\r\n\r\nContent-Length: 30\r\n\r\n")]
    public void A_header_is_understood(string header)
    {
        var reader = Over(header + Body);
        Assert.Equal("a", reader.Next().Method);
        Assert.Equal(MessageKind.End, reader.Next().Kind);
    }

    [Theory]
    [InlineData("Content-Length: -30\r\n\r\n")]
    [InlineData("Content-Length: 99999999999999999999\r\n\r\n")]
    [InlineData("Content-Length: thirty\r\n\r\n")]
    [InlineData("Content-Size: 30\r\n\r\n")]
    [InlineData("no header at all\r\n\r\n")]
    public void A_header_without_a_length_is_an_error_and_the_next_message_is_read(string header)
    {
        var reader = Over(header + $"Content-Length: 30\r\n\r\n{Body}");
        var faulty = reader.Next();
        Assert.Equal(MessageKind.Faulty, faulty.Kind);
        Assert.Equal(ErrorCode.ParseError, faulty.Fault!.Code);
        Assert.Equal("a", reader.Next().Method);
    }

    [Fact]
    public void Another_character_set_is_refused()
    {
        var reader = Over($"Content-Length: 30\r\nContent-Type: text/plain; charset=latin1\r\n\r\n{Body}");
        Assert.Equal(ErrorCode.ParseError, reader.Next().Fault!.Code);
    }

    [Fact]
    public void Messages_follow_one_another()
    {
        var one = $"Content-Length: 30\r\n\r\n{Body}";
        var reader = Over(string.Concat(Enumerable.Repeat(one, 5000)));
        for (var i = 0; i < 5000; i++)
        {
            Assert.Equal(MessageKind.Notification, reader.Next().Kind);
        }

        Assert.Equal(MessageKind.End, reader.Next().Kind);
    }

    [Fact]
    public void A_long_message_is_read_whole()
    {
        var text = new string('x', 3_000_000);
        var body = """{"jsonrpc":"2.0","method":"a","params":{"text":"TEXT"}}""".Replace("TEXT", text);
        var message = Over($"Content-Length: {body.Length}\r\n\r\n{body}").Next();
        Assert.Equal(text.Length + 11, message.Params.Length);
    }

    [Fact]
    public void A_message_past_the_limit_is_refused_and_skipped()
    {
        var length = MessageReader.LargestBody + 1L;
        var stream = new LongStream(Encoding.ASCII.GetBytes($"Content-Length: {length}\r\n\r\n"), length, Encoding.ASCII.GetBytes($"Content-Length: 30\r\n\r\n{Body}"));
        var reader = new MessageReader(stream);
        Assert.Equal(ErrorCode.InvalidRequest, reader.Next().Fault!.Code);
        Assert.Equal("a", reader.Next().Method);
    }

    [Fact]
    public void An_endless_header_ends_the_conversation()
    {
        var end = Over(new string('x', MessageReader.LargestHeader + 1)).Next();
        Assert.Equal(MessageKind.End, end.Kind);
        Assert.Equal(ErrorCode.ParseError, end.Fault!.Code);
    }

    [Theory]
    [InlineData("")]
    [InlineData("Content-Len")]
    [InlineData("Content-Length: 30\r\n")]
    [InlineData("Content-Length: 30\r\n\r\n{\"jsonrpc\"")]
    [InlineData("Content-Length: 999999999999\r\n\r\n{}")]
    public void A_stream_that_breaks_off_has_ended(string text) => Assert.Equal(MessageKind.End, Over(text).Next().Kind);

    private static MessageReader Over(string text) => new(new MemoryStream(Encoding.UTF8.GetBytes(text)));

    /// <summary>A beginning, very many blanks, an end.</summary>
    private sealed class LongStream(byte[] before, long blanks, byte[] after) : Stream
    {
        private long _at;

        public override bool CanRead => true;

        public override bool CanSeek => false;

        public override bool CanWrite => false;

        public override long Length => throw new NotSupportedException();

        public override long Position { get => _at; set => throw new NotSupportedException(); }

        public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

        public override int Read(Span<byte> buffer)
        {
            if (_at < before.Length)
            {
                return Copy(before.AsSpan((int)_at), buffer);
            }

            if (_at < before.Length + blanks)
            {
                var count = (int)Math.Min(buffer.Length, before.Length + blanks - _at);
                buffer[..count].Fill((byte)' ');
                _at += count;
                return count;
            }

            return Copy(after.AsSpan((int)(_at - before.Length - blanks)), buffer);
        }

        public override void Flush()
        {
        }

        public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

        public override void SetLength(long value) => throw new NotSupportedException();

        public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

        private int Copy(ReadOnlySpan<byte> from, Span<byte> to)
        {
            var count = Math.Min(from.Length, to.Length);
            from[..count].CopyTo(to);
            _at += count;
            return count;
        }
    }
}
