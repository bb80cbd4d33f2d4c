using System.Diagnostics.CodeAnalysis;
using System.Text;
using Recipe.Compiler;
using Recipe.Disk;
using Recipe.RuleProtocol;
using Recipe.Text;

namespace Recipe.Cli.Files;

/// <summary>Texts on disk. Anything that goes wrong is said with the file's name and the reason.</summary>
/// <param name="rules">Runs rules in C#; null where nobody can.</param>
internal sealed class DiskFiles(IRuleRunner? rules) : IFileStore
{
    /// <summary>Recipes are written by hand; a file past this size is something else that was given by mistake.</summary>
    public const long LargestFile = 16L * 1024 * 1024;

    /// <summary>The largest file of a shape: some twenty times a fine scan of a part.</summary>
    public const long LargestShape = 512L * 1024 * 1024;

    public ShapeBytes? ShapeOf(string name)
    {
        try
        {
            return File.Exists(name) && ReadAtMost(name, LargestShape) is { } bytes ? new ShapeBytes(name, bytes) : null;
        }
        catch (Exception problem) when (DiskProblem.IsOne(problem))
        {
            return null;
        }
    }

    public IRuleRunner? Rules => rules;

    public bool TryRead(string name, [NotNullWhen(true)] out string? text)
    {
        try
        {
            text = File.Exists(name) ? Read(name) : null;
        }
        catch (CannotRunException problem) when (problem.InnerException is FileNotFoundException or DirectoryNotFoundException)
        {
            // A link that leads nowhere, or a file that went away this moment, is not there.
            text = null;
        }

        return text is not null;
    }

    /// <summary>The recipes of a folder, those that can be any; one that cannot be listed has none.</summary>
    public IEnumerable<string> RecipesIn(string folder)
    {
        try
        {
            return new DirectoryInfo(folder.Length == 0 ? "." : folder).EnumerateFiles("*" + FileEndings.Recipe)
                .Where(file => !file.Exists || file.Length <= LargestFile)
                .Select(file => file.FullName)
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

    /// <summary>What to say of a file that is not there.</summary>
    public static CannotRunException Missing(string path) =>
        new(new FileInfo(path).LinkTarget is { } target ? $"{path} is a link to {target}, and that is not there." : $"{path}: there is no such file or folder.");

    /// <summary>Reads a whole text. UTF-8 unless a byte order mark says UTF-16; a byte that is not UTF-8 becomes the replacement character.</summary>
    /// <exception cref="CannotRunException">The file cannot be read, or is too large.</exception>
    public static string Read(string path) => Decode(ReadBytes(path));

    /// <summary>Reads a whole text that will be written again: nothing may be lost of it.</summary>
    /// <exception cref="CannotRunException">The file cannot be read, is too large, or holds bytes that are no text.</exception>
    public static string ReadExactly(string path)
    {
        var bytes = ReadBytes(path);
        try
        {
            return bytes switch
            {
                [0xFF, 0xFE, ..] => new UnicodeEncoding(bigEndian: false, byteOrderMark: true, throwOnInvalidBytes: true).GetString(bytes, 2, bytes.Length - 2),
                [0xFE, 0xFF, ..] => new UnicodeEncoding(bigEndian: true, byteOrderMark: true, throwOnInvalidBytes: true).GetString(bytes, 2, bytes.Length - 2),
                _ => new UTF8Encoding(encoderShouldEmitUTF8Identifier: false, throwOnInvalidBytes: true).GetString(bytes),
            };
        }
        catch (DecoderFallbackException problem)
        {
            var line = 1 + bytes.AsSpan(0, Math.Clamp(problem.Index, 0, bytes.Length)).Count((byte)'\n');
            throw new CannotRunException($"{path} is not UTF-8 (line {line}), so it was left as it is. Save it as UTF-8 and try again.", problem);
        }
    }

    /// <summary>Reads a whole file.</summary>
    /// <exception cref="CannotRunException">The file cannot be read, or is too large.</exception>
    public static byte[] ReadBytes(string path)
    {
        try
        {
            return ReadAtMost(path, LargestFile) ?? throw new CannotRunException($"{path} is larger than {LargestFile / (1024 * 1024)} MB, the most that a recipe may have.");
        }
        catch (Exception problem) when (DiskProblem.IsOne(problem))
        {
            throw new CannotRunException($"{path} cannot be read: {DiskProblem.Reason(problem)}", problem);
        }
    }

    /// <summary>
    /// Reads a file that has no more bytes than that; null when it has. What the system says is empty is not opened: it may be a pipe that nobody
    /// ever writes into. Only what the system itself provides (<c>/dev/fd/63</c> of a shell) has no length and bytes all the same.
    /// </summary>
    private static byte[]? ReadAtMost(string path, long largest)
    {
        var size = new FileInfo(path).Length;
        if (size > 0)
        {
            return size > largest ? null : File.ReadAllBytes(path);
        }

        var whole = Path.GetFullPath(path);
        if (!whole.StartsWith("/dev/", StringComparison.Ordinal) && !whole.StartsWith("/proc/", StringComparison.Ordinal))
        {
            return [];
        }

        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
        using var bytes = new MemoryStream();
        var buffer = new byte[64 * 1024];
        for (int read; (read = file.Read(buffer)) > 0; bytes.Write(buffer, 0, read))
        {
            if (bytes.Length + read > largest)
            {
                return null;
            }
        }

        return bytes.ToArray();
    }

    /// <summary>The text of a file: UTF-8 unless a byte order mark says UTF-16.</summary>
    public static string Decode(byte[] bytes) => bytes switch
    {
        [0xFF, 0xFE, ..] => Encoding.Unicode.GetString(bytes, 2, bytes.Length - 2),
        [0xFE, 0xFF, ..] => Encoding.BigEndianUnicode.GetString(bytes, 2, bytes.Length - 2),

        // A UTF-8 mark stays in the text, so that formatting gives the file back with it.
        _ => Encoding.UTF8.GetString(bytes),
    };
}
