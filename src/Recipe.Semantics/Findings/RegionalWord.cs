using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A word of another region or shop that is understood.</summary>
public static class RegionalWord
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1202",
        Name = "regional-word",
        Severity = Severity.Advice,
        Title = "Another word for the same thing",
        Reason = "One spelling serves every file, so that a search finds all of them.",
        Remedy = "Take the quick fix.",
        Source = "common practice: the trade has several words for it",
        BadExample =
            """
            mold lid-mould {
              surface disc diameter 200 mm
            }

            """,
        GoodExample =
            """
            mould lid-mould {
              surface disc diameter 200 mm
            }

            """,
    };

    internal static Finding Create(SourceSpan where, string word, string canonical) =>
        Finding.Of(Descriptor, where, $"`{word}` is read as `{canonical}`, the one word for it here.") with
        {
            Fixes = [new Fix($"Write {canonical}", FixSafety.Safe, new TextEdit(where, canonical))],
        };
}
