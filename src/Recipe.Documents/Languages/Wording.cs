using System.Collections.Immutable;

namespace Recipe.Documents.Languages;

/// <summary>
/// The words of papers in one language. The English sentence, with {0} where a value stands, is the key, as in GNU gettext: code
/// reads as the paper does, and a translation is one file of pairs. A sentence that a translation lacks stays English.
/// </summary>
internal sealed class Wording(string language, ImmutableDictionary<string, string> sentences)
{
    /// <summary>The language the keys are written in.</summary>
    public static Wording English { get; } = new("en", ImmutableDictionary<string, string>.Empty);

    /// <summary>BCP 47 tag of the language.</summary>
    public string Language { get; } = language;

    /// <summary>A sentence without values.</summary>
    public string Say(string sentence) => sentences.GetValueOrDefault(sentence, sentence);

    /// <summary>A sentence with values.</summary>
    public string Say(SentenceHandler sentence)
    {
        var (key, values) = sentence.Take();
        return Fill(sentences.GetValueOrDefault(key, key), values);
    }

    // string.Format would read the braces of a value that came from a recipe; here only {digit} of the sentence itself counts.
    private static string Fill(string sentence, IReadOnlyList<string> values)
    {
        var text = new System.Text.StringBuilder(sentence.Length + 16);
        for (var i = 0; i < sentence.Length; i++)
        {
            if (sentence[i] == '{' && i + 2 < sentence.Length && char.IsAsciiDigit(sentence[i + 1]) && sentence[i + 2] == '}' && sentence[i + 1] - '0' < values.Count)
            {
                text.Append(values[sentence[i + 1] - '0']);
                i += 2;
            }
            else
            {
                text.Append(sentence[i]);
            }
        }

        return text.ToString();
    }
}
