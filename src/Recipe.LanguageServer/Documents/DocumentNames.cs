using System.Text;
using Recipe.Compiler;

namespace Recipe.LanguageServer.Documents;

/// <summary>
/// The compiler names a text by a path with forward slashes; the protocol by a URI. A file's name is its path, <c>C:/x/a.recipe</c> with
/// a drive; what is no file (an unsaved buffer) is named by its URI, and never looked for on disk.
/// </summary>
internal static class DocumentNames
{
    private const string FileScheme = "file://";

    /// <summary>The name of the text that a URI means.</summary>
    public static string FromUri(string uri)
    {
        if (!uri.StartsWith(FileScheme, StringComparison.OrdinalIgnoreCase))
        {
            return PathNames.Normalize(uri);
        }

        var rest = uri.AsSpan(FileScheme.Length);
        var end = rest.IndexOfAny('?', '#');
        rest = end >= 0 ? rest[..end] : rest;

        // file://localhost/x is file:///x.
        const string here = "localhost/";
        rest = rest.StartsWith(here, StringComparison.OrdinalIgnoreCase) ? rest[(here.Length - 1)..] : rest;
        var path = Uri.UnescapeDataString(rest).Replace('\\', '/');
        if (path.Length >= 3 && path[0] == '/' && char.IsAsciiLetter(path[1]) && path[2] == ':')
        {
            path = char.ToUpperInvariant(path[1]) + path[2..];
        }

        return PathNames.Normalize(path);
    }

    /// <summary>The URI of a text.</summary>
    public static string ToUri(string name)
    {
        if (!IsOnDisk(name))
        {
            return name;
        }

        var uri = new StringBuilder(FileScheme, name.Length + 16);
        if (name[0] != '/')
        {
            uri.Append('/');
        }

        foreach (var part in Encoding.UTF8.GetBytes(name))
        {
            if (part < 0x80 && (char.IsAsciiLetterOrDigit((char)part) || "/-._~".Contains((char)part, StringComparison.Ordinal)))
            {
                uri.Append((char)part);
            }
            else
            {
                uri.Append('%').Append(part.ToString("X2", System.Globalization.CultureInfo.InvariantCulture));
            }
        }

        return uri.ToString();
    }

    /// <summary>Whether the name is a whole path of this machine.</summary>
    public static bool IsOnDisk(string name) =>
        name.StartsWith('/') || (name.Length > 2 && name[1] == ':' && name[2] == '/' && char.IsAsciiLetter(name[0]));
}
