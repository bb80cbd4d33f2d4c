using Recipe.Compiler;

namespace Recipe.LanguageServer.Documents;

/// <summary>Files of shapes on disk, read again when their size or time of writing is another. One that cannot be read is none.</summary>
internal sealed class DiskShapes
{
    /// <summary>The largest file: an editor that shows a line of text should not hold more for it.</summary>
    public const long LargestFile = 256L * 1024 * 1024;

    private readonly Dictionary<string, (DateTime Written, ShapeBytes File)> _known = new(StringComparer.Ordinal);
    private readonly Lock _gate = new();

    public ShapeBytes? ShapeOf(string name)
    {
        if (!DocumentNames.IsOnDisk(name))
        {
            return null;
        }

        try
        {
            var file = new FileInfo(name);
            lock (_gate)
            {
                if (!file.Exists || file.Length > LargestFile)
                {
                    _known.Remove(name);
                    return null;
                }

                if (!_known.TryGetValue(name, out var known) || known.Written != file.LastWriteTimeUtc || known.File.Bytes.Length != file.Length)
                {
                    _known[name] = known = (file.LastWriteTimeUtc, new ShapeBytes(name, File.ReadAllBytes(name)));
                }

                return known.File;
            }
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            return null;
        }
    }
}
