using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Fuzzing.Targets;

/// <summary>What is true of every finding.</summary>
internal static class FindingRules
{
    /// <summary>Holds them: it says something, it and its labels and edits lie inside their texts, its edits do not overlap.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="source">The text that was looked at.</param>
    public static void Hold(Finding finding, SourceText source)
    {
        var code = finding.Descriptor.Code;
        BrokenPropertyException.ThrowUnless(finding.Message.Trim().Length > 0, $"{code} says nothing.");
        BrokenPropertyException.ThrowUnless(!finding.Message.Contains("NaN", StringComparison.Ordinal) && !finding.Message.Contains('∞', StringComparison.Ordinal), $"{code} says what is no number: {finding.Message}");
        Inside(finding.Where, code);
        foreach (var label in finding.Labels)
        {
            Inside(label.Where, code);
        }

        foreach (var fix in finding.Fixes)
        {
            foreach (var edit in fix.Edits)
            {
                Inside(edit.Where, code);
            }

            TextEdit.Apply(source, fix.Edits);
        }
    }

    private static void Inside(SourceSpan where, string code) =>
        BrokenPropertyException.ThrowUnless(
            where.Span.Start >= 0 && where.Span.Length >= 0 && where.Span.End <= where.Source.Length,
            $"{code} points outside its text: {where.Span.Start}-{where.Span.End} of {where.Source.Length}.");
}
