using UnitsNet;

namespace Recipe.RuleApi;

/// <summary>What is known of a core. A fact that is not known is null.</summary>
/// <param name="sheet">The facts behind it.</param>
/// <param name="index">Its place in its group, from 0.</param>
public sealed class CoreFacts(FactSheet sheet, int index) : ElementFacts(sheet, index)
{
    /// <summary>The name of the core.</summary>
    public string? Name => ReadWord("name");

    /// <summary>The name of its material.</summary>
    public string? Material => ReadWord("material");

    /// <summary>The family of its material.</summary>
    public string? Family => ReadWord("family");

    /// <summary>Its place in the stack, from 1 at the mould.</summary>
    public double? Position => ReadNumber("position");

    /// <summary>Its thickness.</summary>
    public Length? Thickness => ReadLength("thickness");

    /// <summary>Its density.</summary>
    public Density? Density => ReadDensity("density");

    /// <summary>The highest temperature that it stands.</summary>
    public Temperature? HeatLimit => ReadTemperature("heat-limit");

    /// <summary>The slope of its edge against the face; 90 degrees is a square edge.</summary>
    public Angle? Chamfer => ReadAngle("chamfer");

    /// <summary>The widest gap between two sheets.</summary>
    public Length? Gap => ReadLength("gap");

    /// <summary>The area that it covers.</summary>
    public Area? Area => ReadArea("area");

    /// <summary>Its mass.</summary>
    public Mass? Mass => ReadMass("mass");
}
