using UnitsNet;

namespace Recipe.RuleApi;

/// <summary>What is known of a coat in the mould. A fact that is not known is null.</summary>
/// <param name="sheet">The facts behind it.</param>
/// <param name="index">Its place in its group, from 0.</param>
public sealed class CoatFacts(FactSheet sheet, int index) : ElementFacts(sheet, index)
{
    /// <summary>The name of its material.</summary>
    public string? Material => ReadWord("material");

    /// <summary>Its chemistry: epoxy, polyester, vinylester or phenolic.</summary>
    public string? Chemistry => ReadWord("chemistry");

    /// <summary>Its place, from 1 at the mould.</summary>
    public double? Position => ReadNumber("position");

    /// <summary>The wet mass for each area.</summary>
    public AreaDensity? ArealWeight => ReadAreaDensity("areal-weight");

    /// <summary>How long it waits for what comes upon it.</summary>
    public Duration? Wait => ReadDuration("wait");
}
