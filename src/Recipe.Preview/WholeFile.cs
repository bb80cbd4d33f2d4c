using System.Globalization;
using System.Text;

namespace Recipe.Preview;

/// <summary>Writes a file whole or not at all: beside its place first, then moved into it.</summary>
internal static class WholeFile
{
    /// <summary>Puts another text in the place of one that is expected to stand there, letter by letter.</summary>
    /// <exception cref="PreviewException">Something else stands there, or it could not be written; then nothing was.</exception>
    public static void Replace(string path, string expected, string text) => Try(path, () =>
    {
        // The file that a link points to is written, and the link stays.
        var target = File.ResolveLinkTarget(path, returnFinalTarget: true)?.FullName ?? path;
        if (!File.Exists(target) || !File.ReadAllBytes(target).AsSpan().SequenceEqual(Encoding.UTF8.GetBytes(expected)))
        {
            throw new PreviewException($"{Path.GetFileName(path)} has changed meanwhile, or is not UTF-8; nothing was written.");
        }

        var temporary = Beside(target);
        Write(temporary, text);
        if (!OperatingSystem.IsWindows())
        {
            File.SetUnixFileMode(temporary, File.GetUnixFileMode(target));
        }

        File.Move(temporary, target, overwrite: true);
    });

    /// <summary>Writes a new file.</summary>
    /// <exception cref="PreviewException">There is one of that name, or it could not be written; then nothing was.</exception>
    public static void Create(string path, string text) => Try(path, () =>
    {
        if (Path.Exists(path))
        {
            throw new PreviewException($"{Path.GetFileName(path)} is there already; a record is never written over.");
        }

        var temporary = Beside(path);
        Write(temporary, text);
        try
        {
            File.Move(temporary, path, overwrite: false);
        }
        catch
        {
            File.Delete(temporary);
            throw;
        }
    });

    private static string Beside(string path) =>
        Path.Combine(Path.GetDirectoryName(path)!, string.Create(CultureInfo.InvariantCulture, $".{Path.GetFileName(path)}.{Environment.ProcessId}.tmp"));

    private static void Write(string path, string text)
    {
        using var file = File.OpenHandle(path, FileMode.Create, FileAccess.Write, FileShare.None);
        RandomAccess.Write(file, Encoding.UTF8.GetBytes(text), 0);
        RandomAccess.FlushToDisk(file);
    }

    private static void Try(string path, Action action)
    {
        try
        {
            action();
        }
        catch (Exception problem) when (problem is IOException or UnauthorizedAccessException or NotSupportedException or ArgumentException)
        {
            throw new PreviewException($"{Path.GetFileName(path)} could not be written: {(problem is UnauthorizedAccessException ? "no permission." : problem.Message)}", problem);
        }
    }
}
