using System.Collections.Immutable;

namespace Recipe.Text.Findings;

/// <summary>One thing found in one place.</summary>
/// <param name="Descriptor">What kind of thing.</param>
/// <param name="Severity">How bad it is here (a default-based finding is at most a warning).</param>
/// <param name="Where">The place the caret points at.</param>
/// <param name="Message">The facts: the two numbers compared, with units, in one sentence.</param>
public sealed record Finding(FindingDescriptor Descriptor, Severity Severity, SourceSpan Where, string Message)
{
    /// <summary>Other places that belong to the story: "resin mixed here".</summary>
    public ImmutableArray<FindingLabel> Labels { get; init; } = [];

    /// <summary>What could be changed, best first.</summary>
    public ImmutableArray<Fix> Fixes { get; init; } = [];

    /// <summary>The waiver that was given for it, when one was.</summary>
    public string? AcceptedBecause { get; init; }

    /// <summary>A finding with its descriptor's own severity.</summary>
    public static Finding Of(FindingDescriptor descriptor, SourceSpan where, string message)
    {
        ArgumentNullException.ThrowIfNull(descriptor);
        return new Finding(descriptor, descriptor.Severity, where, message);
    }

    /// <summary>
    /// The order in which findings are shown: by file, then by the step of the job at which they bite, then by place, then by code, so
    /// that the same input gives the same list.
    /// </summary>
    public static int Compare(Finding left, Finding right)
    {
        ArgumentNullException.ThrowIfNull(left);
        ArgumentNullException.ThrowIfNull(right);
        var byFile = string.CompareOrdinal(left.Where.Source.Name, right.Where.Source.Name);
        var byStage = byFile != 0 ? byFile : FindingFamilies.StageOf(left.Descriptor.Code).CompareTo(FindingFamilies.StageOf(right.Descriptor.Code));
        var byPlace = byStage != 0 ? byStage : left.Where.Span.Start.CompareTo(right.Where.Span.Start);
        var byCode = byPlace != 0 ? byPlace : string.CompareOrdinal(left.Descriptor.Code, right.Descriptor.Code);
        return byCode != 0 ? byCode : string.CompareOrdinal(left.Message, right.Message);
    }
}
