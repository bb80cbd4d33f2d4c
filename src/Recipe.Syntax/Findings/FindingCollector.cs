using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>Walks a tree and says what could not be read. The grammar itself keeps no state, so this is where its trouble gets words.</summary>
internal sealed class FindingCollector
{
    private readonly SourceText _source;
    private readonly ImmutableArray<Token> _tokens;
    private readonly List<Finding> _findings;

    // Places that were answered already: a bad character needs no second finding for the line that it spoils.
    private readonly HashSet<int> _answered;

    private FindingCollector(SourceText source, ImmutableArray<Token> tokens, List<Finding> findings)
    {
        _source = source;
        _tokens = tokens;
        _findings = findings;
        _answered = [.. findings.Select(finding => finding.Where.Span.Start)];
    }

    /// <summary>Adds to the findings of the tokens those of the tree.</summary>
    public static void Collect(SourceText source, ImmutableArray<Token> tokens, ImmutableArray<StatementSyntax> statements, List<Finding> findings) =>
        new FindingCollector(source, tokens, findings).Statements(statements, isOneLine: false);

    /// <param name="statements">The statements of the text or of a block.</param>
    /// <param name="isOneLine">Whether they are those of a block that its author put on one line, braces and all: there a line end would tear it apart.</param>
    private void Statements(ImmutableArray<StatementSyntax> statements, bool isOneLine)
    {
        for (var i = 0; i < statements.Length; i++)
        {
            switch (statements[i])
            {
                case EntrySyntax { Block: { } block } entry:
                    BraceOfEntry(entry, block);
                    Block(block);
                    break;
                case ErrorSyntax error:
                    if (!_answered.Contains(error.Trouble.Start) && !NotUtf8.IsAll(_source.Text.AsSpan(error.Trouble.Start, error.Trouble.Length)))
                    {
                        _findings.Add(Diagnosis.Of(_source, _tokens, error));
                    }

                    if (error.Block is { } kept)
                    {
                        Block(kept);
                    }

                    break;
            }

            if (!isOneLine && i > 0 && statements[i] is EntrySyntax or LetSyntax && FollowsBlock(statements[i - 1], statements[i]))
            {
                var first = _tokens[TokenSearch.At(_tokens, statements[i].Span.Start)];
                _findings.Add(EntryAfterBlock.Create(At(first.Span)));
            }
        }
    }

    private void BraceOfEntry(EntrySyntax entry, BlockSyntax block)
    {
        var between = _source.Text.AsSpan(entry.LineSpan.End, block.OpenBrace.Start - entry.LineSpan.End);
        if (between.IndexOfAny('\n', '\r') >= 0)
        {
            _findings.Add(BraceOnOwnLine.Create(At(block.OpenBrace), At(entry.LineSpan)));
        }
    }

    private void Block(BlockSyntax block)
    {
        if (block.CloseBrace is null)
        {
            _findings.Add(UnclosedBlock.Create(At(block.OpenBrace), At(new TextSpan(block.Span.End, 0))));
        }

        Statements(block.Statements, block.CloseBrace is not null && _source.Slice(block.Span).AsSpan().IndexOfAny('\n', '\r') < 0);
    }

    private bool FollowsBlock(StatementSyntax before, StatementSyntax after)
    {
        var block = before switch { EntrySyntax entry => entry.Block, ErrorSyntax error => error.Block, _ => null };
        return block is { CloseBrace: not null }
            && _source.Text.AsSpan(before.Span.End, after.Span.Start - before.Span.End).IndexOfAny('\n', '\r', ';') < 0;
    }

    private SourceSpan At(TextSpan span) => new(_source, span);
}
