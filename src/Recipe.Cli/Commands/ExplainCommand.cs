using System.CommandLine;
using Recipe.Compiler;

namespace Recipe.Cli.Commands;

/// <summary><c>recipe explain</c>: what a code means, what the book says of a material.</summary>
internal static class ExplainCommand
{
    public static Command Create(Terminal terminal)
    {
        var name = new Argument<string?>("name") { Description = "A code or name of a finding, or a material; without it, a list of both.", Arity = ArgumentArity.ZeroOrOne };
        var within = new Option<string?>("--in") { Description = "A recipe whose own materials count too." };
        var command = new Command("explain", "Explain a finding or a material.") { name, within };
        command.SetAction(result => Run(terminal, result.GetValue(name), result.GetValue(within)));
        return command;
    }

    private static int Run(Terminal terminal, string? name, string? within)
    {
        var materials = within is null
            ? ShippedTexts.Book.Materials
            : CheckCommand.CompileAll([within], terminal.Today)[0].Bound.Model.Materials;
        if (name is null)
        {
            foreach (var descriptor in FindingCatalogue.All)
            {
                terminal.Out.WriteLine($"{descriptor.Code}  {descriptor.Name}");
            }

            foreach (var key in materials.Keys.Order(StringComparer.Ordinal))
            {
                terminal.Out.WriteLine($"{materials[key].Keyword,-15} {key}");
            }

            return ExitStatus.Clean;
        }

        if (FindingCatalogue.Find(name) is { } finding)
        {
            terminal.Out.Write(Explainer.Finding(finding));
            return ExitStatus.Clean;
        }

        if (materials.TryGetValue(name, out var material))
        {
            terminal.Out.Write(Explainer.Material(material));
            return ExitStatus.Clean;
        }

        var near = Explainer.Nearest(name, materials);
        throw new CannotRunException($"nothing is known of '{name}'{(near is null ? "; `recipe explain` lists what is." : $"; did you mean {near}?")}");
    }
}
