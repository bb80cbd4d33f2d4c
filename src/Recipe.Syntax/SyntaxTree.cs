using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax;

/// <summary>A parsed text.</summary>
public sealed class SyntaxTree
{
    private SyntaxTree(SourceText source, ImmutableArray<Token> tokens, FileSyntax root, ImmutableArray<Finding> findings)
    {
        Source = source;
        Tokens = tokens;
        Root = root;
        Findings = findings;
    }

    /// <summary>The text.</summary>
    public SourceText Source { get; }

    /// <summary>Every character, in order.</summary>
    public ImmutableArray<Token> Tokens { get; }

    /// <summary>The lines.</summary>
    public FileSyntax Root { get; }

    /// <summary>What could not be read.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>Reads a text.</summary>
    public static SyntaxTree Parse(SourceText source) => new(source, [], new FileSyntax([], default), []);
}
