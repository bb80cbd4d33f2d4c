namespace Recipe.Engineering;

/// <summary>A stream that ends with an error once more was taken from it than allowed: a small package can unpack to anything.</summary>
internal sealed class CountedStream(Stream inner, long limit) : Stream
{
    private long _taken;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => _taken;
        set => throw new NotSupportedException();
    }

    /// <summary>Whether the limit was met.</summary>
    internal bool IsSpent => _taken > limit;

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        int read = inner.Read(buffer);
        _taken += read;
        return IsSpent ? throw new InvalidDataException("Too much is inside.") : read;
    }

    public override void Flush()
    {
        // Nothing is written.
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            inner.Dispose();
        }

        base.Dispose(disposing);
    }
}
