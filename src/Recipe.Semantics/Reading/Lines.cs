using Recipe.Model;
using Recipe.Semantics.Binding;
using Recipe.Semantics.Schema;

namespace Recipe.Semantics.Reading;

/// <summary>The lines of a block, looked up by word.</summary>
internal sealed class Lines(List<Line> all)
{
    public IReadOnlyList<Line> All => all;

    public Line? One(string word)
    {
        foreach (var line in all)
        {
            if (line.Word.Word == word && !line.IsNameLine)
            {
                return line;
            }
        }

        return null;
    }

    public IEnumerable<Line> Many(string word) => all.Where(l => l.Word.Word == word && !l.IsNameLine);

    public Figure<T>? Figure<T>(string word, Func<double, T> make) => One(word)?.Figure(Define.Value, make);

    public Figure<T>? Payload<T>(string word)
        where T : struct => One(word)?.Payload<T>(Define.Value);

    public Figure<T>? Choice<T>(string word, Func<string, T> make) => One(word)?.Choice(Define.Value, make);

    public string? Text(string word) => One(word)?.Text(Define.Value);

    public bool? YesNo(string word) => Text(word) is { } answer ? answer == "yes" : null;

    public Figure<bool>? YesNoFigure(string word) => Choice(word, answer => answer == "yes");

    public Figure<int>? Count(string word) => Figure(word, Si.Count);

    public Figure<double>? Plain(string word) => Figure(word, Si.Plain);

    /// <summary>Several texts of one word, joined.</summary>
    public string? Joined(string word)
    {
        var texts = Many(word).Select(l => l.Text(Define.Value)).OfType<string>().ToArray();
        return texts.Length == 0 ? null : string.Join("; ", texts);
    }

    /// <summary>
    /// A copy's or variant's lines over those they come from: a line takes the place of all lines of its key. Lines of the words in
    /// <paramref name="notCopied"/> stay behind.
    /// </summary>
    public static Lines Over(Lines below, Lines own, params ReadOnlySpan<string> notCopied)
    {
        var keys = own.All.Select(l => l.Key).ToHashSet(StringComparer.Ordinal);
        var merged = new List<Line>(below.All.Count + own.All.Count);
        foreach (var line in below.All)
        {
            if (!keys.Contains(line.Key) && line.Word.Word != "source" && !notCopied.Contains(line.Word.Word))
            {
                merged.Add(line);
            }
        }

        merged.AddRange(own.All);
        return new Lines(merged);
    }
}
