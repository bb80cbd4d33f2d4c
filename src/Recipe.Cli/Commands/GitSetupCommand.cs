using System.CommandLine;
using Recipe.Cli.Files;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe git setup</c>: says what a repository needs so that git knows recipes, and writes it when told to.</summary>
internal static class GitSetupCommand
{
    public static Command Create(Terminal terminal)
    {
        var write = new Option<bool>("--write") { Description = "Write it. Without this nothing is written, only said." };
        var dryRun = new Option<bool>("--dry-run") { Description = "Only say what would be written, as without --write." };
        var local = new Option<bool>("--local") { Description = "Keep the attributes to this clone (.git/info/attributes) and out of the repository's .gitattributes." };
        var hook = new Option<bool>("--hook") { Description = "Check the staged recipes before each commit too." };
        var remove = new Option<bool>("--remove") { Description = "Take all of it out again." };
        var command = new Command("setup", "Say what this repository needs so that git compares and merges recipes; with --write, write it.") { write, dryRun, local, hook, remove };
        command.SetAction(result =>
        {
            var isWriting = result.GetValue(write);
            if (isWriting && result.GetValue(dryRun))
            {
                throw new CannotRunException("--write writes and --dry-run does not; give one of them.");
            }

            var setup = GitSetup.Here();
            return Run(terminal, [.. result.GetValue(remove) ? setup.StepsBack() : setup.Steps(result.GetValue(local), result.GetValue(hook))], isWriting, result.GetValue(remove));
        });
        return command;
    }

    private static int Run(Terminal terminal, List<SetupStep> steps, bool isWriting, bool isBack)
    {
        foreach (var step in steps)
        {
            if (isWriting)
            {
                step.Do?.Invoke();
            }

            terminal.Out.WriteLine(isWriting && step.Do is not null ? "done: " + step.Says : step.Says);
        }

        if (!steps.Exists(step => step.Do is not null))
        {
            terminal.Out.WriteLine(
                isBack ? "Nothing to take out: there is nothing of ours in this repository."
                : steps.Count > 0 ? "Nothing else to do."
                : "Nothing to do: git asks this program about recipes here.");
        }
        else if (!isWriting)
        {
            terminal.Out.WriteLine("Nothing was written. The same command with --write does it.");
        }

        if (!isBack && !IsOnPath())
        {
            terminal.Out.WriteLine("Mind: git starts `recipe` by that name, and no folder of the PATH has it. Put it there first.");
        }

        return ExitStatus.Clean;
    }

    private static bool IsOnPath() => (Environment.GetEnvironmentVariable("PATH") ?? "")
        .Split(Path.PathSeparator, StringSplitOptions.RemoveEmptyEntries)
        .Any(folder => File.Exists(Path.Combine(folder, OperatingSystem.IsWindows() ? "recipe.exe" : "recipe")));
}
