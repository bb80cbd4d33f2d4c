using Recipe.Cli.Files;
using Recipe.Cli.Text;
using Recipe.Compiler;

namespace Recipe.Cli.Commands;

/// <summary>The one part that a command is about.</summary>
internal static class OnePart
{
    /// <summary>The part with a name, or the only one.</summary>
    /// <exception cref="CannotRunException">There is no such part, or several and no name.</exception>
    public static (CompiledFile File, CompiledPart Part) Find(Terminal terminal, string path, string? name)
    {
        var file = CheckCommand.CompileAll(RecipeFinder.Find([path], recurse: false), terminal)[0];
        if (file.Parts.IsEmpty)
        {
            throw new CannotRunException($"there is no part in {file.Source.Name}.");
        }

        if (name is null)
        {
            return file.Parts.Length == 1 ? (file, file.Parts[0]) : throw new CannotRunException($"{file.Source.Name} has several parts: name one of {string.Join(", ", file.PartNames)}.");
        }

        return (file, file.Parts.FirstOrDefault(part => part.Name == name) ?? throw new CannotRunException(PartNames.Unknown(name, [file])));
    }
}
