using System.Collections.Immutable;
using Recipe.Text.Findings;

namespace Recipe.Compiler;

/// <summary>Applies the fixes that may be applied unseen.</summary>
public static class SafeFixes
{
    /// <summary>
    /// The text of a file with the first safe fix of each finding made, in the order of the findings. A fix that would touch another file, or
    /// characters that an earlier one has touched, is left for the next time.
    /// </summary>
    /// <param name="file">The file as it was compiled.</param>
    /// <returns>The new text, and what was done to it in words; the old text and nothing when there is nothing to do.</returns>
    public static (string Text, ImmutableArray<AppliedFix> Applied) Apply(CompiledFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        var edits = new List<TextEdit>();
        var applied = ImmutableArray.CreateBuilder<AppliedFix>();
        foreach (var finding in file.Findings)
        {
            var fix = finding.Fixes.FirstOrDefault(f => f.Safety == FixSafety.Safe);
            if (fix is null || fix.Edits.Any(e => !ReferenceEquals(e.Where.Source, file.Source) || edits.Any(other => Touch(e, other))))
            {
                continue;
            }

            edits.AddRange(fix.Edits);
            applied.Add(new AppliedFix(finding, fix));
        }

        return (edits.Count == 0 ? file.Source.Text : TextEdit.Apply(file.Source, edits), applied.ToImmutable());
    }

    private static bool Touch(TextEdit one, TextEdit other) =>
        one.Where.Span.Start <= other.Where.Span.End && other.Where.Span.Start <= one.Where.Span.End;
}

/// <summary>A fix that was made.</summary>
/// <param name="Finding">What it settles.</param>
/// <param name="Fix">What was done.</param>
public sealed record AppliedFix(Finding Finding, Fix Fix);
