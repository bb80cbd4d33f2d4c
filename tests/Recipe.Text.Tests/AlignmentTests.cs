using CsCheck;

namespace Recipe.Text.Tests;

/// <summary>Pairs rise on both sides, pair equal elements, and are as many as can be.</summary>
public sealed class AlignmentTests
{
    private static readonly Gen<string> Letters = Gen.Char['a', 'd'].Array[0, 9].Select(letters => new string(letters));

    // Cormen, Leiserson, Rivest and Stein, "Introduction to Algorithms", section on the longest common subsequence: ABCBDAB and BDCABA have
    // one of length 4 (from memory).
    [Theory]
    [InlineData("ABCBDAB", "BDCABA", 4)]
    [InlineData("", "ABC", 0)]
    [InlineData("ABC", "ABC", 3)]
    [InlineData("ABC", "XYZ", 0)]
    public void It_finds_as_many_pairs_as_the_textbook(string left, string right, int pairs) =>
        Assert.Equal(pairs, Alignment.Of([.. left], [.. right]).Length);

    [Fact]
    public void It_finds_as_many_pairs_as_trying_all_subsequences() => Gen.Select(Letters, Letters).Sample(
        (left, right) =>
        {
            var pairs = Alignment.Of([.. left], [.. right]);
            Assert.All(pairs, pair => Assert.Equal(left[pair.Left], right[pair.Right]));
            Assert.All(pairs.Zip(pairs.Skip(1)), next => Assert.True(next.First.Left < next.Second.Left && next.First.Right < next.Second.Right));
            Assert.Equal(LongestByTrial(left, right), pairs.Length);
        },
        iter: 300);

    [Fact]
    public void Sequences_too_long_to_compare_each_with_each_are_paired_by_what_occurs_once()
    {
        var left = Enumerable.Range(0, 6000).ToArray();
        var right = left.Reverse().Take(3000).Concat(left.Take(3000)).ToArray();
        var pairs = Alignment.Of(left, right);
        Assert.All(pairs, pair => Assert.Equal(left[pair.Left], right[pair.Right]));
        Assert.Equal(3000, pairs.Length);
    }

    private static int LongestByTrial(string left, string right)
    {
        var best = 0;
        for (var mask = 0; mask < 1 << left.Length; mask++)
        {
            var chosen = left.Where((_, i) => (mask >> i & 1) == 1).ToArray();
            if (chosen.Length > best && IsWithin(chosen, right))
            {
                best = chosen.Length;
            }
        }

        return best;
    }

    private static bool IsWithin(char[] chosen, string text)
    {
        var at = 0;
        foreach (var c in text)
        {
            at += at < chosen.Length && chosen[at] == c ? 1 : 0;
        }

        return at == chosen.Length;
    }
}
