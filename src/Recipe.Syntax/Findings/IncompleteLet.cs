using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A named value without its name or its equals sign.</summary>
internal static class IncompleteLet
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1018",
        Name = "incomplete-let",
        Severity = Severity.Error,
        Title = "A named value without its name or its equals sign",
        Reason = "A name that is not given its value leaves every line that uses it without one.",
        Remedy = "Write let, a name, an equals sign and the value.",
        Source = "the language itself",
        BadExample = """
            let lap 20 mm
            """,
        GoodExample = """
            let lap = 20 mm
            """,
    };

    /// <param name="where">The token that stands where something is missing, or the end of the line.</param>
    /// <param name="isEqualsMissing">Whether the equals sign is missing; else it is the name.</param>
    public static Finding Create(SourceSpan where, bool isEqualsMissing)
    {
        var missing = isEqualsMissing ? "the equals sign is missing here" : "the name of the value is missing here";
        return Finding.Of(Descriptor, where, $"{missing}: let name = value") with
        {
            Fixes = isEqualsMissing && where.Span.Length > 0
                ? [new Fix("Add the equals sign", FixSafety.NeedsALook, new TextEdit(new SourceSpan(where.Source, new TextSpan(where.Span.Start, 0)), "= "))]
                : [],
        };
    }
}
