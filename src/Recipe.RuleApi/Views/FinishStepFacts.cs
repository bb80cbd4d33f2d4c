namespace Recipe.RuleApi;

/// <summary>What is known of a line of finishing. A fact that is not known is null.</summary>
/// <param name="sheet">The facts behind it.</param>
/// <param name="index">Its place in its group, from 0.</param>
public sealed class FinishStepFacts(FactSheet sheet, int index) : ElementFacts(sheet, index)
{
    /// <summary>What is done: trim, wash, abrade, weigh.</summary>
    public string? Step => ReadWord("step");

    /// <summary>Its place, from 1.</summary>
    public double? Position => ReadNumber("position");

    /// <summary>The rest of the line, as written.</summary>
    public string? Text => ReadText("text");
}
