using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>
/// What the stages before could not understand. A check that speaks of a missing line, or of the order of lines, holds its tongue when
/// the line may well stand there and only be misspelt: one mistake is one finding.
/// </summary>
internal sealed class Misread
{
    // Lines of a bag that have no place in its order.
    private static readonly HashSet<string> OffTheStack = new(StringComparer.Ordinal)
    {
        "sealant-tape", "flash-tape", "port", "hose", "catch-pot", "gauge", "pleats", "envelope", "time",
    };

    private readonly ImmutableArray<SourceSpan> _firstWords;
    private readonly ImmutableArray<SourceSpan> _anyWords;

    public Misread(IEnumerable<Finding> earlier)
    {
        var first = ImmutableArray.CreateBuilder<SourceSpan>();
        var any = ImmutableArray.CreateBuilder<SourceSpan>();
        foreach (var where in earlier.Where(f => f.Severity == Severity.Error).Select(f => f.Where))
        {
            var head = BlockText.HeadWordAt(where.Source, where.Span.Start);
            if (head.Start == where.Span.Start)
            {
                first.Add(where);
                any.Add(where);
            }
            else if (!OffTheStack.Contains(where.Source.Slice(head)))
            {
                any.Add(where);
            }
        }

        _firstWords = first.ToImmutable();
        _anyWords = any.ToImmutable();
    }

    /// <summary>Whether a line of the block was not understood.</summary>
    public bool HasOne(LinesRead lines)
    {
        TextSpan? block = null;
        foreach (var where in lines.AllOfTheLine ? _anyWords : _firstWords)
        {
            var at = where.Span.Start;
            if (at < lines.Head.Span.End || !ReferenceEquals(where.Source, lines.Head.Source))
            {
                continue;
            }

            block ??= BlockText.BlockAfter(lines.Head.Source, lines.Head.Span.End);
            if (block is not { } inside)
            {
                return false;
            }

            if (at > inside.Start && at < inside.End && BlockText.DepthAt(lines.Head.Source, inside, at) == 1)
            {
                return true;
            }
        }

        return false;
    }
}

/// <summary>The block whose lines a check misses or counts.</summary>
/// <param name="Head">The word before the block.</param>
/// <param name="AllOfTheLine">Whether a line is lost when any of its words is not understood, or only when its first is.</param>
public sealed record LinesRead(SourceSpan Head, bool AllOfTheLine = false);
