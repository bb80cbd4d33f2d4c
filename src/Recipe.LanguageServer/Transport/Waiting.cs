namespace Recipe.LanguageServer.Transport;

/// <summary>A message on its way through the queue, and whether the client has taken it back.</summary>
internal sealed class Waiting(Message message) : IDisposable
{
    private const int Queued = 0;
    private const int Started = 1;
    private const int Dropped = 2;

    private readonly CancellationTokenSource? _source = message.Kind == MessageKind.Request ? new CancellationTokenSource() : null;
    private int _state;

    public Message Message { get; } = message;

    /// <summary>Cancelled when the client takes the request back.</summary>
    public CancellationToken Token => _source?.Token ?? CancellationToken.None;

    /// <summary>Begins the work; false when it was dropped before.</summary>
    public bool TryStart() => Interlocked.CompareExchange(ref _state, Started, Queued) == Queued;

    /// <summary>Takes the message back; true when nobody has begun with it, so that whoever drops it owes the answer.</summary>
    public bool Cancel()
    {
        var dropped = Interlocked.CompareExchange(ref _state, Dropped, Queued) == Queued;
        if (!dropped)
        {
            _source?.Cancel();
        }

        return dropped;
    }

    public void Dispose() => _source?.Dispose();
}
