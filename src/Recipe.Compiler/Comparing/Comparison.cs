using System.Collections.Immutable;
using Recipe.Documents;

namespace Recipe.Compiler.Comparing;

/// <summary>A file in two versions.</summary>
/// <param name="Before">The earlier version; null when the file is new.</param>
/// <param name="BeforeName">What that version is called.</param>
/// <param name="After">The later version; null when the file is gone.</param>
/// <param name="AfterName">What that version is called.</param>
public sealed record FileVersions(CompiledFile? Before, string BeforeName, CompiledFile? After, string AfterName);

/// <summary>The difference of two versions of recipes: what was written, and what it does.</summary>
public sealed class Comparison
{
    private readonly ImmutableArray<ComparedFile> _files;

    private Comparison(ImmutableArray<ComparedFile> files) => _files = files;

    /// <summary>Whether nothing is different but layout and remarks.</summary>
    public bool IsSame => _files.All(file => file.IsSame);

    /// <summary>Compares files, the texts they use included.</summary>
    /// <param name="files">The files.</param>
    /// <param name="today">The day, as the workspaces were given it.</param>
    /// <param name="only">Only the part of this name in the later version, with the lines that belong to no other part; all when null.</param>
    public static Comparison Of(IEnumerable<FileVersions> files, DateOnly? today, string? only = null)
    {
        ArgumentNullException.ThrowIfNull(files);
        return new([.. files.Select(file => FileComparer.Of(file, today, only))]);
    }

    /// <summary>As plain text for a terminal; each line that changed has one letter: + new, - gone, ~ changed, > moved, = renamed.</summary>
    public string AsText() => ChangeReport.AsText(_files);

    /// <summary>As Markdown for a review comment.</summary>
    public string AsMarkdown() => ChangeReport.AsMarkdown(_files);

    /// <summary>As HTML with both stacks side by side.</summary>
    public string AsHtml() => ChangeReport.AsHtml(_files);

    /// <summary>For programs, in the schema <c>recipe/changes/1</c>.</summary>
    public string AsJson() => ChangeReport.AsJson(_files);
}
