using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>Both signs side by side, where both at once are meant.</summary>
internal static class PlusMinusWithoutSlash
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1023",
        Name = "plus-minus-without-slash",
        Severity = Severity.Error,
        Title = "Plus and minus without the slash between them",
        Reason = "A sign that is read alone makes half of the plies, or of the tolerance, disappear.",
        Remedy = "Write +/- with its slash.",
        Source = "the language itself",
        BadExample = """
            part lid {
              target mass 140 g +- 10 g
            }
            """,
        GoodExample = """
            part lid {
              target mass 140 g +/- 10 g
            }
            """,
    };

    public static Finding Create(SourceSpan where) =>
        Finding.Of(Descriptor, where, $"{Quoted.Text(where.Text)} is written +/-") with
        {
            Fixes = [new Fix("Write +/-", FixSafety.Safe, new TextEdit(where, "+/-"))],
        };
}
