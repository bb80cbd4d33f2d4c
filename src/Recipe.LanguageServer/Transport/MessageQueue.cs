namespace Recipe.LanguageServer.Transport;

/// <summary>What waits to be worked on, in the order in which it came.</summary>
internal sealed class MessageQueue
{
    // Guards itself: the worker sleeps on it until something is added.
    private readonly LinkedList<Waiting> _waiting = new();

    public void Add(Waiting item)
    {
        lock (_waiting)
        {
            _waiting.AddLast(item);
            Monitor.Pulse(_waiting);
        }
    }

    /// <summary>The next one; waits until there is one.</summary>
    public Waiting Take()
    {
        lock (_waiting)
        {
            while (_waiting.Count == 0)
            {
                Monitor.Wait(_waiting);
            }

            var first = _waiting.First!.Value;
            _waiting.RemoveFirst();
            return first;
        }
    }

    /// <summary>Whether any message like this is already waiting.</summary>
    public bool Any(Func<Message, bool> wanted)
    {
        lock (_waiting)
        {
            return _waiting.Any(item => wanted(item.Message));
        }
    }
}
