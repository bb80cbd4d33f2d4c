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

    /// <param name="where">A number with one comma and no point.</param>
    public static Finding Create(SourceSpan where)
    {
        var point = where.Text.Replace(',', '.');
        var joined = where.Text.Replace(",", "", StringComparison.Ordinal);

        // Thousands stand in threes behind a number that does not begin with nought: 1,500 can be either, 0,3 cannot.
        var canBeThousands = where.Text.Split(',') is [[>= '1' and <= '9', ..] before, { Length: 3 } behind] && before.Length <= 3 && behind.All(char.IsAsciiDigit);
        var withPoint = new Fix($"Write {point}", FixSafety.NeedsALook, new TextEdit(where, point));
        return canBeThousands
            ? Finding.Of(Descriptor, where, $"{where.Text} can mean {point} or {joined}; a number takes a decimal point, and no mark between thousands") with
            {
                Fixes = [withPoint, new Fix($"Write {joined}", FixSafety.NeedsALook, new TextEdit(where, joined))],
            }
            : Finding.Of(Descriptor, where, $"{where.Text} means {point}; a number takes a decimal point") with { Fixes = [withPoint] };
    }
}
