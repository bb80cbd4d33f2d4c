using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Cli.Text;
using Recipe.Compiler;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe git pre-commit</c>: checks what is about to be committed, as it is staged.</summary>
internal static class GitPreCommitCommand
{
    public static Command Create(Terminal terminal)
    {
        var colour = CommonOptions.Colour();
        var command = new Command("pre-commit", "Check the staged recipes, and those that use them, before they are committed.") { colour };
        command.SetAction(result => Run(terminal, Style.For(terminal, result.GetValue(colour) ?? "auto")));
        return command;
    }

    private static int Run(Terminal terminal, Style style)
    {
        using var staged = StagedRecipes.Open(terminal);
        if (staged.Changed.Count == 0)
        {
            return ExitStatus.Clean;
        }

        var files = staged.Compile(terminal.Today);
        CheckCommand.PrintText(terminal.Out, style, files);
        var untidy = staged.Written.Where(name => staged.TextOf(name) is { } text && TextLayout.Format(name, text) != text).ToList();
        foreach (var name in untidy)
        {
            terminal.Out.WriteLine($"not formatted {name}: `recipe fmt {name}` lays it out, `git add {name}` stages it again");
        }

        if (!files.Any(file => file.HasErrors) && untidy.Count == 0)
        {
            return ExitStatus.Clean;
        }

        terminal.Out.WriteLine("Not committed. What is staged was looked at, not what stands on disk: mend it there, and stage it again.");
        return ExitStatus.Findings;
    }
}
