using System.Collections.Immutable;
using Recipe.Compiler;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Editing;

/// <summary>The changes that an editor offers at a place.</summary>
public static class Actions
{
    /// <summary>
    /// Fixes of the findings that a span touches, best first; a waiver for those that can be accepted; all safe fixes of the file; and ways to
    /// say the same otherwise.
    /// </summary>
    public static ImmutableArray<EditorAction> At(CompiledFile file, TextSpan range)
    {
        ArgumentNullException.ThrowIfNull(file);
        var actions = ImmutableArray.CreateBuilder<EditorAction>();
        foreach (var finding in file.Findings.Where(f => ReferenceEquals(f.Where.Source, file.Source) && f.Where.Span.Start <= range.End && range.Start <= f.Where.Span.End))
        {
            for (var i = 0; i < finding.Fixes.Length; i++)
            {
                var fix = finding.Fixes[i];
                actions.Add(new EditorAction(fix.Title, ActionKind.QuickFix, fix.Edits) { Settles = finding, IsPreferred = i == 0 && fix.Safety == FixSafety.Safe });
            }

            if (Waivers.For(file, finding) is { } waiver)
            {
                actions.Add(waiver);
            }
        }

        var (text, applied) = SafeFixes.Apply(file);
        if (!applied.IsEmpty && text != file.Source.Text)
        {
            actions.Add(new EditorAction(
                applied.Length == 1 ? "Make the one safe fix of the file" : $"Make all {applied.Length} safe fixes of the file",
                ActionKind.FixAll,
                [.. applied.SelectMany(a => a.Fix.Edits)]));
        }

        actions.AddRange(Refactorings.At(file, range));
        return actions.ToImmutable();
    }
}
