using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Syntax.Findings;

/// <summary>A block without a word before it.</summary>
internal static class HeadlessBlock
{
    public static readonly FindingDescriptor Descriptor = new()
    {
        Code = "RC1014",
        Name = "headless-block",
        Severity = Severity.Error,
        Title = "A block without a word before it",
        Reason = "The word before a block says what its lines are about; without it none of them can be understood.",
        Remedy = "Write what the block is about before its brace, or take the braces out.",
        Source = "the language itself",
        BadExample = """
            {
              altitude 250 m
            }
            """,
        GoodExample = """
            shop ours {
              altitude 250 m
            }
            """,
    };

    public static Finding Create(SourceSpan brace) => Finding.Of(Descriptor, brace, "no word stands before this block, so nobody knows what it is about");
}
