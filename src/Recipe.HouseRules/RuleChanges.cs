using Recipe.Model;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.HouseRules;

/// <summary>The changes that a rule offers, in the text of the recipe.</summary>
internal static class RuleChanges
{
    /// <summary>The change; null where it has nothing to change: the fact is computed or stands in another file, or the block is not there.</summary>
    public static Fix? Fix(RuleFix fix, FactNode thing, FactNode part, SourceText text)
    {
        if (!fix.AddsLine)
        {
            var where = (thing.Find(fix.Word) ?? part.Find(fix.Word))?.Where;
            return where is { } place && ReferenceEquals(place.Source, text) && place.Text != fix.NewText
                ? new Fix($"Write {fix.NewText}", FixSafety.NeedsALook, new TextEdit(place, fix.NewText))
                : null;
        }

        return ReferenceEquals(part.Where.Source, text) && EndOfBlock(fix.Word, part.Where) is { } end
            ? new Fix($"Add {fix.NewText} to {fix.Word}", FixSafety.NeedsALook, new TextEdit(end.Where, end.LineEnd + end.Indent + fix.NewText))
            : null;
    }

    // Behind the last line of the part's block of that word.
    private static (SourceSpan Where, string LineEnd, string Indent)? EndOfBlock(string word, SourceSpan part)
    {
        var text = part.Source.Text;
        var lineEnd = text.Contains("\r\n", StringComparison.Ordinal) ? "\r\n" : "\n";
        var depth = 0;
        for (var line = part.Start.Line; line < part.Source.LineCount; line++)
        {
            var span = part.Source.LineSpan(line);
            var written = WithoutTextAndRemark(text.AsSpan(span.Start, span.Length));
            if (depth == 1 && written.TrimStart().StartsWith(word + " {", StringComparison.Ordinal) && !written.Contains('}', StringComparison.Ordinal))
            {
                return EndOf(part.Source, line, lineEnd);
            }

            depth += written.Count(c => c == '{') - written.Count(c => c == '}');
            if (depth <= 0 && line > part.Start.Line)
            {
                return null;
            }
        }

        return null;
    }

    private static (SourceSpan, string, string)? EndOf(SourceText source, int head, string lineEnd)
    {
        var indent = "    ";
        var depth = 0;
        for (var line = head; line < source.LineCount; line++)
        {
            var span = source.LineSpan(line);
            var raw = source.Text.Substring(span.Start, span.Length);
            var written = WithoutTextAndRemark(raw);
            depth += written.Count(c => c == '{') - written.Count(c => c == '}');
            if (line > head && depth == 1 && written.Trim().Length > 0)
            {
                indent = raw[..(raw.Length - raw.TrimStart().Length)];
            }

            if (depth == 0)
            {
                var before = source.LineSpan(line - 1);
                return (new SourceSpan(source, new TextSpan(before.Start + source.Text.Substring(before.Start, before.Length).TrimEnd('\r', '\n').Length, 0)), lineEnd, indent);
            }
        }

        return null;
    }

    private static string WithoutTextAndRemark(ReadOnlySpan<char> line)
    {
        var kept = new System.Text.StringBuilder(line.Length);
        var inText = false;
        for (var i = 0; i < line.Length; i++)
        {
            if (line[i] == '"' && (i == 0 || line[i - 1] != '\\'))
            {
                inText = !inText;
            }
            else if (!inText && line[i] == '#')
            {
                break;
            }
            else if (!inText)
            {
                kept.Append(line[i]);
            }
        }

        return kept.ToString();
    }
}
