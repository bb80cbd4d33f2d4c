using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Cli.Text;
using Recipe.Compiler;
using Recipe.Text.Findings;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe check</c>: says what is wrong, before resin is mixed.</summary>
internal static class CheckCommand
{
    // One line that is not read keeps a dozen checks silent.
    private const int MostSilent = 3;

    public static Command Create(Terminal terminal)
    {
        var paths = new Argument<string[]>("path") { Description = "Recipe files or folders; the current folder when none is given.", Arity = ArgumentArity.ZeroOrMore };
        var recurse = new Option<bool>("--recurse") { Description = "Look into subfolders too." };
        var format = new Option<string>("--format") { Description = "For people (text), for programs (json), for code review (sarif), for build servers (junit, annotations).", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "json", "sarif", "junit", "annotations");
        var fix = new Option<bool>("--fix") { Description = "Make the fixes that are safe to make unseen, then check what is left." };
        var colour = CommonOptions.Colour();
        var command = new Command("check", "Check recipes and say what is wrong.") { paths, recurse, format, fix, colour };
        command.SetAction(result => Run(
            terminal,
            result.GetValue(paths) ?? [],
            result.GetValue(recurse),
            result.GetValue(format) ?? "text",
            result.GetValue(fix),
            Style.For(terminal, result.GetValue(colour) ?? "auto")));
        return command;
    }

    private static int Run(Terminal terminal, string[] paths, bool recurse, string format, bool fix, Style style)
    {
        var names = RecipeFinder.Find(paths, recurse);
        var made = fix ? FixedFiles.Fix(names, terminal) : [];
        var files = CompileAll(names, Workspace.ForFindings(new DiskFiles(terminal.Rules), terminal.Today));
        switch (format)
        {
            case "json":
                terminal.Out.Write(CompiledFile.FindingsAsJson(files));
                break;
            case "sarif":
                terminal.Out.Write(CompiledFile.FindingsAsSarif(files, CommandLine.Version));
                break;
            case "junit":
                terminal.Out.Write(CompiledFile.FindingsAsJUnit(files));
                break;
            case "annotations":
                terminal.Out.Write(CompiledFile.FindingsAsAnnotations(files));
                break;
            default:
                foreach (var line in made)
                {
                    terminal.Out.WriteLine(line);
                }

                PrintText(terminal.Out, style, files);
                break;
        }

        return files.Any(file => file.HasErrors) ? ExitStatus.Findings : ExitStatus.Clean;
    }

    /// <summary>Compiles the files; one that vanished since it was found cannot be checked.</summary>
    public static List<CompiledFile> CompileAll(IReadOnlyList<string> names, Terminal terminal) => CompileAll(names, new Workspace(new DiskFiles(terminal.Rules), terminal.Today));

    private static List<CompiledFile> CompileAll(IReadOnlyList<string> names, Workspace workspace) =>
        [.. workspace.CompileAll(names).Select((file, i) => file ?? throw DiskFiles.Missing(names[i]))];

    /// <summary>All that was found, for people, and a line that sums it up.</summary>
    public static void PrintText(TextWriter output, Style style, List<CompiledFile> files)
    {
        var printer = new FindingPrinter(output, style);
        foreach (var finding in CompiledFile.Each(files.SelectMany(file => file.Findings)))
        {
            printer.Print(finding);
        }

        foreach (var finding in CompiledFile.Each(files.SelectMany(file => file.Accepted)))
        {
            output.WriteLine($"accepted {finding.Descriptor.Label}: {Shown.Line(finding.Message)}");
            output.WriteLine($"  --> {Shown.Line($"{finding.Where}")}");
            output.WriteLine($"  because: {Shown.Line(finding.AcceptedBecause ?? "")}");
            output.WriteLine();
        }

        // What one line of the recipe keeps several checks from is said once.
        foreach (var notes in files.SelectMany(file => file.NotChecked).DistinctBy(note => (note.Descriptor, note.Missing, $"{note.Where}")).GroupBy(note => $"{note.Missing} ({note.Where})"))
        {
            output.WriteLine(style.Faint($"not checked {Silent([.. notes.Select(note => note.Descriptor.Label)])}: {Shown.Line(notes.Key)}"));
        }

        output.WriteLine(Summary(files));
    }

    // A row of codes is passed over. Who wants every one of them has --format json and sarif.
    private static string Silent(string[] labels) =>
        labels.Length <= MostSilent ? string.Join(", ", labels) : $"{string.Join(", ", labels.Take(MostSilent - 1))} and {labels.Length - MostSilent + 1} more";

    /// <summary>The last line: what was looked at and what was found.</summary>
    public static string Summary(List<CompiledFile> files)
    {
        var findings = CompiledFile.Each(files.SelectMany(file => file.Findings)).ToList();
        string[] looked =
        [
            .. new[] { (Count: files.Sum(file => file.PartNames.Count()), One: "part"), (Count: files.Sum(file => file.RecordCount), One: "build record") }
                .Where(counted => counted.Count > 0)
                .Select(counted => ", " + Plural(counted.Count, counted.One, counted.One + "s")),
        ];
        var counts = new[] { Severity.Error, Severity.Warning, Severity.Advice }
            .Select(severity => (Word: FindingPrinter.Word(severity), Count: findings.Count(f => f.Severity == severity)))
            .Where(pair => pair.Count > 0)
            .Select(pair => Plural(pair.Count, pair.Word, pair.Word == "advice" ? "advice" : pair.Word + "s"))
            .ToList();
        var (rules, examples) = (files.Sum(file => file.RulesTried.Rules), files.Sum(file => file.RulesTried.Examples));
        var tried = rules == 0 ? "" : $", {Plural(rules, "rule", "rules")} with {Plural(examples, "example", "examples")} run";
        return $"{Plural(files.Count, "file", "files")}{string.Concat(looked)}{tried}: {(counts.Count == 0 ? "nothing wrong found" : string.Join(", ", counts))}";
    }

    private static string Plural(int count, string one, string many) => $"{count} {(count == 1 ? one : many)}";
}
