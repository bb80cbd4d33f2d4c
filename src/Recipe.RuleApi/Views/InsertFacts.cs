using UnitsNet;

namespace Recipe.RuleApi;

/// <summary>What is known of an insert. A fact that is not known is null.</summary>
/// <param name="sheet">The facts behind it.</param>
/// <param name="index">Its place in its group, from 0.</param>
public sealed class InsertFacts(FactSheet sheet, int index) : ElementFacts(sheet, index)
{
    /// <summary>The name of the insert.</summary>
    public string? Name => ReadWord("name");

    /// <summary>The name of its material.</summary>
    public string? Material => ReadWord("material");

    /// <summary>What it is made of.</summary>
    public string? Stuff => ReadWord("stuff");

    /// <summary>Its place in the stack, from 1 at the mould.</summary>
    public double? Position => ReadNumber("position");

    /// <summary>How many pieces there are.</summary>
    public double? Pieces => ReadNumber("pieces");

    /// <summary>The mass of them all.</summary>
    public Mass? Mass => ReadMass("mass");
}
