using System.Globalization;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A word that may stand once stands again.</summary>
public static class SaidTwice
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1206",
        Name = "said-twice",
        Severity = Severity.Error,
        Title = "The same line twice",
        Reason = "Only one of the two can hold.",
        Remedy = "Keep one of them.",
        Source = "the language",
        BadExample =
            """
            mould lid-mould {
              surface disc diameter 200 mm
              flange 50 mm
              flange 60 mm
            }

            """,
        GoodExample =
            """
            mould lid-mould {
              surface disc diameter 200 mm
              flange 50 mm
            }

            """,
    };

    internal static Finding Create(SourceSpan where, string word, SourceSpan first) =>
        Finding.Of(Descriptor, where, $"`{word}` stands twice; the first one counts.") with
        {
            Labels = [new FindingLabel(first, "the first one")],
        };

    /// <summary>A number of pots beside pots that are listed one by one, and are not so many.</summary>
    internal static Finding PotsListed(SourceSpan where, int said, SourceSpan first, int listed) =>
        Finding.Of(Descriptor, where, string.Create(CultureInfo.InvariantCulture, $"`pots` says {said}, and {listed} are listed one by one; those count.")) with
        {
            Labels = [new FindingLabel(first, "listed from here on")],
        };

    /// <summary>Two words that say one thing in two ways: <c>resin-content</c> and <c>fibre-content</c>.</summary>
    internal static Finding InOtherWords(SourceSpan where, string word, SourceSpan first, string said) =>
        Finding.Of(Descriptor, where, $"`{word}` says again what `{said}` said; the first one counts.") with
        {
            Labels = [new FindingLabel(first, "the first one")],
        };
}
