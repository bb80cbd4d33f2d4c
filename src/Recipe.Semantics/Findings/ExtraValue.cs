using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A value or a second entry that the line does not take.</summary>
public static class ExtraValue
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1113",
        Name = "extra-value",
        Severity = Severity.Error,
        Title = "Two things on one line",
        Reason = "One thing stands on each line, so that a comparison of two versions reads as what changed at the bench.",
        Remedy = "Put the second thing on a line of its own, or take it out.",
        Source = "the language",
        BadExample =
            """
            part lid {
              wet-out {
                room 20 degC   laminators 1
              }
            }

            """,
        GoodExample =
            """
            part lid {
              wet-out {
                room 20 degC
                laminators 1
              }
            }

            """,
    };

    internal static Finding Create(SourceSpan where, string written, string head, string example) =>
        Finding.Of(Descriptor, where, $"{written} is one value too many for `{head}`, as in `{example}`.");

    /// <summary>A second entry on the line of the first.</summary>
    internal static Finding SecondLine(SourceSpan where, string head, string second)
    {
        var line = where.Source.LineSpan(where.Start.Line);
        var text = where.Source.Slice(line);
        var indent = text[..(text.Length - text.TrimStart().Length)];
        var before = where.Span.Start;
        while (before > line.Start && where.Source.Text[before - 1] is ' ' or '\t')
        {
            before--;
        }

        // On a line such as `bag { time 5 min pleats 4 }` a line end would tear the block apart; a semicolon keeps it.
        var separator = text.Contains('{', StringComparison.Ordinal) ? "; " : "\n" + indent;
        return Finding.Of(Descriptor, where, $"`{second}` is a line of its own; it stands on the line of `{head}`.") with
        {
            Fixes =
            [
                new Fix($"Put {second} on a line of its own", FixSafety.Safe, new TextEdit(where with { Span = TextSpan.FromBounds(before, where.Span.Start) }, separator)),
            ],
        };
    }
}
