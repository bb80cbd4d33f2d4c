using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Compiler.Records;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe stock</c>: what is left on the shelf, and what to buy next.</summary>
internal static class StockCommand
{
    public static Command Create(Terminal terminal)
    {
        var paths = new Argument<string[]>("path") { Description = "Recipes, shelf and build records, or folders that hold them; the current folder and those below it when none is given.", Arity = ArgumentArity.ZeroOrMore };
        var part = new Option<string[]>("--for") { Description = "The parts to be built next; those that were built before when not given.", AllowMultipleArgumentsPerToken = true };
        var quantity = new Option<int>("--quantity") { Description = "How many of each.", DefaultValueFactory = _ => 1 };
        var format = new Option<string>("--format") { Description = "text, md or json.", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong("text", "md", "json");
        var command = new Command("stock", "Show what the builds have left on the shelf, lot by lot, and what to buy for the next.") { paths, part, quantity, format };
        command.SetAction(result => Run(terminal, result.GetValue(paths) ?? [], result.GetValue(part) ?? [], result.GetValue(quantity), result.GetValue(format) ?? "text"));
        return command;
    }

    private static int Run(Terminal terminal, string[] paths, string[] parts, int quantity, string format)
    {
        if (quantity is < 1 or > 100_000)
        {
            throw new CannotRunException("a quantity is a whole number from 1 to 100000.");
        }

        var files = CheckCommand.CompileAll(RecipeFinder.Find(paths, recurse: true), terminal);
        var unknown = parts.FirstOrDefault(part => !files.Any(file => file.PartNames.Contains(part, StringComparer.Ordinal)));
        if (unknown is not null)
        {
            throw new CannotRunException($"there is no part '{unknown}' here; there are {string.Join(", ", files.SelectMany(file => file.PartNames).Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal))}.");
        }

        terminal.Out.Write(ShopShelf.Report(files, parts, quantity, terminal.Today, format));
        return ExitStatus.Clean;
    }
}
