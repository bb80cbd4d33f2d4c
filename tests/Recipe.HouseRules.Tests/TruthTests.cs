namespace Recipe.HouseRules.Tests;

/// <summary>The strong logic of three values: S. C. Kleene, On notation for ordinal numbers, 1938, and Introduction to Metamathematics, 1952, section 64 (tables from memory).</summary>
public class TruthTests
{
    [Theory]
    [InlineData(true, true, true, true)]
    [InlineData(true, false, false, true)]
    [InlineData(true, null, null, true)]
    [InlineData(false, true, false, true)]
    [InlineData(false, false, false, false)]
    [InlineData(false, null, false, null)]
    [InlineData(null, true, null, true)]
    [InlineData(null, false, false, null)]
    [InlineData(null, null, null, null)]
    public void Tables(bool? left, bool? right, bool? and, bool? or)
    {
        Assert.Equal(and, Truth(left).And(Truth(right)).Answer);
        Assert.Equal(or, Truth(left).Or(Truth(right)).Answer);
        Assert.Equal(!left, Truth(left).Not().Answer);
    }

    [Fact]
    public void What_does_not_settle_the_answer_is_no_ground_of_it()
    {
        var assumed = Truth(true) with { Grounds = Grounds.Of(new FactValue { Yes = true, Assumed = "a guess" }) };
        Assert.Empty(Truth(false).And(assumed).Grounds.Words);
        Assert.Single(Truth(true).And(assumed).Grounds.Words);
        Assert.Empty(Truth(true).Or(assumed).Grounds.Words);
    }

    private static RuleTruth Truth(bool? answer) => answer is { } known ? RuleTruth.Of(known) : RuleTruth.Unknown("a fact");
}
