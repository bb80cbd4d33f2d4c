using Recipe.Compiler.Comparing;
using Recipe.RuleProtocol;

namespace Recipe.LanguageServer;

/// <summary>The language server: one client, two streams.</summary>
public static class StdioServer
{
    private static readonly TimeSpan LookEvery = TimeSpan.FromSeconds(10);

    /// <summary>Serves until the client says goodbye or goes away. Nothing but messages is ever written to the output.</summary>
    /// <param name="input">Where the client's messages come from.</param>
    /// <param name="output">Where ours go.</param>
    /// <param name="today">The day, asked for at each question, for waivers and shelf lives that lapse.</param>
    /// <param name="lastCommit">Opens the texts of the last commit of the repository of a folder; without it nothing is compared.</param>
    /// <param name="rules">Runs rules in C#; null where nobody can.</param>
    /// <param name="bookFolder">Where copies of the shipped book are laid for the editor to open, read-only; null lays none.</param>
    /// <returns>The exit code that the protocol asks for: 0 after <c>shutdown</c>, otherwise 1.</returns>
    public static int Run(Stream input, Stream output, Func<DateOnly> today, Func<string, OpenedRevision>? lastCommit = null, IRuleRunner? rules = null, string? bookFolder = null)
    {
        ArgumentNullException.ThrowIfNull(input);
        ArgumentNullException.ThrowIfNull(output);
        ArgumentNullException.ThrowIfNull(today);

        // A read of the input cannot be called off: the process ends with the client's.
        ParentWatch? watch = null;
        try
        {
            return Server.Run(input, output, today, lastCommit, rules, bookFolder, client => watch = ParentWatch.Begin(client, LookEvery, () => Environment.Exit(1)));
        }
        finally
        {
            watch?.Dispose();
        }
    }
}
