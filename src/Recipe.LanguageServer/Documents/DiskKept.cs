namespace Recipe.LanguageServer.Documents;

/// <summary>
/// What was made of files on disk, made again when the size or the time of writing of a file is another. A file that cannot be read is
/// none: an editor's files come and go.
/// </summary>
/// <param name="largest">Bytes; a larger file is none.</param>
/// <param name="make">Makes it of a name and the bytes.</param>
internal sealed class DiskKept<T>(long largest, Func<string, byte[], T> make)
    where T : class
{
    private readonly Dictionary<string, (DateTime Written, long Size, T Made)> _known = new(StringComparer.Ordinal);
    private readonly Lock _gate = new();

    public T? Find(string name)
    {
        if (!DocumentNames.IsOnDisk(name))
        {
            return null;
        }

        try
        {
            var file = new FileInfo(name);
            if (!file.Exists || file.Length > largest)
            {
                Forget(name);
                return null;
            }

            lock (_gate)
            {
                if (_known.TryGetValue(name, out var known) && known.Written == file.LastWriteTimeUtc && known.Size == file.Length)
                {
                    return known.Made;
                }
            }

            // What the system says is empty is not opened: it may be a pipe that nobody ever writes into, or a device that never ends.
            var made = make(name, file.Length == 0 ? [] : File.ReadAllBytes(name));
            lock (_gate)
            {
                _known[name] = (file.LastWriteTimeUtc, file.Length, made);
            }

            return made;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            Forget(name);
            return null;
        }
    }

    private void Forget(string name)
    {
        lock (_gate)
        {
            _known.Remove(name);
        }
    }
}
