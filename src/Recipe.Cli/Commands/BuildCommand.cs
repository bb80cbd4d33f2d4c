using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Cli.Text;
using Recipe.Compiler;
using Recipe.Disk;

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
        var only = new Option<string[]>("--only") { Description = "Only these parts or variants.", HelpName = "part", AllowMultipleArgumentsPerToken = true };
        var size = new Option<string?>("--paper-size") { Description = "Size of the paper, instead of the shop's: A4 or Letter." };
        size.AcceptOnlyFromAmong([.. BenchPapers.PaperSizes]);
        var units = new Option<string?>("--units") { Description = "Units on the papers, instead of the shop's: metric, us or both." };
        units.AcceptOnlyFromAmong([.. BenchPapers.Units]);
        var serial = new Option<string?>("--serial") { Description = "Serial number of the piece that is built; without it the papers leave a space for it.", HelpName = "text" };
        var quantity = CommonOptions.Whole("--quantity", $"How many good parts are wanted, 1 to {PaperWish.MostParts}, instead of the recipe's.", 1, PaperWish.MostParts);
        var language = new Option<string>("--language") { Description = "Language of the papers; a paper that is not translated is English.", HelpName = "tag", DefaultValueFactory = _ => "en" };
        language.AcceptOnlyFromAmong([.. BenchPapers.Languages]);
        var since = new Option<string?>("--since") { Description = "Write a change note against this version too: a git revision, or a recipe file.", HelpName = "version" };
        var undated = new Option<bool>("--undated") { Description = "Print no date, so that the same recipe gives the same bytes on any day." };
        var colour = CommonOptions.Colour();
        var command = new Command("build", "Check recipes and write the papers for desk and bench.") { paths, recurse, folder, part, only, paper, format, size, units, serial, quantity, since, language, undated, colour };
        command.SetAction(result => Run(
            terminal,
            Style.For(terminal, result.GetValue(colour) ?? "auto"),
            RecipeFinder.Find(result.GetValue(paths) ?? [], result.GetValue(recurse)),
            result.GetValue(folder) ?? "out",
            result.GetValue(since),
            new PaperWish
            {
                Part = result.GetValue(part),
                Papers = [.. result.GetValue(paper) ?? []],
                Formats = [.. result.GetValue(format) ?? []],
                Printed = result.GetValue(undated) ? null : terminal.Today,
                Today = terminal.Today,
                Only = [.. result.GetValue(only) ?? []],
                PaperSize = result.GetValue(size),
                Units = result.GetValue(units),
                Language = result.GetValue(language) ?? "en",
                Serial = result.GetValue(serial) is { } text && text.Trim().Length > 0 ? text.Trim() : null,
                Quantity = result.GetValue(quantity),
            }));
        return command;
    }

    private static int Run(Terminal terminal, Style style, List<string> names, string folder, string? since, PaperWish wish)
    {
        var files = CheckCommand.CompileAll(names, terminal);
        var printer = new FindingPrinter(terminal.Out, style);
        foreach (var finding in CheckCommand.Each(files.SelectMany(file => file.Findings)))
        {
            printer.Print(finding);
        }

        terminal.Out.WriteLine(CheckCommand.Summary(files));
        if (files.Any(file => file.HasErrors))
        {
            terminal.Out.WriteLine("No papers were written: a sheet on the bench must not carry an error. Mend it, or accept it in the recipe with a reason.");
            return ExitStatus.Findings;
        }

        var parts = files.SelectMany(file => file.PartNames).ToHashSet(StringComparer.Ordinal);
        if (parts.Count == 0)
        {
            throw new CannotRunException("there is no part in these files to make papers of.");
        }

        if (wish.Only.Append(wish.Part).FirstOrDefault(name => name is not null && !parts.Contains(name)) is { } missing)
        {
            throw new CannotRunException($"there is no part named {missing} in these files.");
        }

        using var earlier = since is null ? null : File.Exists(since) ? RecipeVersion.OnDisk(terminal) : RecipeVersion.At(since, terminal);
        wish = wish with { Earlier = earlier is null ? null : name => earlier.Compile(File.Exists(since) ? since : name), EarlierName = since ?? "" };
        using var output = new OutputSet(folder, flush: false, endsOnSignal: true);
        var progress = new Progress(terminal);
        BenchPapers.WriteAll(files, wish, part =>
        {
            foreach (var paper in part.Papers)
            {
                output.Add(paper.FileName, paper.Bytes);
            }

            progress.Done(part);
        });
        progress.End();
        var written = output.Write();
        foreach (var path in written)
        {
            terminal.Out.WriteLine($"wrote {path}");
        }

        // Among many files somebody with gloves on looks for the one to print.
        var sheets = written.Where(path => path.EndsWith(".pdf", StringComparison.Ordinal)).ToList();
        if (sheets.Count > 0 && sheets.Count < written.Count)
        {
            terminal.Out.WriteLine($"to print: {string.Join(' ', sheets)}");
        }

        return ExitStatus.Clean;
    }
}
