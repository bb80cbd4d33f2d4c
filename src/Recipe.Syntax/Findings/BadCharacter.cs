using System.Collections.Immutable;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A character that means nothing here.</summary>
internal static class BadCharacter
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1003",
        Name = "bad-character",
        Severity = Severity.Error,
        Title = "A character that means nothing here",
        Reason = "A stray character may hide what the line was meant to say.",
        Remedy = "Take it out, or put the words in quotes.",
        Source = "the language itself",
        BadExample = """
            let lap = 20 mm !
            """,
        GoodExample = """
            let lap = 20 mm
            """,
    };

    public static Finding Create(SourceSpan where)
    {
        var fixes = Meant(where.Text) is { } meant
            ? [new Fix($"Write {meant}", FixSafety.NeedsALook, new TextEdit(where, meant))]
            : ImmutableArray<Fix>.Empty;
        return Finding.Of(Descriptor, where, $"{Quoted.Text(where.Text)} means nothing here") with
        {
            Fixes = fixes.Add(new Fix("Take it out", FixSafety.NeedsALook, new TextEdit(where, ""))),
        };
    }

    /// <summary>What programs that set type make of quotes and hyphens, turned back.</summary>
    private static string? Meant(string text) => text switch
    {
        "\u201c" or "\u201d" or "\u201e" or "\u00ab" or "\u00bb" => "\"",
        "\u2010" or "\u2011" or "\u2012" or "\u2013" or "\u2014" or "\u2212" => "-",
        "\u00f7" or "\u2044" or "\u2215" => "/",
        "\u2236" => ":",
        _ => null,
    };
}
