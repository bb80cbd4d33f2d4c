using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Compiler.Records;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe history</c>: what became of the parts that were built.</summary>
internal static class HistoryCommand
{
    public static Command Create(Terminal terminal)
    {
        var part = new Argument<string>("part") { Description = "The part or variant." };
        var within = new Option<string[]>("--in") { Description = "Build records, or folders that hold them; the current folder and those below it when not given.", AllowMultipleArgumentsPerToken = true };
        var format = new Option<string>("--format") { Description = "text, md, html, json, csv (one row a build) or svg (the run chart alone).", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "md", "html", "json", "csv", "svg");
        var chart = new Option<string>("--chart") { Description = $"The figure of the run chart: {string.Join(", ", ShopRecords.Charts)}.", DefaultValueFactory = _ => "mass" };
        chart.AcceptOnlyFromAmong([.. ShopRecords.Charts]);
        var command = new Command("history", "Show what became of a part, build by build, with a run chart.") { part, within, format, chart };
        command.SetAction(result => Run(terminal, result.GetValue(part)!, result.GetValue(within) ?? [], result.GetValue(format) ?? "text", result.GetValue(chart) ?? "mass"));
        return command;
    }

    private static int Run(Terminal terminal, string part, string[] within, string format, string chart)
    {
        var records = ShopRecords.Of(CheckCommand.CompileAll(RecipeFinder.Find(within, recurse: true), terminal));
        if (!records.Parts.Contains(part, StringComparer.Ordinal))
        {
            throw new CannotRunException(records.Parts.Any()
                ? $"there is no build record of '{part}' here; there are some of {string.Join(", ", records.Parts)}."
                : "there is no build record here; `recipe record PART --serial N` begins one.");
        }

        terminal.Out.Write(records.History(part, format, chart) ?? throw new CannotRunException("a run chart needs two parts of which its figure is written down."));
        return ExitStatus.Clean;
    }
}
