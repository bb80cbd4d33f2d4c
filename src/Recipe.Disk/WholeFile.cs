using System.Text;

namespace Recipe.Disk;

/// <summary>One file, written as an <see cref="OutputSet"/> writes several: whole or not at all, its permissions kept, through a link.</summary>
public static class WholeFile
{
    /// <summary>Writes a text, as UTF-8, in the place of what stands there.</summary>
    /// <param name="path">The file; its folder is made when it is not there.</param>
    /// <param name="text">The text.</param>
    /// <param name="flush">Whether to wait until the disk itself has it: for what somebody wrote by hand.</param>
    /// <exception cref="CannotWriteException">It could not be written; then what stood there still does.</exception>
    public static void Write(string path, string text, bool flush = true) => Write(path, Encoding.UTF8.GetBytes(text), flush);

    /// <summary>Writes bytes in the place of what stands there.</summary>
    /// <param name="path">The file; its folder is made when it is not there.</param>
    /// <param name="bytes">What it holds.</param>
    /// <param name="flush">Whether to wait until the disk itself has it: for what somebody wrote by hand.</param>
    /// <exception cref="CannotWriteException">It could not be written; then what stood there still does.</exception>
    public static void Write(string path, ReadOnlyMemory<byte> bytes, bool flush = true) => Put(path, bytes, flush, overwrite: true);

    /// <summary>Writes a new file, and never over another.</summary>
    /// <param name="path">The file; its folder is made when it is not there.</param>
    /// <param name="text">The text, written as UTF-8.</param>
    /// <param name="because">What is said of one that is there already: <c>it was left as it is</c>.</param>
    /// <exception cref="CannotWriteException">There is one of that name, or it could not be written; then nothing was.</exception>
    public static void Create(string path, string text, string because)
    {
        if (Path.Exists(path))
        {
            throw new CannotWriteException($"{path} is there already; {because}.");
        }

        Put(path, Encoding.UTF8.GetBytes(text), flush: true, overwrite: false);
    }

    /// <summary>Puts another text in the place of one that is expected to stand there, letter by letter.</summary>
    /// <param name="path">The file.</param>
    /// <param name="expected">The text that stands there, as far as the caller knows.</param>
    /// <param name="text">The text that shall stand there.</param>
    /// <exception cref="CannotWriteException">Something else stands there, or it could not be written; then nothing was.</exception>
    public static void Replace(string path, string expected, string text)
    {
        if (!Holds(path, Encoding.UTF8.GetBytes(expected)))
        {
            throw new CannotWriteException($"{path} has changed meanwhile, or is not UTF-8; nothing was written.");
        }

        Write(path, text);
    }

    private static bool Holds(string path, ReadOnlySpan<byte> bytes)
    {
        try
        {
            return File.Exists(path) && File.ReadAllBytes(path).AsSpan().SequenceEqual(bytes);
        }
        catch (Exception problem) when (DiskProblem.IsOne(problem))
        {
            throw new CannotWriteException($"{path} cannot be read: {DiskProblem.Reason(problem)}", problem);
        }
    }

    private static void Put(string path, ReadOnlyMemory<byte> bytes, bool flush, bool overwrite)
    {
        using var output = new OutputSet(Path.GetDirectoryName(path) is { Length: > 0 } folder ? folder : ".", flush);
        output.Add(Path.GetFileName(path), bytes);
        output.Write(overwrite);
    }
}
