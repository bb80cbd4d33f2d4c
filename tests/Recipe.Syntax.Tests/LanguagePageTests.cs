using Recipe.TestKit;

namespace Recipe.Syntax.Tests;

/// <summary>What <c>grammar/language.md</c> shows can be read.</summary>
public sealed class LanguagePageTests
{
    public static TheoryData<int> Fences => [.. Enumerable.Range(0, Split().Count)];

    [Theory]
    [MemberData(nameof(Fences))]
    public void Every_example_is_read_without_findings(int index) => Read.Clean(Split()[index]);

    [Fact]
    public void There_are_examples() => Assert.True(Split().Count >= 6);

    // Three points on the page stand for what is left out there.
    private static List<string> Split() =>
    [
        .. Repository.Read("grammar/language.md").Split("```").Where((_, index) => index % 2 == 1)
            .Select(fence => fence[(fence.IndexOf('\n') + 1)..].Replace("...", "")),
    ];
}
