using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>Walks the tree and says what could not be read; the grammar itself keeps no state.</summary>
internal static class TroubleCollector
{
    public static void Collect(SourceText source, ImmutableArray<StatementSyntax> statements, List<Finding> findings)
    {
        foreach (var statement in statements)
        {
            switch (statement)
            {
                case EntrySyntax { Block: { } block }:
                    Block(source, block, findings);
                    break;
                case ErrorSyntax error:
                    Error(source, error, findings);
                    break;
            }
        }
    }

    private static void Error(SourceText source, ErrorSyntax error, List<Finding> findings)
    {
        var where = new SourceSpan(source, error.SkippedSpan);
        var isBraceAlone = error.Entry is null && error.Block is null && error.SkippedSpan.Length == 1 && where.Text == "}";
        findings.Add(isBraceAlone ? StrayBrace.Create(where) : UnreadableLine.Create(where));
        if (error.Block is { } block)
        {
            Block(source, block, findings);
        }
    }

    private static void Block(SourceText source, BlockSyntax block, List<Finding> findings)
    {
        if (block.CloseBrace is null)
        {
            findings.Add(UnclosedBlock.Create(new SourceSpan(source, block.OpenBrace), new SourceSpan(source, new TextSpan(block.Span.End, 0))));
        }

        Collect(source, block.Statements, findings);
    }
}
