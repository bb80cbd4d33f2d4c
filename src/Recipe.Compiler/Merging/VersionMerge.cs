using System.Collections.Immutable;
using Recipe.Syntax.Merging;
using Recipe.Text.Findings;

namespace Recipe.Compiler.Merging;

/// <summary>Two versions of a recipe made one.</summary>
/// <param name="Text">The merged text, with both texts between markers where somebody has to choose.</param>
/// <param name="Conflicts">How many places somebody has to settle.</param>
/// <param name="ByLines">Whether it was merged line by line, because one of the texts cannot be read as a recipe.</param>
public sealed record VersionMerge(string Text, int Conflicts, bool ByLines)
{
    /// <summary>Merges two versions that began as one; see <see cref="RecipeMerge"/>.</summary>
    /// <param name="before">What both began with.</param>
    /// <param name="ours">Our version, whose line ends are kept.</param>
    /// <param name="theirs">Their version.</param>
    /// <param name="markerSize">How many signs a conflict marker has.</param>
    public static VersionMerge Of(string before, string ours, string theirs, int markerSize = 7) =>
        Of(RecipeMerge.Merge(before, ours, theirs, SchemaRules.OfFile, new ConflictMarkers(Size: markerSize)));

    /// <summary>Merges two versions of any text line by line.</summary>
    /// <param name="before">What both began with.</param>
    /// <param name="ours">Our version.</param>
    /// <param name="theirs">Their version.</param>
    /// <param name="markerSize">How many signs a conflict marker has.</param>
    public static VersionMerge OfLines(string before, string ours, string theirs, int markerSize = 7) =>
        Of(RecipeMerge.MergeLines(before, ours, theirs, new ConflictMarkers(Size: markerSize)));

    /// <summary>The errors that a merged file has and neither of the two versions had: what each changed was right, and both together are not.</summary>
    public static ImmutableArray<Finding> NewErrors(CompiledFile merged, CompiledFile ours, CompiledFile theirs)
    {
        ArgumentNullException.ThrowIfNull(merged);
        ArgumentNullException.ThrowIfNull(ours);
        ArgumentNullException.ThrowIfNull(theirs);
        return
        [
            .. merged.Findings.Where(IsError).GroupBy(finding => finding.Descriptor.Code, StringComparer.Ordinal)
                .Where(kind => kind.Count() > Math.Max(Count(ours, kind.Key), Count(theirs, kind.Key)))
                .SelectMany(kind => kind.Where(finding => !IsKnown(finding))),
        ];

        // The same kind of error may say other figures now: it is a new one only when there are more of its kind.
        static int Count(CompiledFile file, string code) => file.Findings.Count(finding => IsError(finding) && finding.Descriptor.Code == code);

        bool IsKnown(Finding finding) => ours.Findings.Concat(theirs.Findings)
            .Any(was => IsError(was) && was.Descriptor.Code == finding.Descriptor.Code && was.Message == finding.Message);
    }

    private static VersionMerge Of(MergeResult merged) => new(merged.Text, merged.Conflicts, merged.ByLines);

    private static bool IsError(Finding finding) => finding.Severity == Severity.Error;
}
