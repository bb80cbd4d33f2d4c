using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Checks;

/// <summary>The figures that a finding rests on, as far as nobody measured them.</summary>
public sealed class Grounds
{
    private const int NamedAtMost = 2;
    private readonly ImmutableSortedSet<string> _keys;
    private readonly ImmutableArray<string> _words;

    private Grounds(ImmutableSortedSet<string> keys, ImmutableArray<string> words)
    {
        _keys = keys;
        _words = words;
    }

    /// <summary>Nothing assumed.</summary>
    public static Grounds Sure { get; } = new(ImmutableSortedSet.Create<string>(StringComparer.Ordinal), []);

    /// <summary>Whether one of the figures is a default or was never measured.</summary>
    public bool IsAssumed => !_keys.IsEmpty || !_words.IsEmpty;

    /// <summary>Rests on a computed value too.</summary>
    public Grounds And<T>(Computed<T>? computed) =>
        computed is { IsAssumed: true } known ? new(_keys.Union(known.RestsOn), _words) : this;

    /// <summary>Rests on a figure too.</summary>
    /// <param name="what">The figure in words: "pot life of my-epoxy".</param>
    /// <param name="figure">The figure.</param>
    public Grounds And<T>(string what, Figure<T>? figure) =>
        figure is { IsAssumed: true } ? AndThat($"{what} {figure.Written}") : this;

    /// <summary>Rests on a rule of thumb too, said in words.</summary>
    public Grounds AndThat(string assumption) => _words.Contains(assumption) ? this : new(_keys, _words.Add(assumption));

    /// <summary>What is assumed, in words, at most two things by name; empty when nothing is.</summary>
    internal string Describe(ImmutableArray<Assumption> known)
    {
        var all = _words.AddRange(_keys.Select(key => InWords(key, known)));
        var named = string.Join("; ", all.Take(NamedAtMost));
        return all.Length > NamedAtMost ? FormattableString.Invariant($"{named}; +{all.Length - NamedAtMost} more") : named;
    }

    private static string InWords(string key, ImmutableArray<Assumption> known)
    {
        var assumption = known.IsDefaultOrEmpty ? null : known.FirstOrDefault(a => a.Key == key);
        return assumption is null ? key : $"{assumption.What} {assumption.Value}";
    }
}
