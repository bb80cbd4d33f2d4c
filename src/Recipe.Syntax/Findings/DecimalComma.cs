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
        var parts = where.Text.Split(',');
        var point = string.Join('.', parts);
        var joined = string.Concat(parts);

        // Thousands stand in threes behind a number that does not begin with nought: 1,500 can be either, 0,3 cannot.
        var canBeThousands = parts[0] is [>= '1' and <= '9', ..] && parts[0].Length <= 3 && parts.Skip(1).All(part => part.Length == 3);
        var canBePoint = parts.Length == 2;
        var said = (canBePoint, canBeThousands) switch
        {
            (true, true) => $"{where.Text} can mean {point} or {joined}; a number takes a decimal point, and no mark between thousands",
            (false, true) => $"{where.Text} means {joined}; a number takes no mark between thousands",
            (true, false) => $"{where.Text} means {point}; a number takes a decimal point",
            _ => $"{where.Text} is no number; a number takes one decimal point, and no mark between thousands",
        };
        return Finding.Of(Descriptor, where, said) with
        {
            Fixes =
            [
                .. canBePoint ? [new Fix($"Write {point}", FixSafety.NeedsALook, new TextEdit(where, point))] : (Fix[])[],
                .. canBeThousands ? [new Fix($"Write {joined}", FixSafety.NeedsALook, new TextEdit(where, joined))] : (Fix[])[],
            ],
        };
    }
}
