using System.IO.Enumeration;
using Recipe.Disk;
using Recipe.Text;

namespace Recipe.Cli.Files;

/// <summary>Turns the paths on a command line into recipe files.</summary>
internal static class RecipeFinder
{
    /// <summary>
    /// The files that the paths mean, in ordinal order of name and without repeats: a file is itself; a folder stands for the recipes
    /// in it, and with <paramref name="recurse"/> for those in its subfolders too (hidden folders left out).
    /// </summary>
    /// <exception cref="CannotRunException">A path does not exist, or nothing was found.</exception>
    public static List<string> Find(IReadOnlyList<string> paths, bool recurse)
    {
        var found = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var path in paths.Count == 0 ? ["."] : paths)
        {
            if (File.Exists(path))
            {
                found.Add(Shown(path));
            }
            else if (Directory.Exists(path))
            {
                // A folder may have been named already, as one above it.
                var files = FilesIn(path, recurse).Select(Shown).ToArray();
                found.UnionWith(files);
                if (files.Length == 0)
                {
                    throw new CannotRunException(recurse
                        ? $"there is no {FileEndings.Recipe} file in {path} or below it."
                        : $"there is no {FileEndings.Recipe} file in {path} itself; --recurse looks below it too.");
                }
            }
            else
            {
                throw DiskFiles.Missing(path);
            }
        }

        return [.. found];
    }

    private static List<string> FilesIn(string folder, bool recurse)
    {
        try
        {
            // Links to folders are not followed below: they may lead back up.
            var options = new EnumerationOptions
            {
                RecurseSubdirectories = recurse,
                AttributesToSkip = FileAttributes.Hidden | FileAttributes.System,
                IgnoreInaccessible = false,
            };
            return
            [
                .. new FileSystemEnumerable<string>(folder, (ref FileSystemEntry entry) => entry.ToSpecifiedFullPath(), options)
                {
                    ShouldIncludePredicate = (ref FileSystemEntry entry) => !entry.IsDirectory && entry.FileName.EndsWith(FileEndings.Recipe, StringComparison.Ordinal),
                    ShouldRecursePredicate = (ref FileSystemEntry entry) => (entry.Attributes & FileAttributes.ReparsePoint) == 0,
                },
            ];
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            throw new CannotRunException($"{folder} cannot be read: {DiskProblem.Reason(problem)}", problem);
        }
    }

    private static string Shown(string path)
    {
        var slashes = path.Replace('\\', '/');
        return slashes.StartsWith("./", StringComparison.Ordinal) ? slashes[2..] : slashes;
    }
}
