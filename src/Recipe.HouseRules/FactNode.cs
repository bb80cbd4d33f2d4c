using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Text;

namespace Recipe.HouseRules;

/// <summary>A thing that rules ask: the part, or a ply, a pot, a step of it. What is not known of it is not there.</summary>
public sealed class FactNode
{
    private readonly Dictionary<string, FactValue> _facts = new(StringComparer.Ordinal);

    /// <summary>Makes one.</summary>
    /// <param name="group">What kind of thing it is.</param>
    /// <param name="where">Where it stands: what a finding about it points at.</param>
    public FactNode(FactGroup group, SourceSpan where)
    {
        ArgumentNullException.ThrowIfNull(group);
        (Group, Where) = (group, where);
    }

    /// <summary>What kind of thing it is.</summary>
    public FactGroup Group { get; }

    /// <summary>Where it stands.</summary>
    public SourceSpan Where { get; }

    /// <summary>The things in it, by kind; empty for everything but the part.</summary>
    public ImmutableDictionary<string, ImmutableArray<FactNode>> Elements { get; init; } = ImmutableDictionary<string, ImmutableArray<FactNode>>.Empty;

    /// <summary>A fact; null when it is not known.</summary>
    /// <param name="word">Its word.</param>
    public FactValue? Find(string word) => _facts.GetValueOrDefault(word);

    /// <summary>The things of a kind.</summary>
    /// <param name="group">The kind.</param>
    public ImmutableArray<FactNode> All(FactGroup group)
    {
        ArgumentNullException.ThrowIfNull(group);
        return Elements.GetValueOrDefault(group.Word, []);
    }

    internal FactNode Set(string word, FactValue? value)
    {
        if (Group.Find(word) is null)
        {
            throw new ArgumentException($"A {Group.Word} has no fact '{word}'.", nameof(word));
        }

        if (value is not null && (value.Word is not null || value.Yes is not null || double.IsFinite(value.Si)))
        {
            _facts[word] = value;
        }

        return this;
    }
}
