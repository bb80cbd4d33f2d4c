namespace Recipe.Preview;

/// <summary>
/// Says when something in the folders of some files may have changed: at once where the system tells, and every now and then in any case, since
/// network folders, links and folders that were taken away tell nothing.
/// </summary>
internal sealed class FileWatch : IDisposable
{
    private static readonly TimeSpan Often = TimeSpan.FromMilliseconds(300);

    private readonly Action _look;
    private readonly Timer _timer;
    private readonly Lock _gate = new();
    private readonly Dictionary<string, FileSystemWatcher> _watchers = new(StringComparer.Ordinal);
    private bool _ended;

    public FileWatch(Action look)
    {
        _look = look;
        _timer = new Timer(_ => _look(), null, Often, Often);
    }

    /// <summary>Watches the folders of these files, and no others.</summary>
    public void Watch(IEnumerable<string> files)
    {
        var wanted = files.SelectMany(Folders).Where(Directory.Exists).ToHashSet(StringComparer.Ordinal);
        lock (_gate)
        {
            if (_ended)
            {
                return;
            }

            foreach (var (folder, watcher) in _watchers.Where(known => !wanted.Contains(known.Key)).ToList())
            {
                watcher.Dispose();
                _watchers.Remove(folder);
            }

            foreach (var folder in wanted.Where(folder => !_watchers.ContainsKey(folder)))
            {
                if (Begin(folder) is { } watcher)
                {
                    _watchers.Add(folder, watcher);
                }
            }
        }
    }

    public void Dispose()
    {
        _timer.Dispose();
        lock (_gate)
        {
            _ended = true;
            foreach (var watcher in _watchers.Values)
            {
                watcher.Dispose();
            }

            _watchers.Clear();
        }
    }

    // The folder itself, and that of the file that a link points to.
    private static IEnumerable<string> Folders(string file)
    {
        if (Path.GetDirectoryName(file) is { Length: > 0 } own)
        {
            yield return own;
        }

        string? target;
        try
        {
            target = File.ResolveLinkTarget(file, returnFinalTarget: true)?.FullName;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            target = null;
        }

        if (Path.GetDirectoryName(target) is { Length: > 0 } other)
        {
            yield return other;
        }
    }

    private FileSystemWatcher? Begin(string folder)
    {
        FileSystemWatcher? watcher = null;
        try
        {
            watcher = new FileSystemWatcher(folder)
            {
                NotifyFilter = NotifyFilters.FileName | NotifyFilters.LastWrite | NotifyFilters.Size | NotifyFilters.CreationTime,
            };
            watcher.Changed += (_, _) => _look();
            watcher.Created += (_, _) => _look();
            watcher.Deleted += (_, _) => _look();
            watcher.Renamed += (_, _) => _look();
            watcher.Error += (_, _) => Forget(folder);
            watcher.EnableRaisingEvents = true;
            return watcher;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException)
        {
            // No more watches to be had, or the folder has gone: the timer looks.
            watcher?.Dispose();
            return null;
        }
    }

    // Its folder has gone, or more happened than it could tell: it is begun anew at the next look.
    private void Forget(string folder)
    {
        lock (_gate)
        {
            if (_watchers.Remove(folder, out var watcher))
            {
                watcher.Dispose();
            }
        }

        _look();
    }
}
