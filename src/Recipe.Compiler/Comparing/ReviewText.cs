using System.Text;
using Recipe.Documents;
using Recipe.Syntax;
using Recipe.Text.Findings;

namespace Recipe.Compiler.Comparing;

/// <summary>
/// A recipe as a text that versions of it are compared by: in the one layout, and behind it the figures that are computed from it, each on a
/// line of its own. So a difference shows grams and minutes beside what was written.
/// </summary>
public static class ReviewText
{
    /// <summary>The text of a file; of one that cannot be read it is the text as it stands.</summary>
    public static string Of(CompiledFile file)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (file.Tree.Findings.Any(finding => finding.Severity == Severity.Error))
        {
            return file.Source.Text;
        }

        var text = new StringBuilder(Formatter.Format(file.Tree).ReplaceLineEndings("\n"));
        foreach (var part in file.Parts)
        {
            var lines = FigureLines.Of(part.Figures).ToList();
            text.Append(lines.Count > 0 ? "\n" : "");
            lines.ForEach(line => text.Append("# ").Append(part.Part.Name).Append(": ").Append(line).Append('\n'));
        }

        return text.ToString();
    }
}
