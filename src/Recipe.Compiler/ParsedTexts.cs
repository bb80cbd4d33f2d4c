using System.Collections.Concurrent;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Compiler;

/// <summary>
/// Trees of texts, kept from one workspace to the next. A text that is the same as last time keeps its tree, and with it the identity
/// that spans of it are compared by. Only the latest text of each name is held.
/// </summary>
public sealed class ParsedTexts
{
    private readonly ConcurrentDictionary<string, SyntaxTree> _trees = new(StringComparer.Ordinal);

    /// <summary>The tree of a text: the one of last time when the text is the same.</summary>
    /// <param name="name">Its name, as a workspace has it.</param>
    /// <param name="text">The whole text.</param>
    public SyntaxTree TreeOf(string name, string text)
    {
        ArgumentNullException.ThrowIfNull(name);
        ArgumentNullException.ThrowIfNull(text);
        if (_trees.TryGetValue(name, out var known) && known.Source.Text == text)
        {
            return known;
        }

        var tree = SyntaxTree.Parse(new SourceText(name, text));
        _trees[name] = tree;
        return tree;
    }

    /// <summary>Forgets a text that is gone.</summary>
    public void Forget(string name) => _trees.TryRemove(name, out _);
}
