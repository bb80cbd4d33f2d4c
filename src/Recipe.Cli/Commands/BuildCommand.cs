using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Cli.Text;
using Recipe.Compiler;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe build</c>: compiles recipes to the papers on the bench.</summary>
internal static class BuildCommand
{
    public static Command Create(Terminal terminal)
    {
        var paths = new Argument<string[]>("path") { Description = "Recipe files or folders.", Arity = ArgumentArity.OneOrMore };
        var recurse = new Option<bool>("--recurse") { Description = "Look into subfolders too." };
        var folder = new Option<string>("--out") { Description = "Folder for the papers; made when it is not there. Other files in it are left alone.", DefaultValueFactory = _ => "out" };
        var part = new Option<string?>("--part") { Description = "Only this part or variant." };
        var paper = new Option<string[]>("--paper") { Description = "Only these papers.", AllowMultipleArgumentsPerToken = true };
        paper.AcceptOnlyFromAmong([.. BenchPapers.Names]);
        var format = new Option<string[]>("--format") { Description = "Only these formats.", AllowMultipleArgumentsPerToken = true };
        format.AcceptOnlyFromAmong([.. BenchPapers.Formats]);
        var undated = new Option<bool>("--undated") { Description = "Print no date, so that the same recipe gives the same bytes on any day." };
        var colour = CommonOptions.Colour();
        var command = new Command("build", "Check recipes and write the papers for desk and bench.") { paths, recurse, folder, part, paper, format, undated, colour };
        command.SetAction(result => Run(
            terminal,
            Style.For(terminal, result.GetValue(colour) ?? "auto"),
            RecipeFinder.Find(result.GetValue(paths) ?? [], result.GetValue(recurse)),
            result.GetValue(folder) ?? "out",
            new PaperWish
            {
                Part = result.GetValue(part),
                Papers = [.. result.GetValue(paper) ?? []],
                Formats = [.. result.GetValue(format) ?? []],
                Printed = result.GetValue(undated) ? null : terminal.Today,
                Today = terminal.Today,
            }));
        return command;
    }

    private static int Run(Terminal terminal, Style style, List<string> names, string folder, PaperWish wish)
    {
        var files = CheckCommand.CompileAll(names, terminal.Today);
        var printer = new FindingPrinter(terminal.Out, style);
        foreach (var finding in files.SelectMany(file => file.Findings))
        {
            printer.Print(finding);
        }

        terminal.Out.WriteLine(CheckCommand.Summary(files));
        if (files.Any(file => file.HasErrors))
        {
            terminal.Out.WriteLine("No papers were written: a sheet on the bench must not carry an error. Mend it, or accept it in the recipe with a reason.");
            return ExitStatus.Findings;
        }

        if (!files.SelectMany(file => file.PartNames).Any(name => wish.Part is null || name == wish.Part))
        {
            throw new CannotRunException(wish.Part is null
                ? "there is no part in these files to make papers of."
                : $"there is no part named {wish.Part} in these files.");
        }

        var output = new OutputSet(folder);
        foreach (var paper in files.SelectMany(file => BenchPapers.Write(file, wish)))
        {
            output.Add(paper.FileName, paper.Text);
        }

        foreach (var path in output.Write())
        {
            terminal.Out.WriteLine($"wrote {path}");
        }

        return ExitStatus.Clean;
    }
}
