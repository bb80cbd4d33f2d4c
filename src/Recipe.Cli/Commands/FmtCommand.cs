using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Compiler;
using Recipe.Disk;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe fmt</c>: the one way a recipe is laid out.</summary>
internal static class FmtCommand
{
    public static Command Create(Terminal terminal)
    {
        var paths = new Argument<string[]>("path") { Description = "Recipe files or folders; `-` reads standard input and writes to standard output.", Arity = ArgumentArity.ZeroOrMore };
        var recurse = new Option<bool>("--recurse") { Description = "Look into subfolders too." };
        var check = new Option<bool>("--check") { Description = "Change nothing; name the files that are not formatted." };
        var command = new Command("fmt", "Lay recipes out the one way there is.") { paths, recurse, check };
        command.SetAction(result => Run(terminal, result.GetValue(paths) ?? [], result.GetValue(recurse), result.GetValue(check)));
        return command;
    }

    private static int Run(Terminal terminal, string[] paths, bool recurse, bool check)
    {
        if (paths is ["-"])
        {
            var input = terminal.ReadInput();
            var formatted = TextLayout.Format("standard input", input);
            terminal.Out.Write(check ? "" : formatted);
            return check && formatted != input ? ExitStatus.Findings : ExitStatus.Clean;
        }

        var untidy = 0;
        foreach (var path in RecipeFinder.Find(paths, recurse))
        {
            var text = DiskFiles.ReadExactly(path);
            var formatted = TextLayout.Format(path, text);
            if (formatted == text)
            {
                continue;
            }

            untidy++;
            if (!check)
            {
                WholeFile.Write(path, formatted);
            }

            terminal.Out.WriteLine($"{(check ? "not formatted" : "formatted")} {path}");
        }

        return check && untidy > 0 ? ExitStatus.Findings : ExitStatus.Clean;
    }
}
