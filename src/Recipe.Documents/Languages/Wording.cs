using System.Collections.Immutable;
using Recipe.Documents.Layout;

namespace Recipe.Documents.Languages;

/// <summary>
/// The words of papers in one language. The English sentence, with {0} where a value stands, is the key, as in GNU gettext: code
/// reads as the paper does, and a translation is one file of pairs. A sentence that a translation lacks stays English.
/// </summary>
/// <param name="language">BCP 47 tag of the language.</param>
/// <param name="sentences">The translations by their keys.</param>
/// <param name="asked">Told every key that is asked for, and whether there is a translation; or null.</param>
internal sealed class Wording(string language, ImmutableDictionary<string, string> sentences, Action<string, bool>? asked = null)
{
    /// <summary>The language the keys are written in.</summary>
    public static Wording English { get; } = new("en", ImmutableDictionary<string, string>.Empty);

    /// <summary>BCP 47 tag of the language.</summary>
    public string Language { get; } = language;

    /// <summary>A sentence without values.</summary>
    public string Say(string sentence) => Find(sentence);

    /// <summary>A sentence with values.</summary>
    public string Say(PhraseHandler sentence) => SayPhrase(sentence).Plain;

    /// <summary>A sentence in which some of the values stand out.</summary>
    public Phrase SayPhrase(PhraseHandler sentence)
    {
        var (key, values) = sentence.Take();
        var runs = ImmutableArray.CreateBuilder<Run>();
        foreach (var run in Pieces(Find(key)).SelectMany(piece => piece.Hole is { } hole && hole < values.Length ? values[hole].Runs : [new Run(piece.Text, RunStyle.Plain)]))
        {
            if (runs.Count > 0 && runs[^1].Style == run.Style)
            {
                runs[^1] = run with { Text = runs[^1].Text + run.Text };
            }
            else
            {
                runs.Add(run);
            }
        }

        return new(runs.ToImmutable());
    }

    private string Find(string key)
    {
        var isThere = sentences.TryGetValue(key, out var translated);
        asked?.Invoke(key, isThere);
        return isThere ? translated! : key;
    }

    // string.Format would read the braces of a value that came from a recipe; here only {digit} of the sentence itself counts.
    private static IEnumerable<(string Text, int? Hole)> Pieces(string sentence)
    {
        var from = 0;
        for (var i = 0; i + 2 < sentence.Length; i++)
        {
            if (sentence[i] != '{' || !char.IsAsciiDigit(sentence[i + 1]) || sentence[i + 2] != '}')
            {
                continue;
            }

            if (i > from)
            {
                yield return (sentence[from..i], null);
            }

            yield return (sentence[i..(i + 3)], sentence[i + 1] - '0');
            from = i + 3;
            i += 2;
        }

        if (from < sentence.Length)
        {
            yield return (sentence[from..], null);
        }
    }
}
