namespace Recipe.Compiler;

/// <summary>Arithmetic on the names of texts. Names use forward slashes and are never looked up here.</summary>
public static class PathNames
{
    /// <summary>
    /// The name that a path written in one text means: relative to the folder of that text, with <c>.</c> and <c>..</c> worked out.
    /// An absolute path stays as it is.
    /// </summary>
    public static string Resolve(string fromName, string path)
    {
        ArgumentNullException.ThrowIfNull(fromName);
        ArgumentNullException.ThrowIfNull(path);
        var wanted = path.Replace('\\', '/');
        if (IsRooted(wanted))
        {
            return Normalize(wanted);
        }

        var folderEnd = fromName.Replace('\\', '/').LastIndexOf('/');
        return Normalize(folderEnd < 0 ? wanted : string.Concat(fromName.AsSpan(0, folderEnd + 1), wanted));
    }

    /// <summary>The same name without <c>.</c> and without <c>..</c> where a folder or a root stands before it.</summary>
    public static string Normalize(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var slashes = name.Replace('\\', '/');
        var root = RootOf(slashes);
        var parts = new List<string>();
        foreach (var part in slashes[root.Length..].Split('/'))
        {
            if (part is "." or "")
            {
                continue;
            }

            if (part != "..")
            {
                parts.Add(part);
            }
            else if (parts.Count > 0 && parts[^1] != "..")
            {
                parts.RemoveAt(parts.Count - 1);
            }
            else if (root.Length == 0)
            {
                // Above a root there is nothing; above a bare name there may be.
                parts.Add(part);
            }
        }

        return root + string.Join('/', parts);
    }

    /// <summary>The last part of a name.</summary>
    public static string FileName(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        return name[(name.Replace('\\', '/').LastIndexOf('/') + 1)..];
    }

    /// <summary>The folder of a name, without the slash at its end; empty for a bare name, <c>/</c> for the root.</summary>
    public static string FolderOf(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        var end = name.Replace('\\', '/').LastIndexOf('/');
        return end < 0 ? "" : end == 0 ? "/" : name[..end];
    }

    /// <summary>The folder above a folder by its name alone; null where the name does not say.</summary>
    public static string? Above(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        return folder.Length == 0 || folder == "/" || FileName(folder) is ".." || $"{folder.Replace('\\', '/')}/" == RootOf($"{folder}/") ? null : FolderOf(folder);
    }

    private static bool IsRooted(string path) => RootOf(path).Length > 0;

    /// <summary>What a name with forward slashes begins with that no <c>..</c> leads out of: <c>/</c>, <c>C:/</c>, <c>//server/share/</c>; else nothing.</summary>
    private static string RootOf(string name)
    {
        if (name.Length > 1 && name[1] == ':' && char.IsAsciiLetter(name[0]))
        {
            return name.Length > 2 && name[2] == '/' ? name[..3] : name[..2];
        }

        // Two slashes and no more are a share of another machine.
        if (name.StartsWith("//", StringComparison.Ordinal) && !name.StartsWith("///", StringComparison.Ordinal)
            && name.IndexOf('/', 2) is > 0 and var server && name.IndexOf('/', server + 1) is > 0 and var share)
        {
            return name[..(share + 1)];
        }

        return name.StartsWith('/') ? "/" : "";
    }
}
