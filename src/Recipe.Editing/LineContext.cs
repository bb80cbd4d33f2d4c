using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Editing;

/// <summary>
/// The line of a cursor as far as it is written: the block it stands in, its word, what is still open before the cursor. Made from tokens, because
/// a line that is being written is seldom one that parses.
/// </summary>
internal sealed record LineContext
{
    /// <summary>The block, or null when the language does not know it.</summary>
    public required BlockSchema? Block { get; init; }

    /// <summary>The entry that carries the block, or null at the top.</summary>
    public required EntryPlace? Owner { get; init; }

    /// <summary>The lines of that block.</summary>
    public required ImmutableArray<StatementSyntax> Lines { get; init; }

    /// <summary>Everything on the line before the word being typed, the head first.</summary>
    public required ImmutableArray<Token> Before { get; init; }

    /// <summary>The word being typed; empty at the cursor when there is none.</summary>
    public required TextSpan Typed { get; init; }

    /// <summary>The text.</summary>
    public required SourceText Source { get; init; }

    /// <summary>Whether the cursor stands at the head of a line.</summary>
    public bool AtHead => Before.IsEmpty;

    /// <summary>The word of the line, or null at its head and where the block does not know it.</summary>
    public WordSchema? Word => AtHead ? null : Block?.Find(Head) ?? Block?.FindRegional(Head) ?? Block?.NameLine;

    /// <summary>The first word of the line.</summary>
    public string Head => AtHead ? "" : TextOf(Before[0]);

    /// <summary>The line around a cursor; null inside a comment or a text in quotes.</summary>
    public static LineContext? At(CompiledFile file, int offset)
    {
        var tokens = file.Tree.Tokens;
        var before = new List<Token>();
        var typed = new TextSpan(offset, 0);
        foreach (var token in tokens)
        {
            if (token.Span.Start >= offset)
            {
                break;
            }

            var inside = offset <= token.Span.End;
            switch (token.Kind)
            {
                case TokenKind.Comment when inside:
                    return null;
                case TokenKind.String when offset < token.Span.End || token.Span.Length == 1 || file.Source.Text[token.Span.End - 1] != '"':
                    if (inside)
                    {
                        return null;
                    }

                    before.Add(token);
                    break;
                case TokenKind.LineEnd or TokenKind.Semicolon or TokenKind.OpenBrace or TokenKind.CloseBrace:
                    before.Clear();
                    break;
                case TokenKind.Blank or TokenKind.Comment:
                    break;
                case TokenKind.Word or TokenKind.Unit when inside:
                    typed = TextSpan.FromBounds(token.Span.Start, token.Span.End);
                    break;
                default:
                    before.Add(token);
                    break;
            }
        }

        var (block, owner, lines) = Places.BlockAt(file.Tree, offset);
        return new LineContext
        {
            Block = block,
            Owner = owner,
            Lines = lines,
            Before = [.. before],
            Typed = typed,
            Source = file.Source,
        };
    }

    /// <summary>The pattern that holds for the line: the one of its form where its first word decides.</summary>
    public LinePattern? Pattern()
    {
        if (Word is not { } word)
        {
            return null;
        }

        return word.Forms.IsEmpty ? word.Line : Before.Length > 1 ? word.FormOf(TextOf(Before[1]))?.Line : null;
    }

    /// <summary>Whether a clause or flag stands on the line already.</summary>
    public bool Says(ImmutableArray<string> words)
    {
        for (var i = 1; i + words.Length <= Before.Length; i++)
        {
            if (words.Select((w, k) => TextOf(Before[i + k]) == w).All(same => same))
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>The clause whose words end the line so far, so that its value comes next; or null.</summary>
    public ClausePattern? OpenClause(LinePattern pattern) => pattern.Clauses.FirstOrDefault(clause =>
        Before.Length > clause.Words.Length
        && clause.Words.Select((w, k) => TextOf(Before[Before.Length - clause.Words.Length + k]) == w).All(same => same));

    /// <summary>The text of a token.</summary>
    public string TextOf(Token token) => Source.Slice(token.Span);
}
