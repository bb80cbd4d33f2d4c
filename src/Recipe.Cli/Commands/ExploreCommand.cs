using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Cli.Text;
using Recipe.Compiler;
using Recipe.Compiler.Exploring;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe explore</c>: tries every way to make the choices of an <c>explore</c> and shows the front.</summary>
internal static class ExploreCommand
{
    public static Command Create(Terminal terminal)
    {
        var path = new Argument<string>("path") { Description = "The recipe file that has the explore." };
        var name = new Argument<string?>("name") { Description = "Which explore, when the file has several.", Arity = ArgumentArity.ZeroOrOne };
        var format = new Option<string>("--format") { Description = "text, md, html (with the picture), csv, json, or svg (the picture).", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong([.. Exploration.Formats]);
        var output = new Option<string?>("--out") { Description = "File to write it to; standard output when not given.", HelpName = "file" };
        var all = new Option<bool>("--all") { Description = "With --format csv: every candidate, not only the front." };
        var shard = new Option<string?>("--shard") { Description = "Look only at one of so many stretches of the candidates, as in 2/4, and write a shard file.", HelpName = "i/n" };
        shard.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && ShardPlan.Parse(result.Tokens[0].Value) is null)
            {
                result.AddError($"--shard takes two whole numbers such as 2/4, the first no more than the second and the second no more than {ShardPlan.Most}, not '{result.Tokens[0].Value}'.");
            }
        });
        var merge = new Option<string[]>("--merge") { Description = "Put these shard files together instead of looking at candidates.", HelpName = "shard", AllowMultipleArgumentsPerToken = true };
        var state = new Option<string?>("--state") { Description = "File in which the run is kept every few seconds, and from which it goes on when it was broken off.", HelpName = "file" };
        var candidate = new Option<long?>("--candidate") { Description = "Write the candidate of this number as a variant, to be put into the recipe; nothing is explored.", HelpName = "n" };
        var threads = CommonOptions.Whole("--threads", "On how many threads, 1 to 1024; all cores when not given. It changes nothing but the time.", 1, 1024);
        var command = new Command("explore", "Try every way to make the choices of an explore, and show those that no other beats.") { path, name, format, output, all, shard, merge, state, threads, candidate };
        command.SetAction(result => Run(terminal, new ExploreWish(
            result.GetValue(path)!,
            result.GetValue(name),
            result.GetValue(format) ?? "text",
            result.GetValue(output),
            result.GetValue(all),
            result.GetValue(shard) is { } text ? ShardPlan.Parse(text) : null,
            result.GetValue(merge) ?? [],
            result.GetValue(state),
            result.GetValue(threads),
            result.GetValue(candidate))));
        return command;
    }

    private static int Run(Terminal terminal, ExploreWish wish)
    {
        wish.Check();
        var file = CheckCommand.CompileAll(RecipeFinder.Find([wish.Path], recurse: false), terminal)[0];
        if (file.NotUnderstood is { IsEmpty: false } errors)
        {
            var printer = new FindingPrinter(terminal.Out, Style.For(terminal, "auto"));
            foreach (var finding in errors)
            {
                printer.Print(finding);
            }

            terminal.Out.WriteLine("Nothing was explored: what is not understood cannot be changed. Mend it first.");
            return ExitStatus.Findings;
        }

        return new ExploreRun(terminal, Find(file, wish.Name), wish).Run();
    }

    private static DeclaredStudy Find(CompiledFile file, string? name)
    {
        var studies = DeclaredStudy.Of(file);
        if (studies.IsEmpty)
        {
            throw new CannotRunException($"{file.Source.Name} has no `explore`; one looks like `explore lighter-lid of hatch-lid {{ choose repeats veil 0 1; want least mass }}`.");
        }

        if (name is null)
        {
            return studies.Length == 1 ? studies[0] : throw new CannotRunException($"{file.Source.Name} has several: name one of {string.Join(", ", studies.Select(study => study.Name))}.");
        }

        return studies.FirstOrDefault(study => study.Name == name)
            ?? throw new CannotRunException($"{file.Source.Name} has no explore named {name}; it has {string.Join(", ", studies.Select(study => study.Name))}.");
    }
}

/// <summary>What the user asked for.</summary>
internal sealed record ExploreWish(string Path, string? Name, string Format, string? Out, bool All, ShardPlan? Shard, string[] Merge, string? State, int? Threads, long? Candidate)
{
    /// <summary>Refuses what does not go together.</summary>
    public void Check()
    {
        var problem = All && Format != "csv" ? "--all lists every candidate as csv: say --format csv too."
            : All && (Shard is not null || Merge.Length > 0 || State is not null) ? "--all writes each candidate as it is looked at, and goes with neither --shard, --merge nor --state."
            : Merge.Length > 0 && (Shard is not null || State is not null) ? "--merge looks at no candidate, and goes with neither --shard nor --state."
            : Candidate is not null && (Format != "text" || All || Shard is not null || Merge.Length > 0 || State is not null) ? "--candidate writes a variant, and goes with no format, shard or state."
            : Shard is not null && Format != "text" ? "--shard writes a shard file; the formats are for --merge."
            : null;
        if (problem is not null)
        {
            throw new CannotRunException(problem);
        }
    }
}
