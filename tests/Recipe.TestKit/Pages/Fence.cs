namespace Recipe.TestKit.Pages;

/// <summary>A fenced block of a Markdown page.</summary>
/// <param name="Page">The page, by its path from the root.</param>
/// <param name="Line">The line of its first row of text, counted from 1.</param>
/// <param name="Language">The first word behind the opening fence; empty where there is none.</param>
/// <param name="Words">The other words there.</param>
/// <param name="Text">What stands in it, each line ended by LF.</param>
public sealed record Fence(string Page, int Line, string Language, IReadOnlyList<string> Words, string Text)
{
    /// <summary>Where it stands, for people.</summary>
    public override string ToString() => $"{Page}:{Line}";

    /// <summary>The value of a word that takes one (<c>exit 1</c>), or nothing.</summary>
    public string? After(string word) =>
        Words.SkipWhile(w => w != word).Skip(1).FirstOrDefault();

    /// <summary>All fenced blocks of a page, in order.</summary>
    public static IReadOnlyList<Fence> In(string page)
    {
        var fences = new List<Fence>();
        var lines = Repository.Read(page).ReplaceLineEndings("\n").Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            if (!lines[i].StartsWith("```", StringComparison.Ordinal))
            {
                continue;
            }

            var words = lines[i][3..].Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var end = Array.IndexOf(lines, "```", i + 1);
            if (end < 0)
            {
                throw new InvalidOperationException($"{page}:{i + 1}: the block is never closed.");
            }

            fences.Add(new Fence(page, i + 2, words.FirstOrDefault() ?? "", [.. words.Skip(1)], string.Concat(lines[(i + 1)..end].Select(line => line + "\n"))));
            i = end;
        }

        return fences;
    }
}
