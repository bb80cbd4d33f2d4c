using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Cli.Text;
using Recipe.Compiler.Comparing;
using Recipe.Text;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe compare</c>: parts and variants side by side, in figures and as a picture.</summary>
internal static class CompareCommand
{
    public static Command Create(Terminal terminal)
    {
        var words = new Argument<string[]>("path-or-part")
        {
            Description = "Recipe files or folders, and names of parts or variants in them, the one to compare with first; without names all of them, in the order of the files.",
            Arity = ArgumentArity.OneOrMore,
        };
        var format = new Option<string>("--format") { Description = "text, md, html (with the picture), csv, json, or svg (mass against bending stiffness).", DefaultValueFactory = _ => "text" };
        format.AcceptOnlyFromAmong([.. PartsBeside.Formats]);
        var output = new Option<string?>("--out") { Description = "File to write it to; standard output when not given.", HelpName = "file" };
        var command = new Command("compare", "Put parts and variants side by side: figures, differences to the first, a picture.") { words, format, output };
        command.SetAction(result => Run(terminal, result.GetValue(words) ?? [], result.GetValue(format) ?? "text", result.GetValue(output)));
        return command;
    }

    private static int Run(Terminal terminal, string[] words, string format, string? output)
    {
        var paths = words.Where(IsPath).ToArray();
        var names = words.Where(word => !IsPath(word)).ToArray();
        if (paths.Length == 0)
        {
            throw new CannotRunException($"{words[0]}: there is no such file or folder.");
        }

        // One by one, so that they stay in the order in which they were named.
        var files = CheckCommand.CompileAll([.. paths.SelectMany(path => RecipeFinder.Find([path], recurse: false)).Distinct(StringComparer.Ordinal)], terminal);
        var beside = PartsBeside.Of(files, names, terminal.Today, out var missing);
        if (missing is not null)
        {
            throw new CannotRunException(PartNames.Unknown(missing, files));
        }

        if (beside.Count == 0)
        {
            throw new CannotRunException("there is no part in these files to compare.");
        }

        ResultFile.Write(
            terminal, output, beside.Write(format) ?? throw new CannotRunException("no part has both a mass and a bending stiffness, so there is no picture; `recipe compare` as text says what is known."));
        if (beside.Count == 1)
        {
            terminal.Error.WriteLine("recipe compare: one part stands alone; name another file or folder, or parts and variants by name, to put beside it.");
        }

        return ExitStatus.Clean;
    }

    // A name that is no file is meant as one when it looks like one: then the message is about a file.
    private static bool IsPath(string word) =>
        word.EndsWith(FileEndings.Recipe, StringComparison.Ordinal) || word.IndexOfAny(['/', '\\']) >= 0 || File.Exists(word) || Directory.Exists(word);
}
