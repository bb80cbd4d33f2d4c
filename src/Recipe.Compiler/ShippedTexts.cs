using System.Collections.Immutable;
using System.Text;
using Recipe.Semantics;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Compiler;

/// <summary>The texts that ship inside the program: the book of materials, and the starting points for a new recipe.</summary>
public static class ShippedTexts
{
    private const string BookFolder = "book/";
    private const string TemplateFolder = "templates/";
    private const string RuleFolder = "rules/";

    private static readonly Lazy<Book> LazyBook = new(() => Book.Bind(Read(BookFolder).Select(SyntaxTree.Parse)));
    private static readonly Lazy<ImmutableArray<SourceText>> LazyTemplates = new(() => Read(TemplateFolder));
    private static readonly Lazy<ImmutableArray<SourceText>> LazyRules = new(() => Read(RuleFolder));

    /// <summary>The book of materials, parsed once for the life of the program.</summary>
    public static Book Book => LazyBook.Value;

    /// <summary>The starting points, one for each process, named <c>templates/PROCESS.recipe</c>.</summary>
    public static ImmutableArray<SourceText> Templates => LazyTemplates.Value;

    /// <summary>The starting points of a rule of the house, named <c>rules/rule.recipe</c>; each holds one whose name is <c>new-rule</c>.</summary>
    public static ImmutableArray<SourceText> RuleTemplates => LazyRules.Value;

    private static ImmutableArray<SourceText> Read(string folder)
    {
        var assembly = typeof(ShippedTexts).Assembly;
        return
        [
            .. assembly.GetManifestResourceNames()
                .Where(name => name.StartsWith(folder, StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
                .Select(name =>
                {
                    using var stream = assembly.GetManifestResourceStream(name)!;
                    using var reader = new StreamReader(stream, Encoding.UTF8);
                    return new SourceText(name, reader.ReadToEnd());
                }),
        ];
    }
}
