using System.CommandLine;
using Recipe.Cli.Manual;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe manual</c>: the manual page.</summary>
internal static class ManualCommand
{
    public static Command Create(Terminal terminal)
    {
        var command = new Command("manual", "Print the manual page for `man`: `recipe manual | man -l -`.");
        command.SetAction(result => terminal.Out.Write(ManualPage.Of(result.RootCommandResult.Command, CommandLine.Version)));
        return command;
    }
}
