using Recipe.Compiler;
using Recipe.Text;

namespace Recipe.Cli.Text;

/// <summary>Names of parts in messages.</summary>
internal static class PartNames
{
    /// <summary>That there is no part of a name, and which was probably meant, or in which of the files that are used it stands.</summary>
    public static string Unknown(string name, IReadOnlyList<CompiledFile> files)
    {
        if (files.Select(file => file.UsedFileOf(name)).FirstOrDefault(source => source is not null) is { } used)
        {
            return $"{name} stands in {used.Name}, which {string.Join(", ", files.Select(file => file.Source.Name))} only uses: give that file as well.";
        }

        var near = Spelling.Nearest(name, files.SelectMany(file => file.PartNames));
        return $"there is no part or variant named {name} in {string.Join(", ", files.Select(file => file.Source.Name))}" + (near is null ? "." : $"; did you mean {near}?");
    }
}
