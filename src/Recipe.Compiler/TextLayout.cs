using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Compiler;

/// <summary>Lays out a text the one way there is.</summary>
public static class TextLayout
{
    /// <summary>The text laid out; lines that cannot be read stay as they are.</summary>
    /// <param name="name">Name of the text, for nothing but the tree.</param>
    /// <param name="text">The text.</param>
    public static string Format(string name, string text) => Formatter.Format(SyntaxTree.Parse(new SourceText(name, text)));

    /// <summary>The tree of the text laid out, where layout must make no difference; the same tree when it is laid out already.</summary>
    internal static SyntaxTree TreeOf(SyntaxTree tree)
    {
        var text = Formatter.Format(tree);
        return text == tree.Source.Text ? tree : SyntaxTree.Parse(new SourceText(tree.Source.Name, text));
    }
}
