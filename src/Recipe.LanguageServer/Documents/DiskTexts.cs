using System.Diagnostics.CodeAnalysis;
using System.Text;

namespace Recipe.LanguageServer.Documents;

/// <summary>
/// Texts on disk, read again when their size or time of writing is another. A file that cannot be read is none: an editor's files come
/// and go.
/// </summary>
internal sealed class DiskTexts
{
    /// <summary>Recipes are written by hand; a file past this size is something else.</summary>
    public const long LargestFile = 64L * 1024 * 1024;

    private readonly Dictionary<string, (DateTime Written, long Size, string Text)> _known = new(StringComparer.Ordinal);
    private readonly Lock _gate = new();

    public bool TryRead(string name, [NotNullWhen(true)] out string? text)
    {
        text = null;
        if (!DocumentNames.IsOnDisk(name))
        {
            return false;
        }

        try
        {
            var file = new FileInfo(name);
            if (!file.Exists || file.Length > LargestFile)
            {
                Forget(name);
                return false;
            }

            lock (_gate)
            {
                if (_known.TryGetValue(name, out var known) && known.Written == file.LastWriteTimeUtc && known.Size == file.Length)
                {
                    text = known.Text;
                    return true;
                }
            }

            text = Decode(File.ReadAllBytes(name));
            lock (_gate)
            {
                _known[name] = (file.LastWriteTimeUtc, file.Length, text);
            }

            return true;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            Forget(name);
            return false;
        }
    }

    /// <summary>The recipes of a folder; one that cannot be listed has none.</summary>
    public static IEnumerable<string> RecipesIn(string folder)
    {
        if (!DocumentNames.IsOnDisk(folder + "/x"))
        {
            return [];
        }

        try
        {
            return [.. Directory.EnumerateFiles(folder, "*.recipe").Select(path => path.Replace('\\', '/'))];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            return [];
        }
    }

    private void Forget(string name)
    {
        lock (_gate)
        {
            _known.Remove(name);
        }
    }

    /// <summary>UTF-8 unless a byte order mark says UTF-16. An editor counts no mark as a character, so none is kept.</summary>
    private static string Decode(byte[] bytes) => bytes switch
    {
        [0xEF, 0xBB, 0xBF, ..] => Encoding.UTF8.GetString(bytes, 3, bytes.Length - 3),
        [0xFF, 0xFE, ..] => Encoding.Unicode.GetString(bytes, 2, bytes.Length - 2),
        [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode.GetString(bytes, 2, bytes.Length - 2),
        _ => Encoding.UTF8.GetString(bytes),
    };
}
