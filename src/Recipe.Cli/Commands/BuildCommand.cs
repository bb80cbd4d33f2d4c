using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Cli.Text;
using Recipe.Documents;
using Recipe.Planning;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe build</c>: compiles recipes to the papers on the bench.</summary>
internal static class BuildCommand
{
    private static readonly Dictionary<string, PaperFormat> Formats = new(StringComparer.Ordinal)
    {
        ["md"] = PaperFormat.Markdown,
        ["html"] = PaperFormat.Html,
        ["csv"] = PaperFormat.Csv,
        ["json"] = PaperFormat.Json,
    };

    public static Command Create(Terminal terminal)
    {
        var paths = new Argument<string[]>("path") { Description = "Recipe files or folders.", Arity = ArgumentArity.OneOrMore };
        var recurse = new Option<bool>("--recurse") { Description = "Look into subfolders too." };
        var folder = new Option<string>("--out") { Description = "Folder for the papers; made when it is not there. Other files in it are left alone.", DefaultValueFactory = _ => "out" };
        var part = new Option<string?>("--part") { Description = "Only this part or variant." };
        var paper = new Option<string[]>("--paper") { Description = "Only these papers.", AllowMultipleArgumentsPerToken = true };
        paper.AcceptOnlyFromAmong([.. Papers.All.Select(kind => kind.Name)]);
        var format = new Option<string[]>("--format") { Description = "Only these formats.", AllowMultipleArgumentsPerToken = true };
        format.AcceptOnlyFromAmong([.. Formats.Keys]);
        var undated = new Option<bool>("--undated") { Description = "Print no date, so that the same recipe gives the same bytes on any day." };
        var colour = CommonOptions.Colour();
        var command = new Command("build", "Check recipes and write the papers: takeoff and traveller.") { paths, recurse, folder, part, paper, format, undated, colour };
        command.SetAction(result => Run(terminal, Style.For(terminal, result.GetValue(colour) ?? "auto"), new Wish(
            result.GetValue(paths) ?? [],
            result.GetValue(recurse),
            result.GetValue(folder) ?? "out",
            result.GetValue(part),
            result.GetValue(paper) is { Length: > 0 } papers ? [.. papers.Select(name => Papers.Find(name)!).Distinct()] : Papers.All,
            result.GetValue(format) is { Length: > 0 } formats ? [.. formats.Select(name => Formats[name]).Distinct()] : [.. Formats.Values],
            result.GetValue(undated) ? null : terminal.Today)));
        return command;
    }

    private static int Run(Terminal terminal, Style style, Wish wish)
    {
        var files = CheckCommand.CompileAll(RecipeFinder.Find(wish.Paths, wish.Recurse), terminal.Today);
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

        var output = new OutputSet(wish.Folder);
        var built = 0;
        foreach (var file in files)
        {
            foreach (var plan in file.Plans.Where(plan => wish.Part is null || plan.Part.Name == wish.Part))
            {
                built++;
                Add(output, file.PaperInputFor(plan, wish.Printed, terminal.Today), plan, wish);
            }
        }

        if (built == 0)
        {
            throw new CannotRunException(wish.Part is null
                ? "there is no part in these files to make papers of."
                : $"there is no part named {wish.Part} in these files.");
        }

        foreach (var path in output.Write())
        {
            terminal.Out.WriteLine($"wrote {path}");
        }

        return ExitStatus.Clean;
    }

    private static void Add(OutputSet output, PaperInput input, Plan plan, Wish wish)
    {
        foreach (var kind in wish.Papers)
        {
            foreach (var format in kind.Formats.Where(wish.Formats.Contains))
            {
                output.Add(kind.FileName(plan.Part.Name, format), Papers.Write(input, kind, format));
            }
        }
    }

    private sealed record Wish(
        string[] Paths, bool Recurse, string Folder, string? Part, IReadOnlyList<PaperKind> Papers, IReadOnlyList<PaperFormat> Formats, DateOnly? Printed);
}
