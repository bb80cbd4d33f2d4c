namespace Recipe.RuleApi;

/// <summary>What is known of a step after demoulding. A fact that is not known is null.</summary>
/// <param name="sheet">The facts behind it.</param>
/// <param name="index">Its place in its group, from 0.</param>
public sealed class FinishStepFacts(FactSheet sheet, int index) : ElementFacts(sheet, index)
{
    /// <summary>What is done.</summary>
    public string? Step => ReadWord("step");

    /// <summary>Its place, from 1.</summary>
    public double? Position => ReadNumber("position");

    /// <summary>What was written about it.</summary>
    public string? Text => ReadText("text");
}
