namespace Recipe.RuleApi;

/// <summary>A view over one element of a part: a ply, a layer of the bag, a pot, a step of the cure.</summary>
public abstract class ElementFacts : Facts
{
    private protected ElementFacts(FactSheet sheet, int index)
        : base(sheet) => Index = index;

    /// <summary>The word of its group: <c>ply</c>, <c>bag-layer</c>, <c>cure-step</c>.</summary>
    public string Group => Sheet.Kind;

    /// <summary>Its place in its group, from 0.</summary>
    public int Index { get; }
}
