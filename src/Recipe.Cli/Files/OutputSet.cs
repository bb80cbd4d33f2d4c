namespace Recipe.Cli.Files;

/// <summary>
/// Files to be written together. Each is first written whole under a temporary name beside its place; only when all are on disk are
/// they moved into place, so a full disk or a wrong folder leaves every old file as it was. Nothing else in the folder is touched.
/// Files may be added from several threads at a time.
/// </summary>
/// <param name="folder">Where they belong; made when it is not there.</param>
/// <param name="flush">
/// Whether to wait until the disk itself has each file: for what somebody wrote by hand. Papers can be made again.
/// </param>
internal sealed class OutputSet(string folder, bool flush = true) : IDisposable
{
    private readonly Lock _gate = new();
    private readonly Lazy<DirectoryInfo> _made = new(() => Directory.CreateDirectory(folder), LazyThreadSafetyMode.PublicationOnly);
    private readonly SortedDictionary<string, (string Temporary, string Final)> _files = new(StringComparer.Ordinal);

    /// <summary>Adds a text.</summary>
    /// <exception cref="CannotRunException">It could not be written.</exception>
    public void Add(string name, string text) => Add(name, Terminal.Encoding.GetBytes(text));

    /// <summary>Adds a file, under its temporary name.</summary>
    /// <exception cref="CannotRunException">It could not be written.</exception>
    public void Add(string name, ReadOnlyMemory<byte> bytes)
    {
        var temporary = Path.Combine(folder, $".{name}.{Environment.ProcessId}.tmp");
        var final = Path.Combine(folder, name);
        lock (_gate)
        {
            if (name.IndexOfAny(['/', '\\', '\0']) >= 0 || name is "." or ".." || !_files.TryAdd(name, (temporary, final)))
            {
                throw new CannotRunException($"two papers would be written as '{name}', or that is no name for a file.");
            }
        }

        Try(() =>
        {
            _ = _made.Value;
            if (Directory.Exists(final))
            {
                throw new CannotRunException($"{final} is a folder; nothing was written.");
            }

            using var file = File.OpenHandle(temporary, FileMode.Create, FileAccess.Write, FileShare.None);
            RandomAccess.Write(file, bytes.Span, 0);
            if (flush)
            {
                RandomAccess.FlushToDisk(file);
            }
        });
    }

    /// <summary>Moves all of them into place and returns their paths.</summary>
    /// <exception cref="CannotRunException">Something could not be moved.</exception>
    public List<string> Write()
    {
        Try(() =>
        {
            foreach (var (temporary, final) in _files.Values)
            {
                File.Move(temporary, final, overwrite: true);
            }
        });
        return [.. _files.Values.Select(file => file.Final.Replace('\\', '/'))];
    }

    /// <summary>Takes away what was not moved into place.</summary>
    public void Dispose()
    {
        foreach (var (temporary, _) in _files.Values)
        {
            if (File.Exists(temporary))
            {
                File.Delete(temporary);
            }
        }
    }

    private void Try(Action action)
    {
        try
        {
            action();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new CannotRunException($"the papers could not be written to {folder}: {DiskFiles.Reason(problem)}", problem);
        }
    }
}
