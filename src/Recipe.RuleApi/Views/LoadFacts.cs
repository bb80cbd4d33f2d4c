using UnitsNet;

namespace Recipe.RuleApi;

/// <summary>What is known of a load that the part is to bear. A fact that is not known is null.</summary>
/// <param name="sheet">The facts behind it.</param>
/// <param name="index">Its place in its group, from 0.</param>
public sealed class LoadFacts(FactSheet sheet, int index) : ElementFacts(sheet, index)
{
    /// <summary>The name of the load.</summary>
    public string? Name => ReadWord("name");

    /// <summary>How it acts: along or across.</summary>
    public string? Way => ReadWord("way");

    /// <summary>How many times over the part bears it.</summary>
    public double? TimesOver => ReadNumber("times-over");

    /// <summary>How far a strip goes down in the middle.</summary>
    public Length? Sag => ReadLength("sag");
}
