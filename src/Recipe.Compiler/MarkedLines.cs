using Recipe.Text;

namespace Recipe.Compiler;

/// <summary>Two texts as one: lines that stay (a blank), go (<c>-</c>) and come (<c>+</c>).</summary>
internal static class MarkedLines
{
    /// <summary>The lines with their marks.</summary>
    /// <param name="before">The lines of the earlier text.</param>
    /// <param name="after">Those of the later one.</param>
    public static List<(char Mark, string Text)> Of(string[] before, string[] after)
    {
        var lines = new List<(char, string)>();
        var (i, j) = (0, 0);
        foreach (var (left, right) in Alignment.Of(before, after).Append((before.Length, after.Length)))
        {
            lines.AddRange(before[i..left].Select(line => ('-', line)));
            lines.AddRange(after[j..right].Select(line => ('+', line)));
            if (left < before.Length)
            {
                lines.Add((' ', before[left]));
            }

            (i, j) = (left + 1, right + 1);
        }

        return lines;
    }
}
