using CsCheck;

namespace Recipe.Text.Tests;

public sealed class SpellingTests
{
    private static readonly string[] Words = ["breather", "bleeder", "peel-ply", "bag-film", "hose", "port", "resin"];

    // Optimal string alignment: each insertion, deletion, substitution and swap of neighbours costs one (Damerau 1964).
    [Theory]
    [InlineData("", "", 0)]
    [InlineData("", "abc", 3)]
    [InlineData("abc", "acb", 1)]
    [InlineData("kitten", "sitting", 3)]
    [InlineData("ca", "abc", 3)]
    [InlineData("Breather", "breather", 0)]
    public void The_distance_counts_slips(string one, string other, int distance) => Assert.Equal(distance, Spelling.Distance(one, other));

    [Theory]
    [InlineData("braether", "breather")]
    [InlineData("beather", "breather")]
    [InlineData("peelply", "peel-ply")]
    [InlineData("hoes", "hose")]
    [InlineData("hxxx", null)]
    [InlineData("", null)]
    [InlineData("varnish", null)]
    public void The_nearest_word_is_found_within_reason(string word, string? nearest) => Assert.Equal(nearest, Spelling.Nearest(word, Words));

    [Fact]
    public void The_answer_does_not_depend_on_the_order() =>
        Gen.Select(Gen.Shuffle(Words), Gen.String[Gen.Char['a', 'z'], 0, 9]).Sample(
            (shuffled, word) => Assert.Equal(Spelling.Nearest(word, Words), Spelling.Nearest(word, shuffled)),
            iter: 1000);

    [Fact]
    public void The_distance_is_the_same_both_ways_and_no_more_than_the_longer_word() =>
        Gen.Select(Gen.String[Gen.Char['a', 'd'], 0, 8], Gen.String[Gen.Char['a', 'd'], 0, 8]).Sample(
            (one, other) =>
            {
                Assert.Equal(Spelling.Distance(one, other), Spelling.Distance(other, one));
                Assert.InRange(Spelling.Distance(one, other), Math.Abs(one.Length - other.Length), Math.Max(one.Length, other.Length));
            },
            iter: 2000);
}
