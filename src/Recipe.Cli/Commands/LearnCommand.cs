using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Compiler.Records;
using Recipe.Disk;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe learn</c>: a shop's own figures, from its build records.</summary>
internal static class LearnCommand
{
    public static Command Create(Terminal terminal)
    {
        var paths = new Argument<string[]>("path") { Description = "Build records, or folders that hold them; the current folder and those below it when none is given.", Arity = ArgumentArity.ZeroOrMore };
        var format = new Option<string>("--format") { Description = "text, md or json.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "md", "json");
        var write = new Option<string?>("--write") { Description = "Put the lines it ends with into the `shop` block of this file." };
        var command = new Command("learn", "Say what the build records tell of this shop: resin contents, pick-ups, pace, losses.") { paths, format, write };
        command.SetAction(result => Run(terminal, result.GetValue(paths) ?? [], result.GetValue(format) ?? "text", result.GetValue(write)));
        return command;
    }

    private static int Run(Terminal terminal, string[] paths, string format, string? write)
    {
        var records = ShopRecords.Of(CheckCommand.CompileAll(RecipeFinder.Find(paths, recurse: true), terminal));
        if (!records.Parts.Any())
        {
            throw new CannotRunException("there is no build record here; `recipe record PART --serial N` begins one.");
        }

        terminal.Out.Write(records.Learnt(format));
        if (write is null)
        {
            return ExitStatus.Clean;
        }

        var before = File.Exists(write) ? DiskFiles.ReadExactly(write) : "";
        if (records.WithLearnt(write, before) is not { } after)
        {
            throw new CannotRunException($"too few records to conclude anything; {write} was left as it is.");
        }

        WholeFile.Write(write, after);
        terminal.Error.WriteLine(before == after ? $"{write} says so already" : $"wrote the lines into the shop block of {write}");
        return ExitStatus.Clean;
    }
}
