using System.Collections.Concurrent;

namespace Recipe.LanguageServer.Tests;

/// <summary>One way from a thread to another. Reading waits for bytes; after the writer has closed, reading ends.</summary>
internal sealed class MemoryPipe : Stream
{
    private readonly BlockingCollection<byte[]> _chunks = [];
    private byte[] _chunk = [];
    private int _at;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position { get => throw new NotSupportedException(); set => throw new NotSupportedException(); }

    /// <summary>Nothing more will be written.</summary>
    public void End()
    {
        if (!_chunks.IsAddingCompleted)
        {
            _chunks.CompleteAdding();
        }
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        while (_at == _chunk.Length)
        {
            if (!_chunks.TryTake(out var next, Timeout.Infinite))
            {
                return 0;
            }

            (_chunk, _at) = (next, 0);
        }

        var read = Math.Min(buffer.Length, _chunk.Length - _at);
        _chunk.AsSpan(_at, read).CopyTo(buffer);
        _at += read;
        return read;
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        try
        {
            _chunks.Add(buffer.ToArray());
        }
        catch (InvalidOperationException problem)
        {
            throw new IOException("The other side has gone.", problem);
        }
    }

    public override void Flush()
    {
    }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    protected override void Dispose(bool disposing)
    {
        if (disposing)
        {
            End();
        }

        base.Dispose(disposing);
    }
}
