using System.Text;

namespace Recipe.Compiler;

/// <summary>
/// The two examples of a finding as one text: the lines that earn it with <c>-</c> before them, those that mend it with <c>+</c>. Of what is the same only
/// the lines around are printed, and the heads of the blocks in which they stand.
/// </summary>
internal static class ExamplePair
{
    private const int Around = 2;
    private const string Margin = "    ";

    /// <summary>The marked lines, each ended by LF.</summary>
    /// <param name="bad">The example that earns the finding.</param>
    /// <param name="good">The one that does not.</param>
    public static string Marked(string bad, string good)
    {
        var lines = MarkedLines.Of(Split(bad), Split(good));
        var shown = Shown(lines);
        var page = new StringBuilder();
        var gap = false;
        for (var i = 0; i < lines.Count; i++)
        {
            if (shown[i])
            {
                page.Append(Margin).Append($"{lines[i].Mark} {lines[i].Text}".TrimEnd()).Append('\n');
            }
            else if (!gap)
            {
                page.Append(Margin).Append("  ").Append(' ', IndentOf(lines[i].Text)).Append("...\n");
            }

            gap = !shown[i];
        }

        return page.ToString();
    }

    private static bool[] Shown(List<(char Mark, string Text)> lines)
    {
        var shown = new bool[lines.Count];
        for (var i = 0; i < lines.Count; i++)
        {
            if (lines[i].Mark == ' ')
            {
                continue;
            }

            for (var near = Math.Max(0, i - Around); near <= Math.Min(lines.Count - 1, i + Around); near++)
            {
                shown[near] |= lines[near].Text.Length > 0;
            }

            ShowHeads(lines, i, shown);
        }

        // One line that is left out is no shorter than the points that stand for it.
        for (var i = 0; i < lines.Count; i++)
        {
            shown[i] |= (i == 0 || shown[i - 1]) && (i == lines.Count - 1 || shown[i + 1]);
        }

        return shown;
    }

    private static void ShowHeads(List<(char Mark, string Text)> lines, int at, bool[] shown)
    {
        var indent = IndentOf(lines[at].Text);
        for (var i = at - 1; i >= 0 && indent > 0; i--)
        {
            if (lines[i].Text.Length > 0 && IndentOf(lines[i].Text) < indent)
            {
                indent = IndentOf(lines[i].Text);
                shown[i] = true;
            }
        }
    }

    private static int IndentOf(string text) => text.Length - text.TrimStart().Length;

    private static string[] Split(string text) => text.ReplaceLineEndings("\n").Trim('\n').Split('\n');
}
