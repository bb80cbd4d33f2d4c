using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Compiler.Comparing;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe git textconv</c>: a recipe as git compares it, with the figures that are computed from it.</summary>
internal static class GitTextconvCommand
{
    public static Command Create(Terminal terminal)
    {
        var file = new Argument<string>("file") { Description = "The recipe, or the copy of an old version that git made of it." };
        var command = new Command("textconv", "Write a recipe as git compares it: laid out, its figures behind it.") { file };
        command.SetAction(result => Run(terminal, result.GetValue(file)!));
        return command;
    }

    private static int Run(Terminal terminal, string path)
    {
        var text = DiskFiles.Read(path);
        terminal.Out.Write(ReviewText.Of(Overlay.Compile(NameInWorkingCopy(path), text, terminal)));
        return ExitStatus.Clean;
    }

    /// <summary>
    /// Git writes an old version into a folder of its own, under the name it had. The files that it uses stand where the file of
    /// that name stands in the working copy, when there is one of that name only.
    /// </summary>
    private static string NameInWorkingCopy(string path)
    {
        var name = Path.GetFileName(path);
        return Git.Top() is { } top
            && Path.GetRelativePath(top, Path.GetFullPath(path)).StartsWith("..", StringComparison.Ordinal)
            && Git.Names("-C", top, "ls-files", "-z", "--", $":(glob)**/{name}") is [var only]
                ? Path.GetRelativePath(".", Path.Combine(top, only)).Replace('\\', '/')
                : path;
    }
}
