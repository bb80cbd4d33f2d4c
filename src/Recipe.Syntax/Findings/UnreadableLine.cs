using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A line that cannot be read.</summary>
internal static class UnreadableLine
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1008",
        Name = "unreadable-line",
        Severity = Severity.Error,
        Title = "A line that cannot be read",
        Reason = "What cannot be read cannot be checked.",
        Remedy = "Write a word, then its values: numbers with units, names, texts in quotes.",
        Source = "the language itself",
        BadExample = """
            let lap = 20 mm 5 mm
            """,
        GoodExample = """
            let lap = 20 mm
            """,
    };

    public static Finding Create(SourceSpan where) => Finding.Of(
        Descriptor,
        where,
        where.Span.Length == 0 ? "something is missing here" : $"{Quoted.Text(where.Text)} cannot stand here; the line is not read from here on");

    /// <summary>What begins a third number behind a pair.</summary>
    public static Finding OfThirdNumber(SourceSpan slash) => Finding.Of(
        Descriptor,
        slash,
        "a pair such as 0/90 has two numbers, and a third cannot follow; a ply that lies another way has a line of its own");
}
