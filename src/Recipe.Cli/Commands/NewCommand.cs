using System.CommandLine;
using Recipe.Compiler;
using Recipe.Disk;
using Recipe.Text;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe new</c>: a sound recipe to start from.</summary>
internal static class NewCommand
{
    private const string Placeholder = "new-part";
    private const string RulePlaceholder = "new-rule";

    public static Command Create(Terminal terminal)
    {
        var name = new Argument<string>("name") { Description = "Name of the part, in small letters with hyphens: seat-pan." };
        var process = new Option<string>("--process") { Description = "How it is made.", DefaultValueFactory = _ => "bagged" };
        process.AcceptOnlyFromAmong([.. ShippedTexts.Templates.Select(text => ProcessOf(text.Name))]);
        var command = new Command("new", "Start a recipe: a sound one to change line by line.") { name, process };
        command.Subcommands.Add(Rule(terminal));
        command.SetAction(result => Run(terminal, result.GetValue(name)!, result.GetValue(process)!));
        return command;
    }

    private static int Run(Terminal terminal, string name, string process)
    {
        CheckName(name, "a part", "seat-pan");
        var path = name + FileEndings.Recipe;
        var template = ShippedTexts.Templates.First(text => ProcessOf(text.Name) == process);
        Write(terminal, path, template.Text.Replace(Placeholder, name, StringComparison.Ordinal));
        terminal.Out.WriteLine($"next: change its lines to your part, then `recipe check {path}`");
        return ExitStatus.Clean;
    }

    private static Command Rule(Terminal terminal)
    {
        var name = new Argument<string>("name") { Description = "Name of the rule, in small letters with hyphens: warm-carbon." };
        var inCSharp = new Option<bool>("--csharp") { Description = "Write it in C#, for what the language cannot say." };
        var command = new Command("rule", "Start a rule of the house: a sound one to change line by line, with a recipe that must earn it and one that must not.") { name, inCSharp };
        command.SetAction(result => result.GetValue(inCSharp) ? RunCodedRule(terminal, result.GetValue(name)!) : RunRule(terminal, result.GetValue(name)!));
        return command;
    }

    private static int RunCodedRule(Terminal terminal, string name)
    {
        CheckName(name, "a rule", "warm-carbon");
        var path = name + FileEndings.CodedRules;
        var type = string.Concat(name.Split('-', StringSplitOptions.RemoveEmptyEntries).Select(word => char.ToUpperInvariant(word[0]) + word[1..]));
        Write(terminal, path, ShippedTexts.RuleTemplates.First(text => text.Name.EndsWith(".cs.txt", StringComparison.Ordinal)).Text
            .Replace(RulePlaceholder, name, StringComparison.Ordinal)
            .Replace("NewRule", type, StringComparison.Ordinal));
        terminal.Out.WriteLine($"next: write `use \"{path}\"` into settings.recipe, and it counts for every recipe of that folder and below");
        terminal.Out.WriteLine("then: `recipe trust .`, once, and `recipe check settings.recipe` until its examples agree");
        return ExitStatus.Clean;
    }

    private static int RunRule(Terminal terminal, string name)
    {
        CheckName(name, "a rule", "warm-carbon");
        var path = $"{name}.rule{FileEndings.Recipe}";
        Write(terminal, path, ShippedTexts.RuleTemplates.First(text => text.Name.EndsWith(FileEndings.Recipe, StringComparison.Ordinal)).Text.Replace(RulePlaceholder, name, StringComparison.Ordinal));
        terminal.Out.WriteLine($"next: change its lines, and run `recipe check {path}` until its examples agree");
        terminal.Out.WriteLine($"then: write `use \"{path}\"` into settings.recipe, and it counts for every recipe of that folder and below");
        return ExitStatus.Clean;
    }

    private static void CheckName(string name, string what, string example)
    {
        if (name.Length == 0 || !name.All(c => char.IsAsciiLetterLower(c) || char.IsAsciiDigit(c) || c == '-') || !char.IsAsciiLetterLower(name[0]) || name[^1] == '-')
        {
            throw new CannotRunException($"'{name}' is no name for {what}; a name is small letters, digits and hyphens, such as {example}.");
        }
    }

    private static void Write(Terminal terminal, string path, string text)
    {
        WholeFile.Create(path, text, "it was left as it is");
        terminal.Out.WriteLine($"wrote {path}");
    }

    private static string ProcessOf(string templateName) => Path.GetFileNameWithoutExtension(templateName);
}
