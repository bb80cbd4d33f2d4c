using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Syntax;

namespace Recipe.Editing;

/// <summary>The files that a file uses.</summary>
public static class Links
{
    /// <summary>Each <c>use</c> line's text and the file it means, whether that exists or not.</summary>
    public static ImmutableArray<Link> Of(CompiledFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        return
        [
            .. file.Tree.Root.Statements.OfType<EntrySyntax>()
                .Where(entry => entry.Head.Text == "use")
                .SelectMany(entry => entry.Values.OfType<TextSyntax>().Take(1))
                .Where(path => path.Text.Length > 0)
                .Select(path => new Link(path.Span, PathNames.Resolve(file.Source.Name, path.Text))),
        ];
    }
}
