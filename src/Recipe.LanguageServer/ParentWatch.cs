using System.Diagnostics;

namespace Recipe.LanguageServer;

/// <summary>
/// Looks now and then whether the client's process still lives, as the protocol asks of a server that was told its number: when it
/// dies while something else holds the pipe open, no end of input would ever come.
/// </summary>
internal sealed class ParentWatch : IDisposable
{
    private readonly int _processId;
    private readonly Action _gone;
    private readonly Timer _timer;
    private int _told;

    private ParentWatch(int processId, TimeSpan every, Action gone)
    {
        _processId = processId;
        _gone = gone;
        _timer = new Timer(_ => Look(), null, every, every);
    }

    /// <summary>Begins to watch; null when no such process is to be seen from here, as in a container: then its end cannot be seen either.</summary>
    /// <param name="processId">The client's process.</param>
    /// <param name="every">How often to look.</param>
    /// <param name="gone">What to do, once, when it is gone.</param>
    public static ParentWatch? Begin(int processId, TimeSpan every, Action gone) => Lives(processId) ? new ParentWatch(processId, every, gone) : null;

    public void Dispose() => _timer.Dispose();

    private void Look()
    {
        if (!Lives(_processId) && Interlocked.Exchange(ref _told, 1) == 0)
        {
            _timer.Dispose();
            _gone();
        }
    }

    private static bool Lives(int processId)
    {
        try
        {
            using var process = Process.GetProcessById(processId);
            return !process.HasExited;
        }
        catch (Exception refused) when (refused is ArgumentException or InvalidOperationException or System.ComponentModel.Win32Exception)
        {
            // A process that may not be looked at lives.
            return refused is System.ComponentModel.Win32Exception;
        }
    }
}
