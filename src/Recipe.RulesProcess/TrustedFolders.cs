using System.Text;

namespace Recipe.RulesProcess;

/// <summary>
/// The folders whose rules in C# the user agreed to run, each once: a rule is a program, and a folder that came from elsewhere may
/// hold any. A folder trusts what is below it. Paths are real ones: a link that points elsewhere is not trusted by where it stands.
/// </summary>
/// <param name="file">The file that holds them, one path a line.</param>
public sealed class TrustedFolders(string file)
{
    private static readonly UTF8Encoding Utf8 = new(encoderShouldEmitUTF8Identifier: false);

    private static StringComparison Comparison => OperatingSystem.IsWindows() ? StringComparison.OrdinalIgnoreCase : StringComparison.Ordinal;

    /// <summary>The user's own list; null when the user has no folder for settings, and then nothing is trusted.</summary>
    public static TrustedFolders? OfUser() => UserFolders.Settings is { } folder ? new TrustedFolders(Path.Combine(folder, "trusted-folders")) : null;

    /// <summary>The folders, in order; none when the list cannot be read.</summary>
    public IReadOnlyList<string> List()
    {
        try
        {
            return [.. File.ReadAllLines(file, Utf8).Select(line => line.Trim()).Where(Path.IsPathFullyQualified).Distinct().Order(StringComparer.Ordinal)];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>Whether a file or folder lies in a trusted folder, or is one.</summary>
    /// <param name="path">The path; relative ones are from the current folder.</param>
    public bool IsTrusted(string path)
    {
        ArgumentNullException.ThrowIfNull(path);
        return RealPath(path) is { } real && List().Any(folder => IsSameOrBelow(real, folder));
    }

    /// <summary>Adds a folder.</summary>
    /// <returns>Its real path.</returns>
    /// <exception cref="IOException">There is no such folder, or the list cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The list may not be written.</exception>
    public string Trust(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        var real = RealPath(folder) is { } found && Directory.Exists(found) ? found : throw new DirectoryNotFoundException($"there is no folder {folder}");
        if (real.AsSpan().ContainsAny('\n', '\r'))
        {
            throw new IOException("a folder with a line end in its name cannot be kept in the list");
        }

        Write(List().Append(real));
        return real;
    }

    /// <summary>Takes a folder off the list. One below a trusted folder stays trusted by it.</summary>
    /// <returns>Whether it was on the list.</returns>
    /// <exception cref="IOException">The list cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The list may not be written.</exception>
    public bool Forget(string folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        var real = RealPath(folder) ?? Path.TrimEndingDirectorySeparator(Path.GetFullPath(folder));
        var before = List();
        var after = before.Where(known => !string.Equals(known, real, Comparison)).ToList();
        if (after.Count == before.Count)
        {
            return false;
        }

        Write(after);
        return true;
    }

    private static bool IsSameOrBelow(string path, string folder)
    {
        var root = Path.TrimEndingDirectorySeparator(folder);
        return path.StartsWith(root, Comparison)
            && (path.Length == root.Length || path[root.Length] == Path.DirectorySeparatorChar || Path.EndsInDirectorySeparator(root));
    }

    /// <summary>The path with every link on the way followed, or null when something on the way cannot be read or links turn in a circle.</summary>
    private static string? RealPath(string path)
    {
        try
        {
            var full = Path.GetFullPath(path);
            for (var links = 0; links < 64; links++)
            {
                if (Follow(full) is not { } next)
                {
                    return Path.TrimEndingDirectorySeparator(full);
                }

                full = next;
            }

            return null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            return null;
        }
    }

    // The path with its first link replaced by what it points to, or null when there is none.
    private static string? Follow(string full)
    {
        var root = Path.GetPathRoot(full) ?? "";
        var so = root;
        var rest = full[root.Length..].Split(Path.DirectorySeparatorChar, StringSplitOptions.RemoveEmptyEntries);
        for (var i = 0; i < rest.Length; i++)
        {
            so = Path.Combine(so, rest[i]);
            var entry = Directory.Exists(so) ? (FileSystemInfo)new DirectoryInfo(so) : new FileInfo(so);
            if (entry.LinkTarget is { } target)
            {
                var resolved = Path.GetFullPath(target, Path.GetDirectoryName(so) ?? root);
                return Path.Combine([resolved, .. rest[(i + 1)..]]);
            }
        }

        return null;
    }

    private void Write(IEnumerable<string> folders)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(file))!);
        var part = file + "." + Guid.NewGuid().ToString("N") + ".part";
        try
        {
            File.WriteAllText(part, string.Concat(folders.Distinct().Order(StringComparer.Ordinal).Select(folder => folder + "\n")), Utf8);
            File.Move(part, file, overwrite: true);
        }
        finally
        {
            File.Delete(part);
        }
    }
}
