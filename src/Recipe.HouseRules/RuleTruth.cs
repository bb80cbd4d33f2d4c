using System.Collections.Immutable;
using Recipe.Text;

namespace Recipe.HouseRules;

/// <summary>Yes, no, or unknown because a fact is; and what the answer rests on. Source: the strong logic of three values, S. C. Kleene, 1938.</summary>
/// <param name="Answer">The answer; null when it is unknown.</param>
/// <param name="Missing">What is missing to tell, when it is unknown.</param>
/// <param name="Grounds">What is assumed behind it.</param>
internal readonly record struct RuleTruth(bool? Answer, string? Missing, Grounds Grounds)
{
    public static RuleTruth Yes { get; } = new(true, null, Grounds.None);

    public static RuleTruth No { get; } = new(false, null, Grounds.None);

    public static RuleTruth Of(bool answer) => answer ? Yes : No;

    public static RuleTruth Of(bool answer, FactValue fact) => new(answer, null, Grounds.Of(fact));

    public static RuleTruth Unknown(string? missing) => new(null, missing, Grounds.None);

    public RuleTruth Not() => this with { Answer = !Answer };

    // What settles the answer alone is all that it rests on.
    public RuleTruth And(RuleTruth other) =>
        Answer == false ? this
        : other.Answer == false ? other
        : Answer is null ? this
        : other.Answer is null ? other
        : new(true, null, Grounds.And(other.Grounds));

    public RuleTruth Or(RuleTruth other) => Not().And(other.Not()).Not();
}

/// <summary>A number and what it rests on.</summary>
internal sealed record RuleNumber(double Si, string? Currency, Grounds Grounds)
{
    /// <summary>Where it is written, when it is a fact that the recipe states.</summary>
    public SourceSpan? Where { get; init; }
}

/// <summary>What is assumed behind an answer: keys of the plan's assumptions, and words.</summary>
internal sealed record Grounds(ImmutableSortedSet<string> Keys, ImmutableSortedSet<string> Words)
{
    public static Grounds None { get; } = new(ImmutableSortedSet.Create<string>(StringComparer.Ordinal), ImmutableSortedSet.Create<string>(StringComparer.Ordinal));

    public static Grounds Of(FactValue fact) => fact is { RestsOn.IsEmpty: true, Assumed: null }
        ? None
        : new(None.Keys.Union(fact.RestsOn), fact.Assumed is { } assumed ? None.Words.Add(assumed) : None.Words);

    public Grounds And(Grounds other) => ReferenceEquals(this, other) || ReferenceEquals(other, None) ? this
        : ReferenceEquals(this, None) ? other
        : new(Keys.Union(other.Keys), Words.Union(other.Words));
}
