using System.Security.Cryptography;
using System.Text;
using Recipe.Disk;
using Recipe.Text;

namespace Recipe.LanguageServer.Documents;

/// <summary>
/// Copies of the shipped book that an editor can open. Its texts are inside the program, and the protocol has no way to show such a text that more than a few
/// clients know, so they are laid into the user's cache, read-only: what is changed there would change nothing. Another text of the book is another folder.
/// </summary>
/// <param name="folder">Where they are laid; null when the user has no such folder, and then the book cannot be opened.</param>
internal sealed class BookCopies(string? folder)
{
    private readonly Dictionary<string, string?> _laid = new(StringComparer.Ordinal);

    /// <summary>The whole path of the copy of a text of the book; null when there can be none.</summary>
    public string? PathOf(SourceText text)
    {
        if (!_laid.TryGetValue(text.Name, out var path))
        {
            _laid.Add(text.Name, path = folder is null ? null : Lay(folder, text));
        }

        return path;
    }

    private static string? Lay(string folder, SourceText text)
    {
        var mark = Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(text.Text)))[..12];
        var path = Path.Combine(folder, mark, Path.GetFileName(text.Name));
        try
        {
            if (!File.Exists(path) || File.ReadAllText(path) != text.Text)
            {
                WholeFile.Write(path, text.Text, flush: false);
                File.SetAttributes(path, FileAttributes.ReadOnly);
            }

            return path.Replace('\\', '/');
        }
        catch (Exception problem) when (problem is CannotWriteException or IOException or UnauthorizedAccessException)
        {
            // No copy, no place to go: as it is without a cache.
            return null;
        }
    }
}
