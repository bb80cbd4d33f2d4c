using System.Collections.Immutable;

namespace Recipe.Text.Findings;

/// <summary>How far a fix can be trusted.</summary>
public enum FixSafety
{
    /// <summary>Keeps the meaning or is the only thing that can have been meant; may be applied unseen.</summary>
    Safe,

    /// <summary>Probably right, but somebody has to look.</summary>
    NeedsALook,
}

/// <summary>A change of text that would settle a finding.</summary>
public sealed record Fix
{
    /// <summary>Makes a fix. The title is an instruction: it starts with a capital and has no full stop.</summary>
    /// <exception cref="ArgumentException">The title breaks that rule, or there is no edit.</exception>
    public Fix(string title, FixSafety safety, params ImmutableArray<TextEdit> edits)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(title);
        if (char.IsLower(title[0]) || title[^1] == '.')
        {
            throw new ArgumentException($"'{title}' should start with a capital and have no full stop.", nameof(title));
        }

        if (edits.IsDefaultOrEmpty)
        {
            throw new ArgumentException("A fix has at least one edit.", nameof(edits));
        }

        Title = title;
        Safety = safety;
        Edits = edits;
    }

    /// <summary>The instruction, as a person reads it.</summary>
    public string Title { get; }

    /// <summary>How far it can be trusted.</summary>
    public FixSafety Safety { get; }

    /// <summary>The edits; they do not overlap.</summary>
    public ImmutableArray<TextEdit> Edits { get; }
}

/// <summary>Replaces the characters of a span by a new text.</summary>
/// <param name="Where">What is replaced; an empty span inserts.</param>
/// <param name="NewText">What stands there afterwards.</param>
public sealed record TextEdit(SourceSpan Where, string NewText)
{
    /// <summary>Applies all edits that belong to one text.</summary>
    /// <exception cref="ArgumentException">Two edits overlap.</exception>
    public static string Apply(SourceText source, IEnumerable<TextEdit> edits)
    {
        ArgumentNullException.ThrowIfNull(source);
        ArgumentNullException.ThrowIfNull(edits);
        var text = source.Text;
        var after = text.Length;
        foreach (var edit in edits.Where(e => ReferenceEquals(e.Where.Source, source)).OrderByDescending(e => e.Where.Span.Start).ThenByDescending(e => e.Where.Span.End))
        {
            var span = edit.Where.Span;
            if (span.End > after)
            {
                throw new ArgumentException($"Two edits overlap at {edit.Where}.", nameof(edits));
            }

            text = string.Concat(text.AsSpan(0, span.Start), edit.NewText, text.AsSpan(span.End));
            after = span.Start;
        }

        return text;
    }
}
