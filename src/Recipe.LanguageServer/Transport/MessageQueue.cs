namespace Recipe.LanguageServer.Transport;

/// <summary>What waits to be worked on, in the order in which it came.</summary>
internal sealed class MessageQueue
{
    private readonly Lock _gate = new();
    private readonly LinkedList<Waiting> _waiting = new();
    private readonly SemaphoreSlim _count = new(0);

    public void Add(Waiting item)
    {
        lock (_gate)
        {
            _waiting.AddLast(item);
        }

        _count.Release();
    }

    /// <summary>The next one; waits until there is one.</summary>
    public Waiting Take()
    {
        _count.Wait();
        lock (_gate)
        {
            var first = _waiting.First!.Value;
            _waiting.RemoveFirst();
            return first;
        }
    }

    /// <summary>Whether any message like this is already waiting.</summary>
    public bool Any(Func<Message, bool> wanted)
    {
        lock (_gate)
        {
            return _waiting.Any(item => wanted(item.Message));
        }
    }
}
