using System.Collections.Immutable;

namespace Recipe.Planning;

/// <summary>A computed value that knows which assumptions it rests on.</summary>
/// <typeparam name="T">A UnitsNet quantity, a count.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="RestsOn">Keys of the <see cref="Assumption"/>s behind it, in ordinal order; empty when every input was stated or comes from the book with a source.</param>
public readonly record struct Computed<T>(T Value, ImmutableArray<string> RestsOn)
{
    /// <summary>Whether a finding about it may be an error: a default never makes one.</summary>
    public bool IsAssumed => !RestsOn.IsDefaultOrEmpty;
}

/// <summary>A default or an unmeasured figure that the plan used.</summary>
/// <param name="Key">Stable key: <c>default.trim-allowance</c>, <c>book.nylon-bag-film.heat-limit</c>.</param>
/// <param name="What">What is assumed, in words: "plies run past the trim line by".</param>
/// <param name="Value">The value with its unit: "15 mm".</param>
/// <param name="Source">Where it comes from: a handbook and page, "common practice", "from memory of the trade".</param>
/// <param name="HowToReplace">What to write to replace it: "write `trim 15 mm` in the part".</param>
public sealed record Assumption(string Key, string What, string Value, string Source, string HowToReplace);

/// <summary>Something the plan could not compute, and what is missing for it.</summary>
/// <param name="Subject">What could not be computed: "resin to mix".</param>
/// <param name="Missing">What is missing: "no resin content is known for carbon-veil-8".</param>
public sealed record Gap(string Subject, string Missing);

/// <summary>A value with the band it lies in.</summary>
/// <typeparam name="T">A UnitsNet quantity.</typeparam>
/// <param name="Value">Expected value.</param>
/// <param name="Low">Lower end.</param>
/// <param name="High">Upper end.</param>
public readonly record struct Banded<T>(T Value, T Low, T High);
