using System.Collections.Immutable;
using System.Text;
using Recipe.Compiler;
using Recipe.Semantics.Schema;

namespace Recipe.Editing;

/// <summary>What may stand on the line that is being written.</summary>
public static class EntryHelp
{
    /// <summary>The pattern of the line at a cursor and the part the cursor is in; null at the head of a line and where nothing follows.</summary>
    public static LineHelp? At(CompiledFile file, int offset)
    {
        ArgumentNullException.ThrowIfNull(file);
        if (LineContext.At(file, offset) is not { AtHead: false, Word: { } word } line)
        {
            return null;
        }

        if (line.Pattern() is not { } pattern)
        {
            return word.Forms.IsEmpty ? null : Forms(word);
        }

        if (pattern.Arguments.IsEmpty && pattern.Clauses.IsEmpty && pattern.Flags.IsEmpty)
        {
            return null;
        }

        var label = new StringBuilder(line.Head);
        var parts = ImmutableArray.CreateBuilder<LineHelpPart>();
        foreach (var argument in pattern.Arguments)
        {
            Add(argument.IsOptional ? $"[{argument.Kind.Noun}]" : argument.Kind.Noun, argument.Kind.Noun);
        }

        foreach (var clause in pattern.Clauses)
        {
            var text = $"{clause.Phrase} {clause.Kind.Noun}";
            Add(clause.IsRequired ? text : $"[{text}]", clause.Doc);
        }

        foreach (var flag in pattern.Flags)
        {
            Add($"[{flag.Phrase}]", flag.Doc);
        }

        if (pattern.Count is { } count)
        {
            Add("[xN]", count.Doc);
        }

        return new LineHelp(label.ToString(), parts.ToImmutable(), Active(line, pattern, parts.Count), word.Doc);

        void Add(string text, string doc)
        {
            label.Append(' ');
            parts.Add(new LineHelpPart(label.Length, text.Length, doc));
            label.Append(text);
        }
    }

    private static LineHelp Forms(WordSchema word)
    {
        var label = new StringBuilder(word.Word).Append(' ');
        var parts = ImmutableArray.CreateBuilder<LineHelpPart>();
        foreach (var form in word.Forms)
        {
            label.Append(parts.Count == 0 ? "" : " | ");
            parts.Add(new LineHelpPart(label.Length, form.Word.Length, form.Doc));
            label.Append(form.Word);
        }

        return new LineHelp(label.ToString(), parts.ToImmutable(), parts.Count, word.Doc);
    }

    private static int Active(LineContext line, LinePattern pattern, int parts)
    {
        if (line.OpenClause(pattern) is { } open)
        {
            return pattern.Arguments.Length + pattern.Clauses.IndexOf(open);
        }

        // The last clause that the line has begun is where its value is still being written.
        for (var i = line.Before.Length - 1; i >= 1; i--)
        {
            var word = line.TextOf(line.Before[i]);
            var clause = pattern.Clauses.FirstOrDefault(c => c.Words[^1] == word);
            if (clause is not null)
            {
                return pattern.Arguments.Length + pattern.Clauses.IndexOf(clause);
            }
        }

        var begun = line.Before.Length - (line.Word is { Forms.IsEmpty: false } ? 2 : 1);
        return Math.Min(Math.Max(begun, 0), pattern.Arguments.Length is > 0 and var last && begun >= last && line.Typed.Length > 0 ? last - 1 : parts);
    }
}
