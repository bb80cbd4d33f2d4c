using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Recipe.TestKit;

namespace Recipe.Documents.Tests.Files;

/// <summary>The sentences that the code of the papers asks a wording for, found in its text.</summary>
internal static partial class Sentences
{
    /// <summary>All of a folder of <c>src/Recipe.Documents</c>, or of the whole project.</summary>
    public static IReadOnlySet<string> In(string folder = "") => Directory
        .EnumerateFiles(Repository.PathOf("src/Recipe.Documents/" + folder), "*.cs", SearchOption.AllDirectories)
        .Where(path => !path.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal))
        .SelectMany(path => Of(File.ReadAllText(path)))
        .ToHashSet(StringComparer.Ordinal);

    /// <summary>The keys of every <c>Say("...")</c> and <c>Say($"...")</c>; the values of the latter as {0}, {1} and so on.</summary>
    public static IEnumerable<string> Of(string code)
    {
        foreach (Match call in Call().Matches(code))
        {
            var key = new StringBuilder();
            Literal(code, call.Index + call.Length, call.Groups[1].Length > 0, key);
            yield return key.ToString();
        }
    }

    // From the first character of a literal to behind its last quote.
    private static int Literal(string code, int at, bool hasValues, StringBuilder key)
    {
        var values = 0;
        while (code[at] != '"')
        {
            if (code[at] == '\\' && code[at + 1] == 'u')
            {
                key.Append((char)int.Parse(code.AsSpan(at + 2, 4), NumberStyles.HexNumber, CultureInfo.InvariantCulture));
                at += 6;
            }
            else if (code[at] == '\\')
            {
                key.Append(code[at + 1]);
                at += 2;
            }
            else if (hasValues && code[at] == '{')
            {
                at = Value(code, at + 1);
                key.Append(CultureInfo.InvariantCulture, $"{{{values++}}}");
            }
            else
            {
                key.Append(code[at++]);
            }
        }

        return at + 1;
    }

    // From the first character of a value to behind its closing brace; literals inside it may hold braces and quotes of their own.
    private static int Value(string code, int at)
    {
        for (var depth = 1; depth > 0;)
        {
            if (code[at] == '"')
            {
                at = Literal(code, at + 1, code[at - 1] == '$', new StringBuilder());
                continue;
            }

            depth += code[at] switch
            {
                '{' => 1,
                '}' => -1,
                _ => 0,
            };
            at++;
        }

        return at;
    }

    [GeneratedRegex("\\bSay(?:Phrase)?\\((\\$?)\"")]
    private static partial Regex Call();
}
