using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Compiler;

/// <summary>A file of rules in C# that a text uses.</summary>
/// <param name="Name">The file, as the workspace names it.</param>
/// <param name="Text">Its text; null when it cannot be read.</param>
/// <param name="Where">Where it is named.</param>
internal sealed record CodedFile(string Name, string? Text, SourceSpan Where)
{
    /// <summary>The files that the <c>use</c> lines of a text name, in order, each once.</summary>
    public static IEnumerable<CodedFile> UsedBy(SyntaxTree tree, IFileStore files) => UseLines(tree)
        .Where(path => IsOne(path.Text))
        .Select(path => (Name: PathNames.Resolve(tree.Source.Name, path.Text), path.Span))
        .DistinctBy(path => path.Name, StringComparer.Ordinal)
        .Select(path => new CodedFile(path.Name, files.TryRead(path.Name, out var text) ? text : null, new SourceSpan(tree.Source, path.Span)));

    /// <summary>Whether a path means rules in C# and no recipe.</summary>
    public static bool IsOne(string path) => FileEndings.IsCodedRules(path);

    /// <summary>The paths that the <c>use</c> lines of a text name.</summary>
    public static IEnumerable<TextSyntax> UseLines(SyntaxTree tree) => tree.Root.Statements
        .OfType<EntrySyntax>()
        .Where(entry => entry.Head.Text == "use")
        .SelectMany(entry => entry.Values.OfType<TextSyntax>());
}
