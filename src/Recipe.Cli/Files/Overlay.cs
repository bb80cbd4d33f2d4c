using Recipe.Compiler;

namespace Recipe.Cli.Files;

/// <summary>The files on disk, with another text for one of them.</summary>
internal static class Overlay
{
    /// <summary>Compiles a text as if it stood in the file of that name.</summary>
    public static CompiledFile Compile(string name, string text, Terminal terminal)
    {
        _ = new Workspace(new TextOverlay(new DiskFiles(terminal.Rules), name, text), terminal.Today).TryCompile(name, out var file);
        return file!;
    }
}
