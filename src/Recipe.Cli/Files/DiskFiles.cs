using System.Diagnostics.CodeAnalysis;
using System.Text;
using Recipe.Compiler;
using Recipe.RuleProtocol;

namespace Recipe.Cli.Files;

/// <summary>Texts on disk. Anything that goes wrong is said with the file's name and the reason.</summary>
/// <param name="rules">Runs rules in C#; null where nobody can.</param>
internal sealed class DiskFiles(IRuleRunner? rules) : IFileStore
{
    /// <summary>Recipes are written by hand; a file past this size is something else that was given by mistake.</summary>
    public const long LargestFile = 64L * 1024 * 1024;

    /// <summary>The largest file of a shape: some twenty times a fine scan of a part.</summary>
    public const long LargestShape = 512L * 1024 * 1024;

    public ShapeBytes? ShapeOf(string name)
    {
        try
        {
            return new FileInfo(name) is { Exists: true, Length: <= LargestShape } ? new ShapeBytes(name, File.ReadAllBytes(name)) : null;
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            return null;
        }
    }

    public IRuleRunner? Rules => rules;

    public bool TryRead(string name, [NotNullWhen(true)] out string? text)
    {
        text = File.Exists(name) ? Read(name) : null;
        return text is not null;
    }

    /// <summary>The recipes of a folder; one that cannot be listed has none.</summary>
    public IEnumerable<string> RecipesIn(string folder)
    {
        try
        {
            return Directory.EnumerateFiles(folder.Length == 0 ? "." : folder, "*" + RecipeFinder.Extension)
                .Select(path => folder.Length == 0 ? Path.GetFileName(path) : $"{folder.TrimEnd('/')}/{Path.GetFileName(path)}")
                .Order(StringComparer.Ordinal)
                .ToList();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    /// <summary>Goes on above the current folder, up to the root, so that a check says the same wherever it is started.</summary>
    public string? FolderAbove(string folder)
    {
        if (PathNames.Above(folder) is { } above)
        {
            return above;
        }

        var here = Path.GetFullPath(folder.Length == 0 ? "." : folder);
        return Directory.GetParent(here) is null ? null : folder.Length == 0 ? ".." : $"{folder}/..";
    }

    /// <summary>Reads a whole text. UTF-8 unless a byte order mark says UTF-16; a byte that is not UTF-8 becomes the replacement character.</summary>
    /// <exception cref="CannotRunException">The file cannot be read, or is too large.</exception>
    public static string Read(string path) => Decode(ReadBytes(path));

    /// <summary>Reads a whole file.</summary>
    /// <exception cref="CannotRunException">The file cannot be read, or is too large.</exception>
    public static byte[] ReadBytes(string path)
    {
        try
        {
            var size = new FileInfo(path).Length;
            if (size > LargestFile)
            {
                throw new CannotRunException($"{path} has {size / (1024 * 1024)} MB; a recipe has at most {LargestFile / (1024 * 1024)} MB.");
            }

            return File.ReadAllBytes(path);
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new CannotRunException($"{path} cannot be read: {Reason(problem)}", problem);
        }
    }

    /// <summary>The reason of a file error without the path that the message repeats.</summary>
    public static string Reason(Exception problem) => problem switch
    {
        FileNotFoundException or DirectoryNotFoundException => "there is no such file or folder.",
        UnauthorizedAccessException => "no permission.",
        _ => problem.Message,
    };

    /// <summary>The text of a file: UTF-8 unless a byte order mark says UTF-16.</summary>
    public static string Decode(byte[] bytes) => bytes switch
    {
        [0xFF, 0xFE, ..] => Encoding.Unicode.GetString(bytes, 2, bytes.Length - 2),
        [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode.GetString(bytes, 2, bytes.Length - 2),

        // A UTF-8 mark stays in the text, so that formatting gives the file back with it.
        _ => Encoding.UTF8.GetString(bytes),
    };
}
