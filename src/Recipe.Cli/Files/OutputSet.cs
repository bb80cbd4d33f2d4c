namespace Recipe.Cli.Files;

/// <summary>
/// Files to be written together. Each is first written whole under a temporary name beside its place; only when all are on disk are
/// they moved into place, so a full disk or a wrong folder leaves every old file as it was. Nothing else in the folder is touched.
/// </summary>
internal sealed class OutputSet(string folder)
{
    private readonly SortedDictionary<string, string> _files = new(StringComparer.Ordinal);

    public void Add(string name, string text)
    {
        if (name.IndexOfAny(['/', '\\', '\0']) >= 0 || name is "." or ".." || !_files.TryAdd(name, text))
        {
            throw new CannotRunException($"two papers would be written as '{name}', or that is no name for a file.");
        }
    }

    /// <summary>Writes all of them and returns their paths.</summary>
    /// <exception cref="CannotRunException">Something could not be written; then nothing was.</exception>
    public List<string> Write()
    {
        var pending = new List<(string Temporary, string Final)>();
        try
        {
            Directory.CreateDirectory(folder);
            foreach (var (name, text) in _files)
            {
                var final = Path.Combine(folder, name);
                if (Directory.Exists(final))
                {
                    throw new CannotRunException($"{final} is a folder; nothing was written.");
                }

                var temporary = Path.Combine(folder, $".{name}.{Environment.ProcessId}.tmp");
                pending.Add((temporary, final));
                using var stream = new FileStream(temporary, FileMode.Create, FileAccess.Write, FileShare.None);
                stream.Write(Terminal.Encoding.GetBytes(text));
                stream.Flush(flushToDisk: true);
            }

            foreach (var (temporary, final) in pending)
            {
                File.Move(temporary, final, overwrite: true);
            }

            return [.. pending.Select(file => file.Final.Replace('\\', '/'))];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new CannotRunException($"the papers could not be written to {folder}: {DiskFiles.Reason(problem)}", problem);
        }
        finally
        {
            foreach (var (temporary, _) in pending.Where(file => File.Exists(file.Temporary)))
            {
                File.Delete(temporary);
            }
        }
    }
}
