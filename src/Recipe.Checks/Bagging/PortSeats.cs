using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Checks;

/// <summary>Moves a port to another seat.</summary>
internal static class PortSeats
{
    /// <summary>Writes another seat behind `sits` in the line of a port; null when the words do not stand there.</summary>
    public static Fix? Move(SourceSpan line, string from, string to)
    {
        var words = "sits " + from;
        var at = line.Text.IndexOf(words, StringComparison.Ordinal);
        return at < 0 ? null : new Fix(
            to == "breather" ? "Put it on a strip of breather" : "Put it on the flange",
            FixSafety.NeedsALook,
            Edits.Replace(new SourceSpan(line.Source, new TextSpan(line.Span.Start + at, words.Length)), "sits " + to));
    }
}
