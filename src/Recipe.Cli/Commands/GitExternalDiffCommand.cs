using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Compiler;
using Recipe.Compiler.Comparing;
using Recipe.Text;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe git external-diff</c>: <c>recipe diff</c> with the arguments that git gives to a program that compares.</summary>
internal static class GitExternalDiffCommand
{
    public static Command Create(Terminal terminal)
    {
        var path = new Argument<string>("path") { Description = "The name of the file." };
        var rest = new Argument<string[]>("versions") { Description = "As git gives them: old file, hash and mode, new file, hash and mode.", Arity = ArgumentArity.ZeroOrMore };
        var command = new Command("external-diff", "Compare two versions in the words of the trade: GIT_EXTERNAL_DIFF=\"recipe git external-diff\" git diff.") { path, rest };
        command.SetAction(result => Run(terminal, result.GetValue(path)!, result.GetValue(rest) ?? []));
        return command;
    }

    private static int Run(Terminal terminal, string path, string[] versions)
    {
        if (versions is not [var oldFile, var oldHash, _, var newFile, var newHash, ..])
        {
            terminal.Out.WriteLine($"{path}: the merge of it is not settled; there are no two versions to compare.");
            return ExitStatus.Clean;
        }

        if (!path.EndsWith(FileEndings.Recipe, StringComparison.Ordinal))
        {
            terminal.Out.WriteLine($"{path}: it changed, and it is no recipe; `git diff --no-ext-diff` shows how.");
            return ExitStatus.Clean;
        }

        var compared = Comparison.Of([new FileVersions(Compile(oldFile), Shown(oldHash), Compile(newFile), Shown(newHash))], terminal.Today);
        terminal.Out.Write(compared.IsSame ? $"{path}: layout and remarks only\n" : compared.AsText());
        return ExitStatus.Clean;

        // Git names the null device where there is no such version, and a hash of zeros for what stands on disk.
        CompiledFile? Compile(string file) => file is "/dev/null" or "nul" ? null : Overlay.Compile(path, DiskFiles.Read(file), terminal);

        string Shown(string hash) => hash.All(c => c is '0' or '.') ? path : $"{path} ({hash[..Math.Min(hash.Length, 7)]})";
    }
}
