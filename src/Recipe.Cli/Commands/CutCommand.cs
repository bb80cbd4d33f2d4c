using System.CommandLine;
using Recipe.Cli.Text;
using Recipe.Compiler;
using Recipe.Compiler.Shapes;
using Recipe.Disk;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe cut</c>: lays the true outlines of a part's pieces out on rolls and offcuts, and draws them in true size.</summary>
internal static class CutCommand
{
    public static Command Create(Terminal terminal)
    {
        var path = new Argument<string>("path") { Description = "The recipe file." };
        var part = new Argument<string?>("part") { Description = "The part or variant, when the file has several.", Arity = ArgumentArity.ZeroOrOne };
        var folder = new Option<string>("--out") { Description = "Folder for the drawings; made when it is not there. Other files in it are left alone.", DefaultValueFactory = _ => "out" };
        var format = new Option<string[]>("--format") { Description = "svg or dxf (one for each roll, for a cutter or a plotter), pdf or html (pages to tape together); all when not given.", AllowMultipleArgumentsPerToken = true };
        format.AcceptOnlyFromAmong([.. CutPlanning.Formats]);
        var quantity = CommonOptions.Whole("--quantity", "How many parts are cut at once, instead of the recipe's.", 1, 1000);
        var effort = CommonOptions.Whole("--effort", "How long to look for a shorter layout; 1 is about three seconds a cloth. The same effort gives the same layout on any machine.", 0, CutPlanning.MostEffort);
        var seed = CommonOptions.Whole("--seed", "Start of the random numbers: another seed, perhaps another layout.", 0, int.MaxValue);
        var roll = new Option<bool>("--roll-only") { Description = "Leave the offcuts on the shelf." };
        var size = new Option<string?>("--paper-size") { Description = "Size of the pages, instead of the shop's: A4 or Letter." };
        size.AcceptOnlyFromAmong([.. BenchPapers.PaperSizes]);
        var undated = new Option<bool>("--undated") { Description = "Print no date, so that the same recipe gives the same bytes on any day." };
        var command = new Command("cut", "Lay the pieces of a part out on rolls and offcuts, and draw them in true size.") { path, part, folder, format, quantity, effort, seed, roll, size, undated };
        command.SetAction(result => Run(
            terminal,
            OnePart.Find(terminal, result.GetValue(path)!, result.GetValue(part)),
            result.GetValue(folder) ?? "out",
            new CutWish(
                result.GetValue(format) is { Length: > 0 } formats ? [.. formats] : CutPlanning.Formats,
                (ulong)(result.GetValue(seed) ?? 1),
                result.GetValue(effort) ?? 1,
                !result.GetValue(roll)),
            new PaperWish
            {
                Today = terminal.Today,
                Printed = result.GetValue(undated) ? null : terminal.Today,
                Quantity = result.GetValue(quantity),
                PaperSize = result.GetValue(size),
            }));
        return command;
    }

    private static int Run(Terminal terminal, (CompiledFile File, CompiledPart Part) found, string folder, CutWish wish, PaperWish papers)
    {
        var (file, part) = found;
        if (file.HasErrors)
        {
            var printer = new FindingPrinter(terminal.Out, Style.For(terminal, "auto"));
            foreach (var finding in file.Findings)
            {
                printer.Print(finding);
            }

            terminal.Out.WriteLine("Nothing was drawn: what is wrong in the recipe would be cut into cloth. Mend it, or accept it in the recipe with a reason.");
            return ExitStatus.Findings;
        }

        using var cancel = new CancellationTokenSource();
        using var signal = terminal.OnInterrupt(cancel.Cancel);
        var progress = new Progress(terminal);
        using var output = new OutputSet(folder, flush: false);
        try
        {
            var (cloths, drawings) = CutPlanning.Run(file, part, wish, papers, progress.Say, cancel.Token);
            progress.End();
            if (cloths.IsEmpty)
            {
                throw new CannotRunException($"there is no cloth of {part.Name} to lay out: its rolls have no known `width`, or it has no plies.");
            }

            foreach (var drawing in drawings)
            {
                output.Add(drawing.FileName, drawing.Bytes);
            }

            foreach (var cloth in cloths)
            {
                terminal.Out.WriteLine(cloth.Cloth);
                foreach (var line in cloth.Lines)
                {
                    terminal.Out.WriteLine($"  {line}");
                }
            }

            foreach (var path in output.Write())
            {
                terminal.Out.WriteLine($"wrote {path}");
            }

            return cloths.All(cloth => cloth.IsWhole) ? ExitStatus.Clean : ExitStatus.Findings;
        }
        catch (ArgumentException problem)
        {
            progress.End();
            throw new CannotRunException($"the pieces of {part.Name} cannot be laid out: {problem.Message.Split(" (Parameter", 2)[0]}", problem);
        }
    }
}
