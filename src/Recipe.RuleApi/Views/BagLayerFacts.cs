using UnitsNet;

namespace Recipe.RuleApi;

/// <summary>What is known of a layer of the bag. A fact that is not known is null.</summary>
/// <param name="sheet">The facts behind it.</param>
/// <param name="index">Its place in its group, from 0.</param>
public sealed class BagLayerFacts(FactSheet sheet, int index) : ElementFacts(sheet, index)
{
    /// <summary>What the layer is for: peel-ply, release-film, bleeder, breather, bag-film, flow-medium or caul.</summary>
    public string? Class => ReadWord("class");

    /// <summary>The name of its material.</summary>
    public string? Material => ReadWord("material");

    /// <summary>What it is made of.</summary>
    public string? Stuff => ReadWord("stuff");

    /// <summary>Its place, from 1 at the part.</summary>
    public double? Position => ReadNumber("position");

    /// <summary>How many sheets of it.</summary>
    public double? Sheets => ReadNumber("sheets");

    /// <summary>Whether it was used before.</summary>
    public bool? Reused => ReadYesNo("reused");

    /// <summary>Whether it carries a release coat.</summary>
    public bool? Coated => ReadYesNo("coated");

    /// <summary>How it is perforated: none, pin-prick, medium or open.</summary>
    public string? Perforation => ReadWord("perforation");

    /// <summary>The highest temperature that it stands.</summary>
    public Temperature? HeatLimit => ReadTemperature("heat-limit");

    /// <summary>The resin that it takes up.</summary>
    public Mass? Pickup => ReadMass("pickup");

    /// <summary>The area of all its sheets.</summary>
    public Area? Area => ReadArea("area");
}
