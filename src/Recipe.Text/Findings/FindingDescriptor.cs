using System.Text.RegularExpressions;

namespace Recipe.Text.Findings;

/// <summary>
/// What is the same for every finding of one kind: its code and name, how bad it is by default, why it matters, and a page of
/// documentation whose examples run as tests. There is one descriptor type for syntax, meaning, engineering and house rules.
/// </summary>
public sealed partial record FindingDescriptor
{
    /// <summary>Stable code, never reused: <c>RC</c> and four digits; of a rule of the house, <c>house/</c> and its name.</summary>
    public required string Code { get; init => field = CodeForm().IsMatch(value) ? value : throw new ArgumentException($"'{value}' is neither RC and four digits nor house/ and a name.", nameof(value)); }

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

    /// <summary>Whether a shop wrote it.</summary>
    public bool IsHouseRule => Code[0] == 'h';

    /// <summary>Code and name as people read them: <c>RC6004 hose-collapses</c>; of a rule of the house, which has one name only, <c>house rule warm-carbon</c>.</summary>
    public string Label => IsHouseRule ? $"house rule {Name}" : $"{Code} {Name}";

    /// <summary>The code alone, where the name stands elsewhere.</summary>
    public string ShortCode => IsHouseRule ? "house rule" : Code;

    /// <summary>The code of a rule of the house.</summary>
    /// <param name="name">Its name, in small letters with hyphens.</param>
    public static string CodeOfHouseRule(string name) => "house/" + name;

    /// <summary>Whether a text could be the name of a finding.</summary>
    public static bool IsName(string name) => Kebab().IsMatch(name);

    [GeneratedRegex("^(RC[0-9]{4}|house/[a-z0-9]+(-[a-z0-9]+)*)$")]
    private static partial Regex CodeForm();

    [GeneratedRegex("^[a-z0-9]+(-[a-z0-9]+)*$")]
    private static partial Regex Kebab();
}
