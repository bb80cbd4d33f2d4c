using System.Text.RegularExpressions;
using Recipe.Compiler;
using Recipe.Semantics;
using Recipe.Semantics.Schema;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Editing;

/// <summary>Changes a name everywhere.</summary>
public static partial class Renames
{
    /// <summary>The name at an offset when it can be changed; null for names of the book, and where there is none.</summary>
    public static RenameTarget? Prepare(CompiledFile file, int offset)
    {
        ArgumentNullException.ThrowIfNull(file);
        return Navigation.NameAt(file, offset) is { Declaration: { } declared } name && !IsOfTheBook(declared)
            ? new RenameTarget(name.Where.Span, name.Name)
            : null;
    }

    /// <summary>Changes the name at an offset in all files given. Refuses what would mean something else afterwards.</summary>
    public static RenameResult Rename(IEnumerable<CompiledFile> files, CompiledFile file, int offset, string newName)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(file);
        ArgumentNullException.ThrowIfNull(newName);
        if (Navigation.NameAt(file, offset) is not { Declaration: { } declared } name)
        {
            return Refuse("There is no name here that can be changed.");
        }

        if (IsOfTheBook(declared))
        {
            return Refuse($"`{name.Name}` belongs to the shipped book; declare your own `like` it instead.");
        }

        if (!Word().IsMatch(newName))
        {
            return Refuse($"`{newName}` is no name: letters, digits and hyphens, beginning with a letter.");
        }

        // Inside a ply list or a material a name competes with the words of its block; elsewhere with names of its kind.
        var all = files.Append(file).DistinctBy(f => f.Source.Name).ToList();
        if (newName != name.Name && name.Kind is not (NameKind.Ply or NameKind.Hardener)
            && all.SelectMany(f => f.Bound.Names).Any(use => use.Kind == name.Kind && use.Name == newName && use.Declaration is not null))
        {
            return Refuse($"`{newName}` is declared already.");
        }

        if (name.Kind is NameKind.Ply or NameKind.Hardener && newName != name.Name
            && file.Bound.Names.Any(use => use.Kind == name.Kind && use.Name == newName && use.IsDeclaration && SameBlock(file, use.Where.Span.Start, declared)))
        {
            return Refuse($"`{newName}` stands in the same list already.");
        }

        if (RecipeSchema.File.Find(newName) is not null)
        {
            return Refuse($"`{newName}` is a word of the language.");
        }

        return new RenameResult(
            [.. Navigation.References(all, file, offset, withDeclaration: true).Select(where => new TextEdit(where, newName))],
            null);
    }

    private static bool SameBlock(CompiledFile file, int offset, SourceSpan declared) =>
        declared.Source.Name == file.Source.Name
        && Places.BlockAt(file.Tree, offset).Owner?.Entry.Span == Places.BlockAt(file.Tree, declared.Span.Start).Owner?.Entry.Span;

    private static bool IsOfTheBook(SourceSpan where) => where.Source.Name.StartsWith("book/", StringComparison.Ordinal);

    private static RenameResult Refuse(string why) => new([], why);

    [GeneratedRegex("^[A-Za-z][A-Za-z0-9_-]*\\z")]
    private static partial Regex Word();
}
