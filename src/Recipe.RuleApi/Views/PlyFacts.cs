using UnitsNet;

namespace Recipe.RuleApi;

/// <summary>What is known of a ply. A fact that is not known is null.</summary>
/// <param name="sheet">The facts behind it.</param>
/// <param name="index">Its place in its group, from 0.</param>
public sealed class PlyFacts(FactSheet sheet, int index) : ElementFacts(sheet, index)
{
    /// <summary>The name of the ply.</summary>
    public string? Name => ReadWord("name");

    /// <summary>The name of its material.</summary>
    public string? Material => ReadWord("material");

    /// <summary>The form of the material: cloth, tape, mat, veil.</summary>
    public string? Form => ReadWord("form");

    /// <summary>What its fibres are.</summary>
    public string? Fibre => ReadWord("fibre");

    /// <summary>Its weave.</summary>
    public string? Weave => ReadWord("weave");

    /// <summary>Its place in the stack, from 1 at the mould.</summary>
    public double? Position => ReadNumber("position");

    /// <summary>How many times it is laid.</summary>
    public double? Repeats => ReadNumber("repeats");

    /// <summary>Whether it is a patch.</summary>
    public bool? Patch => ReadYesNo("patch");

    /// <summary>Whether its fibres lie in no direction.</summary>
    public bool? Random => ReadYesNo("random");

    /// <summary>Its direction, counter-clockwise looking at the tool face.</summary>
    public Angle? Angle => ReadAngle("angle");

    /// <summary>Its orientation as it was written.</summary>
    public string? Orientation => ReadText("orientation");

    /// <summary>The dry mass for each area.</summary>
    public AreaDensity? ArealWeight => ReadAreaDensity("areal-weight");

    /// <summary>How far its pieces overlap.</summary>
    public Length? Overlap => ReadLength("overlap");

    /// <summary>What is left of it beyond the edge.</summary>
    public Length? Trim => ReadLength("trim");

    /// <summary>How far its edge lies behind that of its neighbour.</summary>
    public Length? Step => ReadLength("step");

    /// <summary>Its resin content by mass, from 0 to 1.</summary>
    public double? ResinContent => ReadNumber("resin-content");

    /// <summary>Its thickness.</summary>
    public Length? Thickness => ReadLength("thickness");

    /// <summary>Its area.</summary>
    public Area? Area => ReadArea("area");

    /// <summary>Its dry mass.</summary>
    public Mass? Mass => ReadMass("mass");

    /// <summary>How long wetting it out takes.</summary>
    public Duration? WetOutTime => ReadDuration("wet-out-time");

    /// <summary>How many joins it has.</summary>
    public double? Joins => ReadNumber("joins");

    /// <summary>The face of the part that it is: mould side or bag side.</summary>
    public string? Face => ReadWord("face");
}
