using System.Text.RegularExpressions;

namespace Recipe.Text.Findings;

/// <summary>
/// What is the same for every finding of one kind: its code and name, how bad it is by default, why it matters, and a page of
/// documentation whose examples run as tests. There is one descriptor type for syntax, meaning, engineering and house rules.
/// </summary>
public sealed partial record FindingDescriptor
{
    /// <summary>Stable code, never reused: <c>RC</c> and four digits.</summary>
    public required string Code { get; init => field = Code4().IsMatch(value) ? value : throw new ArgumentException($"'{value}' is not RC and four digits.", nameof(value)); }

    /// <summary>Readable name in kebab case, the class name in small letters: <c>bare-number</c>.</summary>
    public required string Name { get; init => field = Kebab().IsMatch(value) ? value : throw new ArgumentException($"'{value}' is not kebab-case.", nameof(value)); }

    /// <summary>Severity before assumptions, waivers and shop settings have their say.</summary>
    public required Severity Severity { get; init; }

    /// <summary>What is wrong, in one short line without numbers.</summary>
    public required string Title { get; init; }

    /// <summary>Why it matters at the bench, in one sentence.</summary>
    public required string Reason { get; init; }

    /// <summary>What to do about it, in one sentence.</summary>
    public required string Remedy { get; init; }

    /// <summary>Where the rule comes from: a handbook with its page, or "common practice", or "from memory".</summary>
    public required string Source { get; init; }

    /// <summary>A complete file that earns exactly this finding.</summary>
    public required string BadExample { get; init; }

    /// <summary>The same file done right: it earns no finding.</summary>
    public required string GoodExample { get; init; }

    /// <summary>When the check stays silent although it looks as if it should fire; empty when there is no such case.</summary>
    public string Exceptions { get; init; } = "";

    [GeneratedRegex("^RC[0-9]{4}$")]
    private static partial Regex Code4();

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex Kebab();
}
