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
        if (part?.Entry.Block is not { CloseBrace: { } close })
        {
            return null;
        }

        var source = file.Source;
        var newLine = source.Text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var lineStart = source.LineSpan(source.PositionOf(close.Start).Line).Start;
        var alone = source.Text.AsSpan(lineStart, close.Start - lineStart).Trim(" \t").IsEmpty;
        var text = $"accept {finding.Descriptor.Name} because \"why it is right here\"";
        var edit = alone
            ? new TextEdit(new SourceSpan(source, new TextSpan(lineStart, 0)), $"  {text}{newLine}")
            : new TextEdit(new SourceSpan(source, new TextSpan(close.Start, 0)), $"{newLine}  {text}{newLine}");
        return new EditorAction($"Accept {finding.Descriptor.Name} with a reason", ActionKind.QuickFix, [edit]) { Settles = finding };
    }
}
