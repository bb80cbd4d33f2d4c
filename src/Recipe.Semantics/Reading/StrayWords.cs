using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Semantics.Reading;

/// <summary>Words that a line does not take: a slip of the pen, else a word of the bench that is written otherwise here, else one that nobody knows.</summary>
internal static class StrayWords
{
    /// <summary>Reports a word in the middle of a line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="word">The word.</param>
    /// <param name="block">The block that the line stands in.</param>
    public static void Report(LineReader line, WordSyntax word, BlockSchema block)
    {
        var where = line.At(word);
        var words = line.ClauseWords().ToArray();
        line.Report(Spelling.Nearest(word.Text, words) is null && BenchWords.Find(word.Text, block, line.Word.Word) is { } meant
            ? UnknownWord.OnLine(where, meant, line.Head)
            : UnknownWord.OnLine(where, word.Text, line.Head, words, line.Example));
    }

    /// <summary>Reports a first word that is none of the forms of its line.</summary>
    /// <param name="line">The line.</param>
    /// <param name="word">The word.</param>
    /// <param name="block">The block that the line stands in.</param>
    public static void ReportForm(LineReader line, WordSyntax word, BlockSchema block) =>
        line.Report(BenchWords.Find(word.Text, block, line.Word.Word) is { } meant
            ? UnknownWord.OnLine(line.At(word), meant, line.Head)
            : NotUnderstood.Choice(line.At(word), word.Text, line.Head, [.. line.Word.Forms.Select(form => form.Word)]));
}
