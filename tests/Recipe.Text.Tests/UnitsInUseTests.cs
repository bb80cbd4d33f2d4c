using Recipe.Text.Units;

namespace Recipe.Text.Tests;

/// <summary>Which units an author uses is told from what is measured, not from remarks, texts or names.</summary>
public sealed class UnitsInUseTests
{
    [Theory]
    [InlineData("flange 2 in", true, true)]
    [InlineData("flange 2in", true, true)]
    [InlineData("flange 50 mm # 2 in", false, false)]
    [InlineData("title \"2 in\"", false, false)]
    [InlineData("cloth-2 in", false, false)]
    [InlineData("areal-weight 5 oz/yd2", false, false)]
    [InlineData("flange 2 in; trim 15 mm", true, false)]
    [InlineData("rise -2 in", true, true)]
    [InlineData("title \"a \\\" 2 in\"", false, false)]
    [InlineData("# 5 mm\rflange 2 in", true, true)]
    public void Only_what_is_measured_counts(string text, bool inches, bool alone)
    {
        var units = UnitsInUse.Of(new SourceText("test.recipe", text));
        Assert.Equal(inches, units.Uses("in"));
        Assert.Equal(alone, units.AreUs(DimensionNames.Length));
    }
}
