using Recipe.Disk;

namespace Recipe.Cli.Files;

/// <summary>
/// Standard output or standard error. What cannot be written (a full disk behind it, or it was closed) is said once, and what comes after it
/// is dropped, so that the program ends with a sentence and not within its own end.
/// </summary>
/// <param name="inner">The stream of the system.</param>
/// <param name="name">What to call it; null when there is nowhere left to say it.</param>
internal sealed class StandardStream(Stream inner, string? name) : Stream
{
    private bool _failed;

    public override bool CanRead => false;

    public override bool CanSeek => false;

    public override bool CanWrite => true;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override void Write(ReadOnlySpan<byte> buffer)
    {
        if (_failed)
        {
            return;
        }

        try
        {
            inner.Write(buffer);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            _failed = true;
            if (name is not null)
            {
                throw new CannotRunException($"{name} cannot be written: {(problem is UnauthorizedAccessException ? "it is closed." : DiskProblem.Reason(problem))}", problem);
            }
        }
    }

    public override void Write(byte[] buffer, int offset, int count) => Write(buffer.AsSpan(offset, count));

    public override void Flush()
    {
        // The system's stream holds nothing back.
    }

    public override int Read(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();
}
