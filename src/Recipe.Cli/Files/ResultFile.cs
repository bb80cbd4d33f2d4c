using Recipe.Disk;

namespace Recipe.Cli.Files;

/// <summary>A result goes to standard output, or whole into the file that the user names.</summary>
internal static class ResultFile
{
    /// <summary>Writes it; a file is said on standard output.</summary>
    /// <exception cref="CannotRunException">It could not be written.</exception>
    public static void Write(Terminal terminal, string? path, string text)
    {
        if (path is null)
        {
            terminal.Out.Write(text);
            return;
        }

        WholeFile.Write(path, text, flush: false);
        terminal.Out.WriteLine($"wrote {path.Replace('\\', '/')}");
    }
}
