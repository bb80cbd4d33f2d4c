using System.Text;

namespace Recipe.Preview.Http;

/// <summary>The pages that listen (server-sent events, HTML Living Standard 9.2). A page that does not take its events any more is let go.</summary>
internal sealed class EventStreams : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromSeconds(5);
    private static readonly TimeSpan Beat = TimeSpan.FromSeconds(15);

    private readonly List<Listener> _listeners = [];
    private readonly Lock _gate = new();
    private readonly CancellationTokenSource _end = new();
    private string _last = "";

    /// <summary>Says something to everybody, and to who comes later what was said last.</summary>
    public void Say(string what)
    {
        lock (_gate)
        {
            _last = what;
            _listeners.ForEach(listener => listener.Wake());
        }
    }

    /// <summary>Serves one page until it goes away or we end.</summary>
    public async Task Serve(Stream stream, CancellationToken stop)
    {
        using var both = CancellationTokenSource.CreateLinkedTokenSource(stop, _end.Token);
        using var listener = new Listener();
        lock (_gate)
        {
            _listeners.Add(listener);
        }

        try
        {
            await stream.WriteAsync(new HttpReply(200, "text/event-stream; charset=utf-8", default).Head(null), both.Token).ConfigureAwait(false);
            string? said = null;
            while (true)
            {
                string now;
                lock (_gate)
                {
                    now = _last;
                }

                // Of many changes only the last is told.
                var text = now == said ? ": still here\n\n" : $"event: changed\ndata: {now}\n\n";
                said = now;
                using var late = CancellationTokenSource.CreateLinkedTokenSource(both.Token);
                late.CancelAfter(Patience);
                await stream.WriteAsync(Encoding.UTF8.GetBytes(text), late.Token).ConfigureAwait(false);
                await listener.Wait(Beat, both.Token).ConfigureAwait(false);
            }
        }
        finally
        {
            lock (_gate)
            {
                _listeners.Remove(listener);
            }
        }
    }

    public void Dispose() => _end.Cancel();

    private sealed class Listener : IDisposable
    {
        private readonly SemaphoreSlim _woken = new(0, 1);

        public void Wake()
        {
            // The gate of the streams is held: nobody else releases.
            if (_woken.CurrentCount == 0)
            {
                _woken.Release();
            }
        }

        public Task<bool> Wait(TimeSpan most, CancellationToken stop) => _woken.WaitAsync(most, stop);

        public void Dispose() => _woken.Dispose();
    }
}
