using Recipe.Compiler;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Editing;

/// <summary>Takes responsibility for a finding, in writing.</summary>
internal static class Waivers
{
    /// <summary>A line that accepts a finding in the part it is about; null where no reason settles it, and outside parts.</summary>
    public static EditorAction? For(CompiledFile file, Finding finding)
    {
        // Mistakes in the text and its meaning are put right, not accepted.
        if (FindingFamilies.StageOf(finding.Descriptor.Code) is BenchStage.Text or BenchStage.Papers || !file.CanBeAccepted(finding.Descriptor))
        {
            return null;
        }

        var part = Places.All(file.Tree).FirstOrDefault(p => p.Parent is null && p.Entry.Head.Text is "part" or "variant" && p.Entry.Span.Touches(finding.Where.Span.Start))
            ?? Places.All(file.Tree).FirstOrDefault(p => p.Parent is null && p.Entry.Head.Text is "part");
        return part is not null && Edits.Last(new SourceSpan(file.Source, part.Entry.LineSpan), $"accept {finding.Descriptor.Name} because \"why it is right here\"") is { } edit
            ? new EditorAction($"Accept {finding.Descriptor.Name} with a reason", ActionKind.QuickFix, [edit]) { Settles = finding }
            : null;
    }
}
