using System.Collections.Frozen;
using System.Collections.Immutable;

namespace Recipe.Semantics.Schema;

/// <summary>One word that may begin a line of a block.</summary>
/// <param name="Word">The word.</param>
/// <param name="Doc">What it says, in one sentence.</param>
/// <param name="Line">What may follow it.</param>
/// <param name="Example">A whole line.</param>
public sealed record WordSchema(string Word, string Doc, LinePattern Line, string Example)
{
    /// <summary>Other words for it that are understood and answered with a fix.</summary>
    public ImmutableArray<string> Regional { get; init; } = [];

    /// <summary>Whether it may stand several times in one block.</summary>
    public bool IsRepeatable { get; init; }

    /// <summary>Whether it may stand once for each first word behind it: <c>density resin</c>, <c>density cured</c>.</summary>
    public bool OncePerFirstWord { get; init; }

    /// <summary>Whether the block makes no sense without it.</summary>
    public bool IsRequired { get; init; }

    /// <summary>What holds when it is not written, in words; or null.</summary>
    public string? Default { get; init; }

    /// <summary>The block it may carry, or null.</summary>
    public BlockSchema? Block { get => field ?? BlockWhenAsked?.Invoke(); init; }

    /// <summary>The same for a block that holds this word again, somewhere inside.</summary>
    internal Func<BlockSchema>? BlockWhenAsked { get; init; }

    /// <summary>Whether it makes no sense without its block.</summary>
    public bool NeedsBlock { get; init; }

    /// <summary>The forms of the line when its first word decides what follows; empty when there is one form only.</summary>
    public ImmutableArray<LineForm> Forms { get; init; } = [];

    /// <summary>Whether its name replaces names of the same word in a copy or variant (<c>hardener fast</c>).</summary>
    public bool NameIsKey { get; init; }

    /// <summary>The form that starts with this word, or null.</summary>
    public LineForm? FormOf(string word)
    {
        foreach (var form in Forms)
        {
            if (form.Word == word)
            {
                return form;
            }
        }

        return null;
    }
}

/// <summary>What may stand in a block.</summary>
public sealed record BlockSchema
{
    private readonly FrozenDictionary<string, WordSchema> _byWord;
    private readonly FrozenDictionary<string, WordSchema> _byRegional;

    /// <summary>Makes a block of words.</summary>
    /// <param name="name">What people call it: <c>cure</c>, <c>fabric</c>.</param>
    /// <param name="doc">What it is for, in one sentence.</param>
    /// <param name="words">Its words, in the order in which people read about them.</param>
    public BlockSchema(string name, string doc, params ImmutableArray<WordSchema> words)
    {
        Name = name;
        Doc = doc;
        Words = words;
        _byWord = words.ToFrozenDictionary(w => w.Word, StringComparer.Ordinal);
        _byRegional = words.SelectMany(w => w.Regional, (w, other) => (other, w))
            .ToFrozenDictionary(pair => pair.other, pair => pair.w, StringComparer.Ordinal);
    }

    /// <summary>What people call it.</summary>
    public string Name { get; }

    /// <summary>What it is for, in one sentence.</summary>
    public string Doc { get; }

    /// <summary>Its words.</summary>
    public ImmutableArray<WordSchema> Words { get; }

    /// <summary>
    /// For a line that begins with a name: its pattern, under a word that says what the name is (<c>NAME</c>); null when every
    /// line begins with one of <see cref="Words"/>.
    /// </summary>
    public WordSchema? NameLine { get; init; }

    /// <summary>What the name at the head of a <see cref="NameLine"/> is: a new name or a reference.</summary>
    public ValueKind? NameHead { get; init; }

    /// <summary>Whether a name may begin one line only.</summary>
    public bool NamesOnce { get; init; }

    /// <summary>Whether <c>__</c> may stand for a value that is not known yet: a form to be filled in.</summary>
    public bool TakesBlanks { get; init; }

    /// <summary>Whether the order of the lines is part of the meaning.</summary>
    public bool IsOrdered { get; init; }

    /// <summary>The word spelt so, or null.</summary>
    public WordSchema? Find(string word) => _byWord.GetValueOrDefault(word);

    /// <summary>The word that this regional word stands for, or null.</summary>
    public WordSchema? FindRegional(string word) => _byRegional.GetValueOrDefault(word);
}
