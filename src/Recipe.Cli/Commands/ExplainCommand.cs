using System.CommandLine;
using System.CommandLine.Completions;
using Recipe.Compiler;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe explain</c>: what a code means, what the book says of a material, what the plan says of a part; and what there is with a word in it.</summary>
internal static class ExplainCommand
{
    public static Command Create(Terminal terminal)
    {
        var name = new Argument<string?>("name") { HelpName = "name", Description = "A code or name of a finding, a material, a word of the language, a part of the recipe given with --in, a group (RC70, fabric) or any word to look for; without it, the groups; all lists every name.", Arity = ArgumentArity.ZeroOrOne };
        name.CompletionSources.Add(_ => Explainer.Names(null).Select(known => new CompletionItem(known)));
        var within = new Option<string?>("--in") { Description = "A recipe whose parts and own materials count too." };
        var command = new Command("explain", "Explain a finding, a material, or a part: its mass, stiffness, clock and what they rest on.") { name, within };
        command.SetAction(result => Run(terminal, result.GetValue(name), result.GetValue(within)));
        return command;
    }

    private static int Run(Terminal terminal, string? name, string? within)
    {
        var file = within is null ? null : CheckCommand.CompileAll([within], terminal)[0];
        if (name is null)
        {
            terminal.Out.Write(Explainer.Index(file));
            return ExitStatus.Clean;
        }

        if (Explainer.Explain(name, file, terminal.Today) is { } page)
        {
            terminal.Out.Write(page);
            return ExitStatus.Clean;
        }

        if (name == "all")
        {
            foreach (var line in Explainer.List(file))
            {
                terminal.Out.WriteLine(line);
            }

            return ExitStatus.Clean;
        }

        if (Explainer.Search(name, file) is { } found)
        {
            terminal.Out.Write(found);
            return ExitStatus.Clean;
        }

        var near = Explainer.Nearest(name, file);
        throw new CannotRunException($"nothing is known of '{name}'{(near is null ? "; `recipe explain` shows what is." : $"; did you mean {near}?")}");
    }
}
