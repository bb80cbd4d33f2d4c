using System.Text;
using Recipe.Semantics.Schema;

namespace Recipe.Compiler;

/// <summary>What the language has of a word: the lines that begin with it, the lines on which it chooses, and what is written for it when only the bench says it.</summary>
internal static class ExplainWords
{
    // Of a word that many words of the bench begin with, no more than somebody reads.
    private const int MostAnswers = 4;

    /// <summary>Adds what there is of a word, a paragraph for each.</summary>
    /// <param name="text">Where it is added.</param>
    /// <param name="word">The word as somebody typed it; a blank may stand for a hyphen.</param>
    public static void Add(StringBuilder text, string word)
    {
        AddLines(text, word);
        AddChoices(text, word);
        AddBench(text, word);
    }

    /// <summary>Whether each of some words begins a word of a text: "heat lamp" in "heat-lamp box".</summary>
    /// <param name="text">The text.</param>
    /// <param name="words">The words, with blanks or hyphens between them; letter case does not count.</param>
    public static bool Begin(string text, string words)
    {
        var all = words.Split([' ', '-'], StringSplitOptions.RemoveEmptyEntries);
        return all.Length > 0 && all.All(word => Begins(text, word));
    }

    private static bool Begins(string text, string word)
    {
        for (var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase); at >= 0; at = text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase))
        {
            if (at == 0 || !char.IsLetterOrDigit(text[at - 1]))
            {
                return true;
            }
        }

        return false;
    }

    private static void AddLines(StringBuilder text, string word)
    {
        foreach (var block in RecipeSchema.Blocks)
        {
            if ((block.Find(word) ?? block.FindRegional(word)) is not { } known)
            {
                continue;
            }

            Paragraph(text).Append(known.Word).Append(block == RecipeSchema.File ? ", at the top of a file: " : $", in a block of {block.Name}: ").Append(known.Doc).Append('\n');
            text.Append("    ").Append(known.Example).Append('\n');
            if (known.Default is { } otherwise)
            {
                text.Append("    When it is left out: ").Append(otherwise).Append(".\n");
            }

            if (known.Block is { Words.IsEmpty: false } inner)
            {
                text.Append("    In its block: ").AppendJoin(", ", inner.Words.Select(line => line.Word)).Append(".\n");
            }
        }
    }

    /// <summary>Forms of a line (<c>cylinder</c>) and words of which one is chosen (<c>bagged</c>), each once, however many blocks have the line.</summary>
    private static void AddChoices(StringBuilder text, string word)
    {
        // Every second line takes one of these two.
        if (word is "yes" or "no")
        {
            return;
        }

        foreach (var (line, doc, example) in RecipeSchema.Blocks.SelectMany(block => block.Words).SelectMany(line => Choices(line, word)).Distinct())
        {
            Paragraph(text).Append(word).Append(", on a line of ").Append(line).Append(": ").Append(doc).Append(".\n");
            text.Append("    ").Append(example).Append('\n');
        }
    }

    private static IEnumerable<(string Line, string Doc, string Example)> Choices(WordSchema line, string word) =>
        line.Forms.Where(form => form.Word == word).Select(form => (line.Word, form.Doc, form.Example))
            .Concat(line.Line.Arguments.Select(argument => argument.Kind).Concat(line.Line.Clauses.Select(clause => clause.Kind))
                .OfType<ChoiceKind>()
                .Select(kind => kind.Find(word))
                .OfType<Choice>()
                .Select(choice => (line.Word, choice.Doc, line.Example)));

    private static void AddBench(StringBuilder text, string word)
    {
        var joined = word.Replace(' ', '-');
        var said = BenchWords.All.Where(known => string.Equals(known.Said, joined, StringComparison.OrdinalIgnoreCase)).ToList();
        if (said.Count == 0)
        {
            said.AddRange(BenchWords.All.Where(known => known.Said.StartsWith(joined, StringComparison.OrdinalIgnoreCase)));
        }

        foreach (var known in said.DistinctBy(known => known.Answer).Take(MostAnswers))
        {
            Paragraph(text).Append(known.Said.Replace('-', ' ')).Append(", as the bench says it");
            text.Append(known.Blocks.IsEmpty ? "" : known.Line is { } line ? $", on a line of {line}" : $", in a block of {known.Blocks[0]}");
            text.Append(": ").Append(known.Answer).Append(".\n");
        }
    }

    private static StringBuilder Paragraph(StringBuilder text) => text.Append(text.Length == 0 ? "" : "\n");
}
