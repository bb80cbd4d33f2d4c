using Recipe.Semantics.Findings;
using Recipe.Semantics.Schema;
using Recipe.Syntax;
using Recipe.Text;

namespace Recipe.Semantics.Reading;

/// <summary>Names that somebody wrote as people say them, with blanks in them: <c>part winch pocket</c>. One finding answers all of it.</summary>
internal static class NamesApart
{
    /// <summary>No name is put together of more pieces behind its first.</summary>
    private const int MostPieces = 8;

    /// <summary>Of more names than these none is offered.</summary>
    private const int MostMeant = 3;

    /// <summary>A new name that goes on behind a blank.</summary>
    /// <param name="line">The line; ahead is the word that has no place.</param>
    /// <param name="second">That word.</param>
    /// <param name="pattern">What the line takes.</param>
    /// <param name="reading">What was read of it.</param>
    /// <returns>Whether it was one; then it was reported and stepped over.</returns>
    public static bool ReadNew(LineReader line, WordSyntax second, LinePattern pattern, LineReading reading)
    {
        if (line.Ahead(-1) is not WordSyntax first
            || reading.Arguments is not [.., { } last] || last.Where.Span != first.Span
            || !pattern.Arguments.Any(a => a.Name == last.Name && a.Kind is NewNameKind)
            || Spelling.Nearest(second.Text, line.ClauseWords()) is not null)
        {
            return false;
        }

        var words = new List<string> { first.Text };
        var span = first.Span;
        while (!line.AtEnd && !line.AtClause() && line.Peek is WordSyntax word)
        {
            words.Add(word.Text);
            span = span.Union(line.Take().Span);
        }

        line.Report(NotUnderstood.NameOfSeveralWords(line.Context.At(span), line.Head, string.Join('-', words)));
        return true;
    }

    /// <summary>A known name whose words were written apart, <c>slow laminating epoxy</c>.</summary>
    /// <param name="line">The line, behind the first word.</param>
    /// <param name="first">That word.</param>
    /// <param name="kind">What it should name.</param>
    /// <returns>Whether it was one; then it was reported and stepped over.</returns>
    public static bool ReadKnown(LineReader line, WordSyntax first, NameRefKind kind)
    {
        if (WordReader.IsKnown(line.Context, first.Text, kind))
        {
            return false;
        }

        var joined = first.Text;
        for (var i = 0; i < MostPieces && line.Ahead(i) is { } next and (WordSyntax or QuantitySyntax { Unit: null }); i++)
        {
            joined += "-" + line.Slice(next.Span);
            if (!WordReader.IsKnown(line.Context, joined, kind))
            {
                continue;
            }

            for (var taken = 0; taken <= i; taken++)
            {
                line.Take();
            }

            line.Report(NotUnderstood.NameOfSeveralWords(line.Context.At(first.Span.Union(line.EndOfRead)), line.Head, joined));
            return true;
        }

        return ReadPartly(line, first, kind);
    }

    /// <summary>A name of which some words were written, apart: <c>slow epoxy</c>. A mix behind the name of a resin is answered with it.</summary>
    private static bool ReadPartly(LineReader line, WordSyntax first, NameRefKind kind)
    {
        var words = new List<string> { first.Text };
        while (words.Count < MostPieces && line.Ahead(words.Count - 1) is WordSyntax next && !line.IsClauseWord(next.Text))
        {
            words.Add(next.Text);
        }

        var mix = kind.Keywords.Contains("resin") ? line.Ahead(words.Count - 1) as RatioSyntax : null;
        if (words.Count == 1 && mix is null)
        {
            return false;
        }

        var meant = WordReader.Candidates(line.Context.Scope, kind).Distinct(StringComparer.Ordinal).Where(name => HasAll(name, words)).Order(StringComparer.Ordinal).ToArray();
        if (meant.Length is 0 or > MostMeant)
        {
            return false;
        }

        for (var taken = 1; taken < words.Count; taken++)
        {
            line.Take();
        }

        var said = line.Context.At(first.Span.Union(line.EndOfRead));
        if (mix is not null)
        {
            said = line.Context.At(first.Span.Union(line.Take().Span));
        }

        line.Report(UnknownName.InWords(said, line.Head, meant, mix is null ? null : line.Slice(mix.Span)));
        return true;
    }

    /// <summary>Whether a name has all of some words among those that its hyphens join.</summary>
    public static bool HasAll(string name, IEnumerable<string> words)
    {
        var pieces = name.Split('-');
        return words.All(word => pieces.Contains(word, StringComparer.OrdinalIgnoreCase));
    }
}
