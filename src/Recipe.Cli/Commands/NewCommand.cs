using System.CommandLine;
using Recipe.Cli.Files;
using Recipe.Compiler;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe new</c>: a sound recipe to start from.</summary>
internal static class NewCommand
{
    private const string Placeholder = "new-part";

    public static Command Create(Terminal terminal)
    {
        var name = new Argument<string>("name") { Description = "Name of the part, in small letters with hyphens: seat-pan." };
        var process = new Option<string>("--process") { Description = "How it is made.", DefaultValueFactory = _ => "bagged" };
        process.AcceptOnlyFromAmong([.. ShippedTexts.Templates.Select(text => ProcessOf(text.Name))]);
        var command = new Command("new", "Start a recipe: a sound one to change line by line.") { name, process };
        command.SetAction(result => Run(terminal, result.GetValue(name)!, result.GetValue(process)!));
        return command;
    }

    private static int Run(Terminal terminal, string name, string process)
    {
        if (!name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') || !char.IsAsciiLetterLower(name[0]) || name[^1] == '-')
        {
            throw new CannotRunException($"'{name}' is no name for a part; a name is small letters, digits and hyphens, such as seat-pan.");
        }

        var path = name + RecipeFinder.Extension;
        if (File.Exists(path))
        {
            throw new CannotRunException($"{path} is there already; it was left as it is.");
        }

        var template = ShippedTexts.Templates.First(text => ProcessOf(text.Name) == process);
        var output = new OutputSet(".");
        output.Add(path, template.Text.Replace(Placeholder, name, StringComparison.Ordinal));
        output.Write();
        terminal.Out.WriteLine($"wrote {path}");
        terminal.Out.WriteLine($"next: change its lines to your part, then `recipe check {path}`");
        return ExitStatus.Clean;
    }

    private static string ProcessOf(string templateName) => Path.GetFileNameWithoutExtension(templateName);
}
