using UnitsNet;

namespace Recipe.Planning.Tests;

/// <summary>In which steps a weight is printed. By hand.</summary>
public class ScaleStepsTests
{
    /// <summary>Whatever a shop says of its scale, a weight can be shown: a step that six decimals do not show is none to divide by.</summary>
    [Theory]
    [InlineData("0.5 g", 92.26, "92.5")]
    [InlineData("0.0000001 g", 92.26, "92.26")]
    public void AStepIsNeverNothing(string scale, double grams, string shown)
    {
        var model = Corpus.ModelOf($"shop ours {{ scale {scale} }}", null);
        var steps = ScaleSteps.Of(model.Shop);
        Assert.True(steps.Step > 0);
        Assert.Equal(decimal.Parse(shown, System.Globalization.CultureInfo.InvariantCulture), steps.Shown(Mass.FromGrams(grams)));
    }
}
