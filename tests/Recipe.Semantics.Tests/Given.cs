using Recipe.Syntax;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Tests;

/// <summary>Texts to bind.</summary>
internal static class Given
{
    /// <summary>A few materials of our own invention that stand for the book.</summary>
    public static readonly Book Book = Book.Bind([Tree(Invented.Book, "book/invented.recipe")]);

    public static SyntaxTree Tree(string text, string name = "this.recipe") => SyntaxTree.Parse(new SourceText(name, text));

    /// <summary>Binds a text that stands alone, except that it may use itself as this.recipe.</summary>
    public static BoundFile Bind(string text, Book? book = null)
    {
        var tree = Tree(text);
        return Binder.Bind(tree, book ?? Book, new UseScope((_, path) => path == "this.recipe" ? tree : null));
    }

    /// <summary>Binds the first of several files; they use each other by name.</summary>
    public static BoundFile BindFiles(params (string Name, string Text)[] files)
    {
        var trees = files.ToDictionary(f => f.Name, f => Tree(f.Text, f.Name));
        return Binder.Bind(trees[files[0].Name], Book, new UseScope((_, path) => trees.GetValueOrDefault(path)));
    }

    /// <summary>The codes found in a text, in order; its grammar must be sound.</summary>
    public static string[] Codes(string text)
    {
        var bound = Bind(text);
        Assert.Empty(bound.Tree.Findings);
        return [.. bound.Findings.Select(f => f.Descriptor.Name)];
    }

    /// <summary>Binds a text that must be sound.</summary>
    public static BoundFile Sound(string text)
    {
        var bound = Bind(text);
        Assert.Empty(bound.Tree.Findings.Concat(bound.Findings).Select(f => $"{f.Where} {f.Descriptor.Name}: {f.Message}"));
        return bound;
    }

    /// <summary>The one finding of a text.</summary>
    public static Finding Single(string text)
    {
        var bound = Bind(text);
        Assert.Empty(bound.Tree.Findings);
        return Assert.Single(bound.Findings);
    }

    /// <summary>The text with a fix applied.</summary>
    public static string Apply(SourceText source, Fix fix) => TextEdit.Apply(source, fix.Edits);
}
