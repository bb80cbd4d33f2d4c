using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Recipe.Syntax.Findings;
using Recipe.Syntax.Parsing;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax;

/// <summary>A parsed text: its tokens, which tile it, its tree, and what could not be read. Parsing never fails.</summary>
public sealed class SyntaxTree
{
    // Tokens are half of what a tree takes, and once it is parsed only who lays out, colours or completes a text asks for them: what the collector took is read
    // again from the text.
    private readonly WeakReference<Token[]> _tokens;

    private SyntaxTree(SourceText source, ImmutableArray<Token> tokens, FileSyntax root, ImmutableArray<Finding> findings)
    {
        Source = source;
        _tokens = new WeakReference<Token[]>(ImmutableCollectionsMarshal.AsArray(tokens)!);
        Root = root;
        Findings = findings;
    }

    /// <summary>The text.</summary>
    public SourceText Source { get; }

    /// <summary>Every character of the text, in order; the end of the file comes last and is empty.</summary>
    public ImmutableArray<Token> Tokens
    {
        get
        {
            if (!_tokens.TryGetTarget(out var tokens))
            {
                tokens = ImmutableCollectionsMarshal.AsArray(Lexer.Run(Source, []))!;
                _tokens.SetTarget(tokens);
            }

            return ImmutableCollectionsMarshal.AsImmutableArray(tokens);
        }
    }

    /// <summary>The tree.</summary>
    public FileSyntax Root { get; }

    /// <summary>What could not be read, in the order of the text.</summary>
    public ImmutableArray<Finding> Findings { get; }

    /// <summary>Parses a text, whatever it is.</summary>
    public static SyntaxTree Parse(SourceText source)
    {
        ArgumentNullException.ThrowIfNull(source);
        var findings = new List<Finding>();
        var tokens = Lexer.Run(source, findings);
        var statements = Grammar.Parse(SymbolReader.Run(source, tokens, findings));
        FindingCollector.Collect(source, tokens, statements, findings);
        findings.Sort(Finding.Compare);
        return new SyntaxTree(source, tokens, new FileSyntax(statements, new TextSpan(0, source.Length)), [.. findings]);
    }

    /// <summary>The text again, put together from the tokens.</summary>
    public string ToText() => string.Concat(Tokens.Select(token => Source.Slice(token.Span)));
}
