using Recipe.Semantics.Values;
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
        Title = "A value for which the line has no place",
        Reason = "What the line does not read is left out of the plan, and what was meant by it is not done.",
        Remedy = "Write before it the word that says what it is, put what is another entry on a line of its own, or take it out.",
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

    /// <summary>A value that stands where the line takes none.</summary>
    /// <param name="where">The value.</param>
    /// <param name="written">It, or what it is.</param>
    /// <param name="head">The line.</param>
    /// <param name="example">How such a line is written.</param>
    /// <param name="words">Words that the line takes and has not, behind which such a value may stand.</param>
    internal static Finding Create(SourceSpan where, string written, string head, string example, IReadOnlyList<string>? words = null)
    {
        var more = words is { Count: > 0 } ? $". The word that says what it is may be {Numbers.Or([.. words.Select(word => $"`{word}`")])}" : "";
        return Finding.Of(Descriptor, where, $"`{head}` has no place for {written}; such a line is written `{example}`{more}.") with
        {
            Fixes = written == where.Text ? [new Fix($"Take {written} out", FixSafety.NeedsALook, new TextEdit(WithBlanks(where), ""))] : [],
        };
    }

    /// <summary>A second entry on the line of the first.</summary>
    internal static Finding SecondLine(SourceSpan where, string head, string second)
    {
        var line = where.Source.LineSpan(where.Start.Line);
        var text = where.Source.Slice(line);
        var indent = text[..(text.Length - text.TrimStart().Length)];
        // On a line such as `bag { time 5 min pleats 4 }` a line end would tear the block apart; a semicolon keeps it.
        var separator = text.Contains('{', StringComparison.Ordinal) ? "; " : "\n" + indent;
        return Finding.Of(Descriptor, where, $"`{second}` is a line of its own; it stands on the line of `{head}`.") with
        {
            Fixes =
            [
                new Fix($"Put {second} on a line of its own", FixSafety.Safe, new TextEdit(WithBlanks(where with { Span = new TextSpan(where.Span.Start, 0) }), separator)),
            ],
        };
    }

    /// <summary>A place and the blanks in front of it on its line.</summary>
    internal static SourceSpan WithBlanks(SourceSpan where)
    {
        var line = where.Source.LineSpan(where.Start.Line);
        var before = where.Span.Start;
        while (before > line.Start && where.Source.Text[before - 1] is ' ' or '\t')
        {
            before--;
        }

        return where with { Span = TextSpan.FromBounds(before, where.Span.End) };
    }
}
