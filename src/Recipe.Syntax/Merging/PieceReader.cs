using System.Collections.Immutable;
using System.Text;
using Recipe.Text;

namespace Recipe.Syntax.Merging;

/// <summary>Takes a text that can be read apart into pieces.</summary>
internal sealed class PieceReader
{
    private readonly SourceText _source;
    private readonly ImmutableArray<MergeLine> _lines;
    private readonly ImmutableArray<string> _says;

    private PieceReader(SyntaxTree tree)
    {
        _source = tree.Source;
        _lines = MergeLine.Of(_source);
        _says = Sayings(tree);
    }

    /// <summary>The pieces of a text, as a block without a frame.</summary>
    public static PieceBlock Read(SyntaxTree tree, MergeRules rules)
    {
        var reader = new PieceReader(tree);
        return reader.Block(tree.Root.Statements, rules, 0, reader._lines.Length, reader._lines.Length);
    }

    /// <summary>
    /// What each line says: a run of blanks between two tokens is one blank, at the ends none. Whether there is a blank stays, because
    /// <c>1/2 mm</c> and <c>1 / 2 mm</c> are two things in arithmetic.
    /// </summary>
    public static ImmutableArray<string> Sayings(SyntaxTree tree)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        var line = new StringBuilder();
        foreach (var token in tree.Tokens)
        {
            switch (token.Kind)
            {
                case TokenKind.LineEnd or TokenKind.EndOfFile:
                    lines.Add(line.ToString().Trim(' ', '\t'));
                    line.Clear();
                    break;
                case TokenKind.Blank:
                    line.Append(' ');
                    break;
                default:
                    line.Append(tree.Source.Text, token.Span.Start, token.Span.Length);
                    break;
            }
        }

        return lines.ToImmutable();
    }

    private PieceBlock Block(ImmutableArray<StatementSyntax> statements, MergeRules rules, int from, int to, int footEnd)
    {
        var pieces = ImmutableArray.CreateBuilder<Piece>();
        var space = from;
        var at = from;
        for (var i = 0; i < statements.Length;)
        {
            // Statements that share a line go together.
            var first = FirstLine(statements[i]);
            var last = LastLine(statements[i]);
            var count = 1;
            for (; i + count < statements.Length && FirstLine(statements[i + count]) <= last; count++)
            {
                last = LastLine(statements[i + count]);
            }

            Loose(first);
            pieces.Add(count == 1 ? Statement(statements[i], rules, space, first, last) : Leaf(space, first, last, null, WordOf(statements[i])));
            space = at = last + 1;
            i += count;
        }

        Loose(to);
        return new PieceBlock(pieces.ToImmutable(), Lines(space, to), Lines(to, footEnd), Says(to, footEnd), rules.IsOrdered);

        // Comments, and what else stands on a line without a statement.
        void Loose(int end)
        {
            for (; at < end; at++)
            {
                if (_says[at].Length > 0)
                {
                    pieces.Add(Leaf(space, at, at, null, "") with { IsRemark = _says[at][0] == '#' });
                    space = at + 1;
                }
            }
        }
    }

    private Piece Statement(StatementSyntax statement, MergeRules rules, int space, int first, int last)
    {
        if (statement is not EntrySyntax entry)
        {
            return Leaf(space, first, last, statement is LetSyntax let ? "let " + let.Name.Text : null, WordOf(statement));
        }

        var key = rules.KeyOf(entry);
        return FrameOf(entry) is { } frame
            ? new Piece
            {
                Space = Lines(space, first),
                Lines = Lines(first, frame.Open + 1),
                HeadSays = Says(first, frame.Open + 1),
                Says = Says(first, last + 1),
                Key = key,
                Word = entry.Head.Text,
                Block = Block(entry.Block!.Statements, rules.Inside(entry), frame.Open + 1, frame.Close, last + 1),
            }
            : Leaf(space, first, last, key, entry.Head.Text);
    }

    /// <summary>The lines of both braces when nothing of the block stands on them; else null.</summary>
    private (int Open, int Close)? FrameOf(EntrySyntax entry)
    {
        if (entry.Block is not { CloseBrace: { } brace } block)
        {
            return null;
        }

        var (open, close) = (LineOf(block.OpenBrace.Start), LineOf(brace.Start));
        return open < close && (block.Statements is [] || (FirstLine(block.Statements[0]) > open && LastLine(block.Statements[^1]) < close))
            ? (open, close)
            : null;
    }

    private Piece Leaf(int space, int first, int last, string? key, string word) => new()
    {
        Space = Lines(space, first),
        Lines = Lines(first, last + 1),
        Says = Says(first, last + 1),
        HeadSays = Says(first, last + 1),
        Key = key,
        Word = word,
    };

    private static string WordOf(StatementSyntax statement) => statement switch
    {
        EntrySyntax entry => entry.Head.Text,
        LetSyntax => "let",
        _ => "",
    };

    private ImmutableArray<MergeLine> Lines(int from, int to) => _lines[from..to];

    private string Says(int from, int to) => string.Join('\n', _says.Skip(from).Take(to - from).Where(line => line.Length > 0));

    private int FirstLine(StatementSyntax statement) => LineOf(statement.Span.Start);

    private int LastLine(StatementSyntax statement) => LineOf(statement.Span.End);

    private int LineOf(int offset) => _source.PositionOf(offset).Line;
}
