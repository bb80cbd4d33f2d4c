using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Compiler.Records;
using Recipe.Disk;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe record</c>: the form of a build record, a text to fill in beside the recipe.</summary>
internal static class RecordCommand
{
    public static Command Create(Terminal terminal)
    {
        var part = new Argument<string>("part") { Description = "The part or variant that is built." };
        var serial = new Option<int>("--serial") { Description = "Its serial number.", Required = true };
        var within = new Option<string[]>("--in") { Description = "The recipe, or folders to look for it in; the current folder when not given.", AllowMultipleArgumentsPerToken = true };
        var output = new Option<string?>("--out") { Description = "Write it to this file, which must not exist yet; else it is printed." };
        var command = new Command("record", "Begin a build record: a form with the plan beside each blank.") { part, serial, within, output };
        command.SetAction(result => Run(terminal, result.GetValue(part)!, result.GetValue(serial), result.GetValue(within) ?? [], result.GetValue(output)));
        return command;
    }

    private static int Run(Terminal terminal, string part, int serial, string[] within, string? output)
    {
        if (serial < 0)
        {
            throw new CannotRunException("a serial number is 0 or more.");
        }

        var files = CheckCommand.CompileAll(RecipeFinder.Find(within, recurse: false), terminal).Where(file => file.PartNames.Contains(part, StringComparer.Ordinal)).ToList();
        if (files is not [var file])
        {
            throw new CannotRunException(files.Count == 0
                ? $"no recipe in {(within.Length == 0 ? "this folder" : string.Join(", ", within))} has a part '{part}'; --in names the recipe."
                : $"{part} stands in {string.Join(" and in ", files.Select(f => f.Source.Name))}; --in says which is meant.");
        }

        if (file.HasErrors)
        {
            throw new CannotRunException($"{file.Source.Name} has errors, so there is no plan to keep a record of; `recipe check {file.Source.Name}` says which.");
        }

        var folder = output is null ? "." : Path.GetDirectoryName(Path.GetFullPath(output))!;
        var text = RecordForm.Write(file, part, serial, terminal.Today, name => Path.GetRelativePath(folder, Path.GetFullPath(name)).Replace('\\', '/'));
        if (output is null)
        {
            terminal.Out.Write(text);
            return ExitStatus.Clean;
        }

        WholeFile.Create(output, text, "a record is never written over");
        terminal.Out.WriteLine($"wrote {output}");
        terminal.Out.WriteLine($"next: fill in its blanks at the bench, then `recipe check {output}`");
        return ExitStatus.Clean;
    }
}
