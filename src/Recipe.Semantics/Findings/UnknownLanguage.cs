using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A `language` line with another number.</summary>
public static class UnknownLanguage
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1214",
        Name = "unknown-language",
        Severity = Severity.Error,
        Title = "A language version that this program does not read",
        Reason = "A newer language may mean something else by the same words.",
        Remedy = "Use a program that reads it, or write `language 1`.",
        Source = "the language",
        BadExample =
            """
            language 2

            """,
        GoodExample =
            """
            language 1

            """,
    };

    internal static Finding Create(SourceSpan where, string version) =>
        Finding.Of(Descriptor, where, $"This file is written in language {version}; this program reads language 1.");
}
