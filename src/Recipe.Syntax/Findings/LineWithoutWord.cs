using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A line that does not begin with a word.</summary>
internal static class LineWithoutWord
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1015",
        Name = "line-without-word",
        Severity = Severity.Error,
        Title = "A line that does not begin with a word",
        Reason = "The first word of a line says what its values are; without it they are anybody's guess.",
        Remedy = "Begin the line with the word that says what it gives.",
        Source = "the language itself",
        BadExample = """
            shop ours {
              250 m
            }
            """,
        GoodExample = """
            shop ours {
              altitude 250 m
            }
            """,
    };

    public static Finding Create(SourceSpan where) =>
        Finding.Of(Descriptor, where, $"a line begins with a word that says what it gives, not with {Quoted.Text(where.Text)}");
}
