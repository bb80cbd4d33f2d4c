using System.CommandLine;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe git</c>: what git asks of a program that knows a kind of file.</summary>
internal static class GitCommand
{
    public static Command Create(Terminal terminal) => new("git", "Let git compare, merge and guard recipes: `recipe git setup` says how.")
    {
        GitSetupCommand.Create(terminal),
        GitTextconvCommand.Create(terminal),
        GitExternalDiffCommand.Create(terminal),
        GitMergeCommand.Create(terminal),
        GitPreCommitCommand.Create(terminal),
    };
}
