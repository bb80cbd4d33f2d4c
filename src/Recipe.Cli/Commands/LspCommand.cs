using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Compiler.Comparing;
using Recipe.LanguageServer;
using Recipe.RuleProtocol;
using Recipe.RulesProcess;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe lsp</c>: serves one editor over standard input and output.</summary>
internal static class LspCommand
{
    public static Command Create(Terminal terminal)
    {
        // Editors' plug-ins add --stdio by habit; there is no other way here.
        var stdio = new Option<bool>("--stdio") { Description = "Standard input and output, the only way there is.", Hidden = true };
        var command = new Command("lsp", "Serve an editor with the Language Server Protocol over standard input and output.") { stdio };
        command.SetAction(_ => StdioServer.Run(terminal.OpenInput(), terminal.OpenOutput(), terminal.Now, folder => LastCommit(folder, terminal.Rules), terminal.Rules, UserFolders.Cache is { } cache ? Path.Combine(cache, "book") : null));
        return command;
    }

    /// <summary>Opens the texts of the last commit of the repository of a folder, or says why there are none.</summary>
    internal static OpenedRevision LastCommit(string folder, IRuleRunner? rules)
    {
        try
        {
            return new OpenedRevision(new GitFiles("HEAD", rules, folder), null);
        }
        catch (CannotRunException problem)
        {
            return new OpenedRevision(null, problem.Message);
        }
    }
}
