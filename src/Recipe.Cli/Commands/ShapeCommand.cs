using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Compiler;
using Recipe.Compiler.Shapes;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe shape</c>: what was measured on the surface of a part, and how cloth lies on it.</summary>
internal static class ShapeCommand
{
    public static Command Create(Terminal terminal)
    {
        var path = new Argument<string>("path") { Description = "The recipe file." };
        var part = new Argument<string?>("part") { Description = "The part or variant, when the file has several.", Arity = ArgumentArity.ZeroOrOne };
        var format = new Option<string>("--format") { Description = "text, md, html (with the pictures), json, or svg (the surface with its cloth).", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong([.. SurfaceReport.Formats]);
        var output = new Option<string?>("--out") { Description = "File to write it to; standard output when not given.", HelpName = "file" };
        var units = new Option<string?>("--units") { Description = "Units, instead of the shop's: metric, us or both." };
        units.AcceptOnlyFromAmong([.. BenchPapers.Units]);
        var command = new Command("shape", "Measure the surface of a part, and lay the cloth on it.") { path, part, format, output, units };
        command.SetAction(result => Run(terminal, result.GetValue(path)!, result.GetValue(part), result.GetValue(format) ?? "text", result.GetValue(output), result.GetValue(units)));
        return command;
    }

    private static int Run(Terminal terminal, string path, string? name, string format, string? output, string? units)
    {
        var (file, part) = OnePart.Find(terminal, path, name);
        if (SurfaceReport.Refuse(part) is { } reason)
        {
            throw new CannotRunException($"there is no shape to show of {part.Name}: {reason}.");
        }

        ResultFile.Write(
            terminal,
            output,
            SurfaceReport.Write(file, part, format, new PaperWish { Today = terminal.Today, Units = units }) ?? throw new CannotRunException("no woven cloth lies on this surface, so there is no picture."));
        return ExitStatus.Clean;
    }
}
