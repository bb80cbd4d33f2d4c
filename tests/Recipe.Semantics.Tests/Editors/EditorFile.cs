using System.Text;
using System.Text.RegularExpressions;
using Recipe.TestKit;

namespace Recipe.Semantics.Tests.Editors;

/// <summary>
/// A file for editors with lists of words in it. In JSON a list stands behind <c>(?#name)</c> in a regular expression; elsewhere
/// between a line that ends with <c>words: name</c> and the next line that holds <c>end of words</c>.
/// </summary>
/// <param name="RelativePath">Its path from the root.</param>
/// <param name="Item">How one word is written there, <c>*</c> for the word.</param>
/// <param name="LineStart">What each line of a list begins with.</param>
/// <param name="LineEnd">What each line of a list ends with.</param>
internal sealed partial record EditorFile(string RelativePath, string Item = "\"*\"", string LineStart = "  ", string LineEnd = "")
{
    private const int Width = 110;

    /// <summary>Every file with lists.</summary>
    public static IReadOnlyList<EditorFile> All { get; } =
    [
        new("grammar/textmate/recipe.tmLanguage.json"),
        new("grammar/tree-sitter-recipe/grammar.js", "'*',"),
        new("grammar/tree-sitter-recipe/queries/highlights.scm"),
        new("editors/vim/syntax/recipe.vim", "*", "let s:words += split('", "')"),
        new("editors/emacs/recipe-mode.el", LineStart: "    "),
        new("editors/kate/recipe.xml", "<item>*</item>", "      "),
    ];

    /// <summary>The text as it stands.</summary>
    public string Text { get; } = Repository.Read(RelativePath).ReplaceLineEndings("\n");

    private bool IsJson => RelativePath.EndsWith(".json", StringComparison.Ordinal);

    /// <summary>The names of the lists that have a place in it.</summary>
    public IReadOnlySet<string> Names() =>
        (IsJson ? JsonPlace() : Place()).Matches(Text).Select(match => match.Groups["name"].Value).ToHashSet();

    /// <summary>The text with its lists written anew.</summary>
    public string Fresh() => IsJson
        ? JsonPlace().Replace(Text, match => $"(?#{match.Groups["name"].Value}){string.Join('|', EditorWords.Lists[match.Groups["name"].Value])}")
        : Place().Replace(Text, match => match.Groups["head"].Value + Lines(EditorWords.Lists[match.Groups["name"].Value]) + match.Groups["foot"].Value);

    private string Lines(IEnumerable<string> words)
    {
        var lines = new StringBuilder(LineStart);
        var length = LineStart.Length;
        foreach (var item in words.Select(word => Item.Replace("*", word, StringComparison.Ordinal)))
        {
            if (length + item.Length > Width)
            {
                lines.Append(LineEnd).Append('\n').Append(LineStart);
                length = LineStart.Length;
            }
            else if (length > LineStart.Length)
            {
                lines.Append(' ');
                length++;
            }

            lines.Append(item);
            length += item.Length;
        }

        return lines.Append(LineEnd).Append('\n').ToString();
    }

    [GeneratedRegex(@"\(\?#(?<name>[a-z]+)\)[^)]*")]
    private static partial Regex JsonPlace();

    [GeneratedRegex(@"(?<head>[^\n]*\bwords: (?<name>[a-z]+)[^\n]*\n)(?<list>.*?)(?<foot>[^\n]*end of words)", RegexOptions.Singleline)]
    private static partial Regex Place();
}
