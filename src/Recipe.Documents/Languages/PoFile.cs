using System.Collections.Immutable;
using System.Text;

namespace Recipe.Documents.Languages;

/// <summary>Reads translations from the PO format of GNU gettext: pairs of <c>msgid</c> and <c>msgstr</c>, each a quoted text or several in a row.</summary>
internal static class PoFile
{
    /// <summary>The translations by the sentences they translate. An entry that is empty, or marked fuzzy, is none.</summary>
    /// <exception cref="FormatException">A line is not of that format, or a sentence is translated twice; the message names the line.</exception>
    public static ImmutableDictionary<string, string> Read(string text)
    {
        var pairs = ImmutableDictionary.CreateBuilder<string, string>(StringComparer.Ordinal);
        StringBuilder? id = null;
        StringBuilder? translation = null;
        var fuzzy = false;
        var number = 0;
        foreach (var raw in text.Split('\n').Append(""))
        {
            number++;
            var line = raw.Trim();
            if (line.Length == 0 || (line.StartsWith("msgid ", StringComparison.Ordinal) && translation is not null))
            {
                Close();
            }

            if (line.StartsWith("#,", StringComparison.Ordinal))
            {
                fuzzy |= line.Contains("fuzzy", StringComparison.Ordinal);
            }
            else if (line.StartsWith("msgid ", StringComparison.Ordinal))
            {
                id = new StringBuilder(Unquote(line[6..]));
            }
            else if (line.StartsWith("msgstr ", StringComparison.Ordinal) && id is not null)
            {
                translation = new StringBuilder(Unquote(line[7..]));
            }
            else if (line.StartsWith('"') && (translation ?? id) is { } open)
            {
                open.Append(Unquote(line));
            }
            else if (line.Length > 0 && line[0] != '#')
            {
                throw Wrong("is no line of a PO file");
            }
        }

        return pairs.ToImmutable();

        void Close()
        {
            if (id is { Length: > 0 } && translation is { Length: > 0 } && !fuzzy && !pairs.TryAdd(id.ToString(), translation.ToString()))
            {
                throw Wrong($"ends a second translation of '{id}'");
            }

            (id, translation, fuzzy) = (null, null, false);
        }

        string Unquote(string quoted)
        {
            quoted = quoted.Trim();
            if (quoted.Length < 2 || quoted[0] != '"' || quoted[^1] != '"')
            {
                throw Wrong("has no text in quotes");
            }

            return quoted[1..^1].Replace("\\\\", "\0", StringComparison.Ordinal).Replace("\\\"", "\"", StringComparison.Ordinal)
                .Replace("\\n", "\n", StringComparison.Ordinal).Replace('\0', '\\');
        }

        FormatException Wrong(string what) => new($"Line {number} {what}.");
    }
}
