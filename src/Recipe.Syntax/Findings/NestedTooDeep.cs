using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>Nested too deep.</summary>
internal static class NestedTooDeep
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1005",
        Name = "nested-too-deep",
        Severity = Severity.Error,
        Title = "Nested too deep",
        Reason = "No recipe needs it, and reading it could bring the program down.",
        Remedy = "Take out the surplus braces or parentheses.",
        Source = "the language itself",
        BadExample = """
            let a = ((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((((1))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))))
            """,
        GoodExample = """
            let a = 1
            """,
    };

    public static Finding Create(SourceSpan where) =>
        Finding.Of(Descriptor, where, $"braces and parentheses nest more than {Lexer.DeepestNesting} deep from here; what is inside is not read");
}
