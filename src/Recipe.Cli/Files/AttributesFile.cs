using Recipe.Disk;

namespace Recipe.Cli.Files;

/// <summary>A file of git's attributes. Only the lines that are named here are touched.</summary>
internal sealed class AttributesFile(string path)
{
    private static readonly char[] Blanks = [' ', '\t', '\r'];

    /// <summary>Whether it has a line, whatever its blanks.</summary>
    public bool Has(string line) => Lines().Any(other => IsSame(other, line));

    /// <summary>Adds a line at the end.</summary>
    /// <exception cref="CannotRunException">The file could not be written.</exception>
    public void Add(string line)
    {
        var text = string.Concat(Lines());
        var end = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        WholeFile.Write(path, text + (text.Length == 0 || text.EndsWith('\n') ? "" : end) + line + end);
    }

    /// <summary>Takes a line out; a file in which nothing is left goes too.</summary>
    /// <exception cref="CannotRunException">The file could not be written.</exception>
    public void Remove(string line)
    {
        var rest = string.Concat(Lines().Where(other => !IsSame(other, line)));
        if (rest.Length > 0)
        {
            WholeFile.Write(path, rest);
        }
        else
        {
            File.Delete(path);
        }
    }

    // Each with its line end.
    private IEnumerable<string> Lines()
    {
        var text = File.Exists(path) ? DiskFiles.ReadExactly(path) : "";
        for (var start = 0; start < text.Length;)
        {
            var end = text.IndexOf('\n', start);
            end = end < 0 ? text.Length : end + 1;
            yield return text[start..end];
            start = end;
        }
    }

    private static bool IsSame(string a, string b) => Words(a).SequenceEqual(Words(b), StringComparer.Ordinal);

    private static string[] Words(string line) => line.TrimEnd('\n').Split(Blanks, StringSplitOptions.RemoveEmptyEntries);
}
