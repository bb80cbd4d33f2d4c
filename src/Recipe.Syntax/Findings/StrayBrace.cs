using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A closing brace without a block.</summary>
internal static class StrayBrace
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1007",
        Name = "stray-brace",
        Severity = Severity.Error,
        Title = "A closing brace without a block",
        Reason = "One brace too many usually means that a block above was closed too early.",
        Remedy = "Take it out, or look where the block above was meant to end.",
        Source = "the language itself",
        BadExample = """
            let lap = 20 mm
            }
            """,
        GoodExample = """
            let lap = 20 mm
            """,
    };

    public static Finding Create(SourceSpan where) =>
        Finding.Of(Descriptor, where, "this closing brace closes no block") with
        {
            Fixes = [new Fix("Take the brace out", FixSafety.NeedsALook, new TextEdit(where, ""))],
        };
}
