using Recipe.Text.Findings;

namespace Recipe.Semantics.Tests;

/// <summary>Applies the fixes of a finding and looks whether they settle it.</summary>
internal static class FixCheck
{
    public static void Settles(BoundFile bound, Finding finding, Func<string, BoundFile> bind)
    {
        foreach (var fix in finding.Fixes)
        {
            var text = Given.Apply(bound.Tree.Source, fix);
            var after = bind(text);
            Assert.True(after.Tree.Findings.Length <= bound.Tree.Findings.Length, $"'{fix.Title}' leaves a text that does not parse:\n{text}");

            // An edit in front of the place moves it.
            var start = finding.Where.Span.Start;
            var moved = start + fix.Edits.Where(e => e.Where.Span.Start < start).Sum(e => e.NewText.Length - e.Where.Span.Length);
            Assert.DoesNotContain(after.Findings, f => f.Descriptor == finding.Descriptor && f.Where.Span.Start == moved);
        }
    }
}
