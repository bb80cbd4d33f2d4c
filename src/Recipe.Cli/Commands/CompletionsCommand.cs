using System.CommandLine;
using Recipe.Cli.Manual;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe completions</c>: what a shell needs to complete the program's words.</summary>
internal static class CompletionsCommand
{
    public static Command Create(Terminal terminal)
    {
        var shell = new Argument<string>("shell") { Description = "The shell; the first line of what is printed says where it goes." };
        shell.AcceptOnlyFromAmong([.. ShellCompletions.Shells]);
        var command = new Command("completions", "Print what a shell needs to complete verbs, options and their values.") { shell };
        command.SetAction(result => terminal.Out.Write(ShellCompletions.For(result.GetValue(shell)!)));
        return command;
    }
}
