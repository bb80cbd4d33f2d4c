namespace Recipe.RuleApi;

/// <summary>
/// Facts by word, and sheets of elements by the word of their group: the form in which facts travel to a rule. A rule reads the typed
/// views over it, such as <see cref="PartFacts"/>.
/// </summary>
public sealed class FactSheet
{
    private static readonly Dictionary<string, Fact> NoFacts = [];
    private static readonly Dictionary<string, IReadOnlyList<FactSheet>> NoElements = [];

    /// <summary>A sheet of facts.</summary>
    /// <param name="kind">What they are facts of: <c>part</c>, <c>ply</c>, <c>bag-layer</c>.</param>
    /// <param name="facts">The facts by their word in kebab case.</param>
    /// <param name="elements">The sheets of its elements by the word of their group, each in order.</param>
    /// <exception cref="ArgumentNullException">The kind is missing.</exception>
    public FactSheet(string kind, IReadOnlyDictionary<string, Fact>? facts = null, IReadOnlyDictionary<string, IReadOnlyList<FactSheet>>? elements = null)
    {
        ArgumentNullException.ThrowIfNull(kind);
        Kind = kind;
        Facts = facts ?? NoFacts;
        Elements = elements ?? NoElements;
    }

    /// <summary>What they are facts of.</summary>
    public string Kind { get; }

    /// <summary>The facts by their word.</summary>
    public IReadOnlyDictionary<string, Fact> Facts { get; }

    /// <summary>The sheets of its elements by the word of their group.</summary>
    public IReadOnlyDictionary<string, IReadOnlyList<FactSheet>> Elements { get; }

    /// <summary>A fact, or null when it is not known.</summary>
    /// <param name="word">Its word.</param>
    public Fact? Find(string word) => Facts.TryGetValue(word, out var fact) ? fact : null;

    /// <summary>The elements of a group, in order; none when there is no such group.</summary>
    /// <param name="group">The word of the group.</param>
    public IReadOnlyList<FactSheet> Group(string group) => Elements.TryGetValue(group, out var found) ? found : [];
}
