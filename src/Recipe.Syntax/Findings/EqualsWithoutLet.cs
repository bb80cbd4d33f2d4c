using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>An equals sign on a line that is no let.</summary>
internal static class EqualsWithoutLet
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1019",
        Name = "equals-without-let",
        Severity = Severity.Error,
        Title = "An equals sign on a line that is no let",
        Reason = "A line gives its values without an equals sign; only a named value has one, and its line begins with let.",
        Remedy = "Begin the line with let to name a value, or take the equals sign out.",
        Source = "the language itself",
        BadExample = """
            lap = 20 mm
            """,
        GoodExample = """
            let lap = 20 mm
            """,
    };

    /// <param name="sign">The equals sign.</param>
    /// <param name="line">The word before it.</param>
    /// <param name="canBeLet">Whether nothing but the name stands before the sign, and no block behind it.</param>
    public static Finding Create(SourceSpan sign, SourceSpan line, bool canBeLet)
    {
        var takeOut = new Fix("Take the equals sign out", FixSafety.NeedsALook, new TextEdit(sign, ""));
        return Finding.Of(Descriptor, sign, "an equals sign stands only on a line that begins with let") with
        {
            Fixes = canBeLet
                ? [new Fix("Begin the line with let", FixSafety.NeedsALook, new TextEdit(new SourceSpan(line.Source, new TextSpan(line.Span.Start, 0)), "let ")), takeOut]
                : [takeOut],
        };
    }
}
