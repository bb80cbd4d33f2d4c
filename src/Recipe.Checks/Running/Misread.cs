using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>
/// What the stages before could not understand. A check that speaks of a missing line, or of the order of lines, holds its tongue when
/// the line may well stand there and only be misspelt: one mistake is one finding.
/// </summary>
internal sealed class Misread(IReadOnlyList<Finding> earlier)
{
    // Lines of a bag that have no place in its order.
    private static readonly HashSet<string> OffTheStack = new(StringComparer.Ordinal)
    {
        "sealant-tape", "flash-tape", "port", "hose", "catch-pot", "gauge", "pleats", "envelope", "time",
    };

    /// <summary>Whether a line of the block was not understood.</summary>
    public bool HasOne(LinesRead lines)
    {
        if (earlier.Count == 0 || BlockText.BlockAfter(lines.Head.Source, lines.Head.Span.End) is not { } block)
        {
            return false;
        }

        foreach (var finding in earlier)
        {
            var at = finding.Where.Span.Start;
            if (finding.Severity == Severity.Error
                && ReferenceEquals(finding.Where.Source, lines.Head.Source)
                && at > block.Start
                && at < block.End
                && BlockText.DepthAt(lines.Head.Source, block, at) == 1
                && Matters(finding.Where, lines.AllOfTheLine))
            {
                return true;
            }
        }

        return false;
    }

    private static bool Matters(SourceSpan where, bool allOfTheLine)
    {
        var head = BlockText.HeadWordAt(where.Source, where.Span.Start);
        return head.Start == where.Span.Start || (allOfTheLine && !OffTheStack.Contains(where.Source.Slice(head)));
    }
}

/// <summary>The block whose lines a check misses or counts.</summary>
/// <param name="Head">The word before the block.</param>
/// <param name="AllOfTheLine">Whether a line is lost when any of its words is not understood, or only when its first is.</param>
public sealed record LinesRead(SourceSpan Head, bool AllOfTheLine = false);
