using System.Collections.Immutable;
using Recipe.Text;

namespace Recipe.Syntax.Formatting;

/// <summary>
/// Walks the tree and its tokens side by side and makes the lines of the output: the tree says what stands on a line and how deep,
/// the tokens between its nodes hold the comments and the empty lines.
/// </summary>
internal sealed class LayoutBuilder
{
    /// <summary>Blocks that were written on one line stay so up to this many columns.</summary>
    private const int WidestBlock = 100;

    private readonly SourceText _source;
    private readonly ImmutableArray<Token> _tokens;
    private readonly ValueText _values;
    private readonly CellReader _cells;
    private readonly List<LayoutLine> _lines = [];
    private int _at;

    // Since the last line of the output.
    private int _lineEnds;
    private bool _semicolon;

    private LayoutBuilder(SyntaxTree tree)
    {
        _source = tree.Source;
        _tokens = tree.Tokens;
        _values = new ValueText(_source, _tokens);
        _cells = new CellReader(_source, _values);
    }

    /// <summary>The lines of a tree, columns not yet set.</summary>
    public static List<LayoutLine> Build(SyntaxTree tree)
    {
        var builder = new LayoutBuilder(tree);
        builder.Statements(tree.Root.Statements, 0);
        builder.Between(tree.Source.Length, 0);
        return builder._lines;
    }

    private void Statements(ImmutableArray<StatementSyntax> statements, int depth)
    {
        foreach (var statement in statements)
        {
            Between(statement.Span.Start, depth);
            switch (statement)
            {
                case EntrySyntax entry:
                    Entry(entry, depth);
                    break;
                case LetSyntax let:
                    Let(let, depth);
                    break;
                case ErrorSyntax error:
                    Error(error, depth);
                    break;
            }
        }
    }

    /// <summary>Goes on to a place between statements; a comment belongs to the line it was written on, or makes one of its own.</summary>
    private void Between(int offset, int depth)
    {
        for (; _at < _tokens.Length && _tokens[_at].Span.Start < offset; _at++)
        {
            switch (_tokens[_at].Kind)
            {
                case TokenKind.LineEnd:
                    _lineEnds++;
                    break;
                case TokenKind.Semicolon:
                    _semicolon = true;
                    break;
                case TokenKind.Comment:
                    Comment(_source.Slice(_tokens[_at].Span).TrimEnd(' ', '\t'), depth);
                    break;
            }
        }
    }

    private void Comment(string text, int depth)
    {
        if (_lineEnds == 0 && _lines.Count > 0 && _lines[^1] is { Kind: not LineKind.Comment, Comment: null } line)
        {
            line.Comment = text;
        }
        else
        {
            var semicolon = _semicolon;
            Add(LineKind.Comment, depth, [new Cell(text)]);
            _semicolon = semicolon;
        }
    }

    private void Entry(EntrySyntax entry, int depth)
    {
        if (entry.Block is not { } block)
        {
            if (SkipTo(entry.Span.End))
            {
                Add(LineKind.Fixed, depth, [new Cell(_source.Slice(entry.Span))]);
            }
            else
            {
                Add(depth == 0 ? LineKind.Fixed : LineKind.Entry, depth, depth == 0 ? [new Cell(OneLine(entry))] : _cells.Cells(entry));
            }
        }
        else if (InlineBlock(entry, block, depth) is { } inline)
        {
            SkipTo(entry.Span.End);
            var header = OneLine(entry);
            Add(
                depth == 0 ? LineKind.Fixed : LineKind.Entry,
                depth,
                depth == 0 ? [new Cell(header + " " + inline)] : [new Cell(entry.Head.Text), new Cell((header + " " + inline)[(entry.Head.Text.Length + 1)..])]);
        }
        else
        {
            var keepsComment = SkipTo(entry.LineSpan.End);
            Add(LineKind.Opener, depth, [new Cell((keepsComment ? _source.Slice(entry.LineSpan) : OneLine(entry)) + " {")]);
            Block(block, depth);
        }
    }

    private void Let(LetSyntax let, int depth)
    {
        if (SkipTo(let.Span.End))
        {
            Add(LineKind.Fixed, depth, [new Cell(_source.Slice(let.Span))]);
        }
        else
        {
            Add(LineKind.Let, depth, [new Cell("let " + _values.Of(let.Name)), new Cell("= " + _values.Of(let.Value))]);
        }
    }

    /// <summary>A line that cannot be read stays as it was written; the entries of its block do not.</summary>
    private void Error(ErrorSyntax error, int depth)
    {
        if (error.Block is not { } block)
        {
            SkipTo(error.Span.End);
            Add(LineKind.Fixed, depth, [new Cell(_source.Slice(error.Span))]);
            return;
        }

        var start = error.Span.Start;
        var end = start;
        for (var i = _at; _tokens[i].Span.Start < block.OpenBrace.Start; i++)
        {
            end = _tokens[i].IsTrivia || _tokens[i].Kind == TokenKind.LineEnd ? end : _tokens[i].Span.End;
        }

        SkipTo(end);

        // A semicolon is what keeps a brace without a line of its own from becoming the block of the line above.
        var header = end == start ? (_semicolon ? ";" : "") : _source.Slice(TextSpan.FromBounds(start, end));
        Add(LineKind.Opener, depth, [new Cell(header.Length == 0 ? "{" : header + " {")]);
        Block(block, depth);
    }

    private void Block(BlockSyntax block, int depth)
    {
        Between(block.OpenBrace.Start, depth + 1);
        SkipTo(block.OpenBrace.End);
        Statements(block.Statements, depth + 1);
        if (block.CloseBrace is { } close)
        {
            Between(close.Start, depth + 1);
            SkipTo(close.End);
            _lineEnds = 0;
            Add(LineKind.Fixed, depth, [new Cell("}")]);
        }
    }

    /// <summary>The block in braces when it stays on the line of its entry, else null.</summary>
    private string? InlineBlock(EntrySyntax entry, BlockSyntax block, int depth)
    {
        if (block.CloseBrace is null || block.Statements.Length > 1 || HasLineEndOrComment(entry.Span))
        {
            return null;
        }

        string text;
        switch (block.Statements)
        {
            case []:
                text = "{ }";
                break;
            case [EntrySyntax { Block: null } only]:
                text = "{ " + OneLine(only) + " }";
                break;
            default:
                return null;
        }

        return (depth * 2) + OneLine(entry).Length + 1 + text.Length <= WidestBlock ? text : null;
    }

    private string OneLine(EntrySyntax entry) =>
        entry.Values.Length == 0 ? _values.Of(entry.Head) : _values.Of(entry.Head) + " " + _values.Of(entry.Values.AsSpan());

    private bool HasLineEndOrComment(TextSpan span)
    {
        for (var i = _at; _tokens[i].Span.Start < span.End; i++)
        {
            if (_tokens[i].Kind is TokenKind.LineEnd or TokenKind.Comment)
            {
                return true;
            }
        }

        return false;
    }

    /// <summary>Steps over the tokens of a node; the answer is whether a comment was among them.</summary>
    private bool SkipTo(int end)
    {
        var hasComment = false;
        for (; _tokens[_at].Span.Start < end; _at++)
        {
            hasComment |= _tokens[_at].Kind == TokenKind.Comment;
        }

        return hasComment;
    }

    private void Add(LineKind kind, int depth, List<Cell> cells)
    {
        var blank = _lineEnds > 1 && _lines.Count > 0 && _lines[^1].Kind != LineKind.Opener;
        _lines.Add(new LayoutLine(kind, depth, cells) { BlankBefore = blank });
        _lineEnds = 0;
        _semicolon = false;
    }
}
