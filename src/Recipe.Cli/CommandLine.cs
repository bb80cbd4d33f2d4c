using System.CommandLine;
using System.Reflection;
using Recipe.Cli.Commands;
using Recipe.Cli.Text;
using Recipe.Disk;

namespace Recipe.Cli;

/// <summary>The verbs, and what happens when a word on the command line is wrong.</summary>
internal static class CommandLine
{
    /// <summary>The version of the program.</summary>
    public static string Version { get; } = typeof(CommandLine).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;

    public static int Run(string[] args, Terminal terminal)
    {
        var root = new RootCommand("Checks recipes for thin composite parts made in moulds, and compiles them to the papers on the bench.")
        {
            CheckCommand.Create(terminal),
            BuildCommand.Create(terminal),
            CompareCommand.Create(terminal),
            DiffCommand.Create(terminal),
            ExploreCommand.Create(terminal),
            FmtCommand.Create(terminal),
            ExplainCommand.Create(terminal),
            NewCommand.Create(terminal),
            RecordCommand.Create(terminal),
            HistoryCommand.Create(terminal),
            LearnCommand.Create(terminal),
            ShapeCommand.Create(terminal),
            CutCommand.Create(terminal),
            PreviewCommand.Create(terminal),
            StockCommand.Create(terminal),
            GitCommand.Create(terminal),
            TrustCommand.Create(terminal),
            LspCommand.Create(terminal),
            CompletionsCommand.Create(terminal),
            ManualCommand.Create(terminal),
        };
        var result = root.Parse(args);
        if (result.Errors.Count > 0)
        {
            foreach (var error in result.Errors)
            {
                terminal.Error.WriteLine($"recipe: {Shown.Text(error.Message)}");
            }

            terminal.Error.WriteLine("recipe: `recipe --help` lists the verbs, `recipe VERB --help` its options.");
            return ExitStatus.CouldNotRun;
        }

        try
        {
            var status = result.Invoke(new InvocationConfiguration
            {
                Output = terminal.Out,
                Error = terminal.Error,
                EnableDefaultExceptionHandler = false,
            });
            terminal.Out.Flush();
            return status;
        }
        catch (Exception problem) when (problem is CannotRunException or CannotWriteException)
        {
            return Refuse(terminal, problem);
        }
    }

    private static int Refuse(Terminal terminal, Exception problem)
    {
        try
        {
            // What was said before comes before the reason why there is no more.
            terminal.Out.Flush();
        }
        catch (CannotRunException unwritable)
        {
            terminal.Error.WriteLine($"recipe: {Shown.Text(unwritable.Message)}");
        }

        terminal.Error.WriteLine($"recipe: {Shown.Text(problem.Message)}");
        return ExitStatus.CouldNotRun;
    }
}
