using System.Diagnostics.CodeAnalysis;
using System.Text;
using Recipe.Text;

namespace Recipe.LanguageServer.Documents;

/// <summary>
/// Texts on disk, read again when their size or time of writing is another. A file that cannot be read is none: an editor's files come
/// and go.
/// </summary>
internal sealed class DiskTexts
{
    /// <summary>Recipes are written by hand; a file past this size is something else.</summary>
    public const long LargestFile = 16L * 1024 * 1024;

    private readonly DiskKept<string> _texts = new(LargestFile, static (_, bytes) => Decode(bytes));

    public bool TryRead(string name, [NotNullWhen(true)] out string? text)
    {
        text = _texts.Find(name);
        return text is not null;
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
            return [.. Directory.EnumerateFiles(folder, "*" + FileEndings.Recipe).Select(path => path.Replace('\\', '/'))];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            return [];
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
