using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A value that breaks off.</summary>
internal static class UnfinishedValue
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1020",
        Name = "unfinished-value",
        Severity = Severity.Error,
        Title = "A value that breaks off",
        Reason = "Half a value would be read as another one: a ratio without its second number is no ratio.",
        Remedy = "Write the rest of the value.",
        Source = "the language itself",
        BadExample = """
            let lap = 20 mm +
            """,
        GoodExample = """
            let lap = 20 mm + 5 mm
            """,
    };

    /// <param name="where">What stands there instead, or the end of the line.</param>
    /// <param name="after">The sign that wants something after it.</param>
    public static Finding Create(SourceSpan where, SourceSpan after) =>
        Finding.Of(
            Descriptor,
            where,
            $"a {(after.Text is ":" ? "number" : "value")} must follow {Quoted.Text(after.Text)}" + (where.Span.Length == 0 ? "" : $", not {Quoted.Text(where.Text)}")) with
        {
            Labels = [new FindingLabel(after, "after this")],
        };
}
