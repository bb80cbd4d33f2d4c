using System.Diagnostics.CodeAnalysis;
using Recipe.RuleProtocol;

namespace Recipe.Compiler;

/// <summary>Where texts come from. The door opens files (or an editor's buffers); nothing below it does.</summary>
public interface IFileStore
{
    /// <summary>The text with this name, or false when there is none that can be read.</summary>
    /// <param name="name">A path with forward slashes, as the workspace built it from names it was given.</param>
    /// <param name="text">The whole text.</param>
    bool TryRead(string name, [NotNullWhen(true)] out string? text);

    /// <summary>The file of a drawn or scanned shape, or null when there is none that can be read; the same object as long as its bytes are the same.</summary>
    /// <param name="name">A path as <see cref="TryRead"/> takes it.</param>
    ShapeBytes? ShapeOf(string name) => null;

    /// <summary>Runs rules in C#; null where nobody can.</summary>
    IRuleRunner? Rules => null;

    /// <summary>The recipes that stand in a folder itself, named as <see cref="TryRead"/> takes them, in order; none when the store knows no folders.</summary>
    /// <param name="folder">A folder as the workspace names it: no slash at its end; empty for the one that bare names stand in.</param>
    IEnumerable<string> RecipesIn(string folder) => [];

    /// <summary>The folder above a folder, or null at the top of what the store knows.</summary>
    /// <param name="folder">A folder as the workspace names it: no slash at its end; empty for the one that bare names stand in.</param>
    string? FolderAbove(string folder) => PathNames.Above(folder);
}
