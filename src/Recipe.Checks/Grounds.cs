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
    /// <param name="computed">The value.</param>
    /// <param name="except">Key of an assumption behind it that what is found does not depend on.</param>
    public Grounds And<T>(Computed<T>? computed, string? except = null) =>
        computed is { IsAssumed: true } known ? new(_keys.Union(known.RestsOn.Where(key => key != except)), _words) : this;

    /// <summary>Rests on a figure too.</summary>
    /// <param name="what">The figure in words: "pot life of my-epoxy".</param>
    /// <param name="figure">The figure.</param>
    public Grounds And<T>(string what, Figure<T>? figure) =>
        figure is { IsAssumed: true } ? AndThat($"{what} {figure.Written}") : this;

    /// <summary>Rests on a rule of thumb too, said in words.</summary>
    public Grounds AndThat(string assumption) => _words.Contains(assumption) ? this : new(_keys, _words.Add(assumption));

    /// <summary>
    /// What is assumed, in words; empty when nothing is. Two things are named. Of more, only what the check itself says is named and
    /// the figures are counted: the papers list them, and a sentence that lists six is not read.
    /// </summary>
    internal string Describe(ImmutableArray<Assumption> known)
    {
        if (_words.Length + _keys.Count <= NamedAtMost)
        {
            return string.Join("; ", _words.AddRange(_keys.Select(key => InWords(key, known))));
        }

        var figures = _keys.Count switch
        {
            0 => "",
            1 => "1 figure, listed on the papers",
            var count => FormattableString.Invariant($"{count} figures, listed on the papers"),
        };
        return string.Join("; ", _words.Take(NamedAtMost).Append(figures).Where(text => text.Length > 0));
    }

    private static string InWords(string key, ImmutableArray<Assumption> known)
    {
        if ((known.IsDefaultOrEmpty ? null : known.FirstOrDefault(a => a.Key == key)) is not { } assumption)
        {
            return key;
        }

        // A figure of a material is said as its line is written: "heat-limit 60 degC of PVC hose".
        const string of = " of ";
        var at = assumption.What.IndexOf(of, StringComparison.Ordinal);
        return at > 0 && !key.StartsWith("default.", StringComparison.Ordinal)
            ? $"{assumption.What[..at]} {assumption.Value}{assumption.What[at..]}"
            : $"{assumption.What}: {assumption.Value}";
    }
}
