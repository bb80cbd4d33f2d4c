using Recipe.Syntax.Parsing;
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
        BadExample = "let a = " + new string('(', SymbolReader.Limit + 1) + "1" + new string(')', SymbolReader.Limit + 1) + "\n",
        GoodExample = """
            let a = 1
            """,
    };

    public static Finding Create(SourceSpan where) =>
        Finding.Of(Descriptor, where, $"more than {SymbolReader.Limit} braces, parentheses or signs of one expression lie inside each other here; what follows in it is not read");
}
