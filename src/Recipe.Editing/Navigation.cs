using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Semantics;
using Recipe.Text;

namespace Recipe.Editing;

/// <summary>From a name to where it is declared, and to where it is used.</summary>
public static class Navigation
{
    /// <summary>Where the name at an offset is declared, perhaps in another file or the shipped book; null where there is no name.</summary>
    public static SourceSpan? Definition(CompiledFile file, int offset) => NameAt(file, offset)?.Declaration;

    /// <summary>Every place of the name at an offset, in the files given, by file and place.</summary>
    /// <param name="files">The files to look through; the file itself is looked through in any case.</param>
    /// <param name="file">The file of the cursor.</param>
    /// <param name="offset">The cursor.</param>
    /// <param name="withDeclaration">Whether the declaration counts.</param>
    public static ImmutableArray<SourceSpan> References(IEnumerable<CompiledFile> files, CompiledFile file, int offset, bool withDeclaration)
    {
        ArgumentNullException.ThrowIfNull(files);
        ArgumentNullException.ThrowIfNull(file);
        if (NameAt(file, offset) is not { Declaration: { } declared } name)
        {
            return [];
        }

        return
        [
            .. files.Append(file).DistinctBy(f => f.Source.Name)
                .SelectMany(f => f.Bound.Names)
                .Where(use => Same(use, name.Kind, name.Name, declared) && (withDeclaration || !use.IsDeclaration))
                .Select(use => use.Where)
                .Distinct()
                .OrderBy(where => where.Source.Name, StringComparer.Ordinal)
                .ThenBy(where => where.Span.Start),
        ];
    }

    /// <summary>The places of the name at an offset in its own file, and whether each declares it.</summary>
    public static ImmutableArray<(TextSpan Where, bool IsWrite)> Highlights(CompiledFile file, int offset)
    {
        ArgumentNullException.ThrowIfNull(file);
        return NameAt(file, offset) is not { } name
            ? []
            : [.. file.Bound.Names
                .Where(use => use.Declaration is null || name.Declaration is null
                    ? use.Kind == name.Kind && use.Name == name.Name
                    : Same(use, name.Kind, name.Name, name.Declaration))
                .Select(use => (use.Where.Span, use.IsDeclaration))
                .Distinct()];
    }

    /// <summary>The name at an offset, its end counting, or null.</summary>
    internal static NameUse? NameAt(CompiledFile file, int offset)
    {
        NameUse? found = null;
        foreach (var use in file.Bound.Names)
        {
            if (use.Where.Span.Touches(offset) && ReferenceEquals(use.Where.Source, file.Source)
                && (found is null || use.Where.Span.Length < found.Where.Span.Length || (offset < use.Where.Span.End && offset >= found.Where.Span.End)))
            {
                found = use;
            }
        }

        return found;
    }

    // Files of different moments hold different texts of the same name: places are compared by name and offset.
    internal static bool Same(NameUse use, NameKind kind, string name, SourceSpan? declared) =>
        use.Kind == kind && use.Name == name && use.Declaration is { } other && declared is { } wanted
        && other.Source.Name == wanted.Source.Name && other.Span == wanted.Span;
}
