using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A decimal comma.</summary>
internal static class DecimalComma
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1001",
        Name = "decimal-comma",
        Severity = Severity.Error,
        Title = "A decimal comma",
        Reason = "A comma may stand for a point or part thousands, and 1,500 g is then 1.5 g or 1500 g.",
        Remedy = "Write a decimal point, and no mark between thousands.",
        Source = "the language itself",
        BadExample = """
            let lap = 1,5 mm
            """,
        GoodExample = """
            let lap = 1.5 mm
            """,
    };

    public static Finding Create(SourceSpan where)
    {
        var point = where.Text.Replace(',', '.');
        var joined = where.Text.Replace(",", "", StringComparison.Ordinal);
        return Finding.Of(Descriptor, where, $"{where.Text} can mean {point} or {joined}; a number takes a decimal point") with
        {
            Fixes =
            [
                new Fix($"Write {point}", FixSafety.NeedsALook, new TextEdit(where, point)),
                new Fix($"Write {joined}", FixSafety.NeedsALook, new TextEdit(where, joined)),
            ],
        };
    }
}
