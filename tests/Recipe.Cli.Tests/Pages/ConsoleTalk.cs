namespace Recipe.Cli.Tests.Pages;

/// <summary>What a page shows of a console.</summary>
internal static class ConsoleTalk
{
    private const string LeftOut = "...";

    /// <summary>Whether lines are left out.</summary>
    public static bool LeavesOut(string shown) => Lines(shown).Contains(LeftOut);

    /// <summary>Whether what is shown is what was said, where a line of three points stands for any lines, or none. Blanks at the ends of lines do not count.</summary>
    public static bool Fits(string shown, string said) => Fits(Lines(shown), Lines(said));

    /// <summary>The words of a command; quotes keep blanks together.</summary>
    public static string[] Words(string command)
    {
        var words = new List<string>();
        var word = "";
        var inQuotes = false;
        var hasWord = false;
        foreach (var c in command.Split("   #")[0] + " ")
        {
            if (c == '"')
            {
                inQuotes = !inQuotes;
                hasWord = true;
            }
            else if (c == ' ' && !inQuotes)
            {
                if (hasWord)
                {
                    words.Add(word);
                }

                word = "";
                hasWord = false;
            }
            else
            {
                word += c;
                hasWord = true;
            }
        }

        return [.. words];
    }

    private static bool Fits(ReadOnlySpan<string> shown, ReadOnlySpan<string> said)
    {
        if (shown.IsEmpty)
        {
            return said.IsEmpty;
        }

        if (shown[0] != LeftOut)
        {
            return !said.IsEmpty && shown[0] == said[0] && Fits(shown[1..], said[1..]);
        }

        for (var gap = 0; gap <= said.Length; gap++)
        {
            if (Fits(shown[1..], said[gap..]))
            {
                return true;
            }
        }

        return false;
    }

    private static string[] Lines(string text) => [.. text.TrimEnd('\n').Split('\n').Select(line => line.TrimEnd())];
}
