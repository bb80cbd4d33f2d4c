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

    /// <summary>The form of the material: fabric, ud, mat or veil.</summary>
    public string? Form => ReadWord("form");

    /// <summary>The name of its fibre.</summary>
    public string? Fibre => ReadWord("fibre");

    /// <summary>Its weave.</summary>
    public string? Weave => ReadWord("weave");

    /// <summary>Its place in the stack, from 1 at the mould; cores and inserts count.</summary>
    public double? Position => ReadNumber("position");

    /// <summary>How many times it is laid, or how many pieces of a patch there are.</summary>
    public double? Repeats => ReadNumber("repeats");

    /// <summary>Whether it is a patch.</summary>
    public bool? Patch => ReadYesNo("patch");

    /// <summary>Whether its fibres lie in no direction.</summary>
    public bool? Random => ReadYesNo("random");

    /// <summary>Its direction, or its warp's, counter-clockwise looking at the tool face.</summary>
    public Angle? Angle => ReadAngle("angle");

    /// <summary>Its orientation as it was written.</summary>
    public string? Orientation => ReadText("orientation");

    /// <summary>The dry mass for each area.</summary>
    public AreaDensity? ArealWeight => ReadAreaDensity("areal-weight");

    /// <summary>How far its pieces overlap.</summary>
    public Length? Overlap => ReadLength("overlap");

    /// <summary>How far it runs past the trim line.</summary>
    public Length? Trim => ReadLength("trim");

    /// <summary>How far inside the ply below it ends.</summary>
    public Length? Step => ReadLength("step");

    /// <summary>The resin in it when cured, by weight, from 0 to 1.</summary>
    public double? ResinContent => ReadNumber("resin-content");

    /// <summary>Its cured thickness, all repeats.</summary>
    public Length? Thickness => ReadLength("thickness");

    /// <summary>The area that it covers, all sides and repeats.</summary>
    public Area? Area => ReadArea("area");

    /// <summary>Its dry mass inside the trim line.</summary>
    public Mass? Mass => ReadMass("mass");

    /// <summary>How long wetting it out takes.</summary>
    public Duration? WetOutTime => ReadDuration("wet-out-time");

    /// <summary>The most join lines in a piece of it.</summary>
    public double? Joins => ReadNumber("joins");

    /// <summary>Which way its right side looks: up or down.</summary>
    public string? Face => ReadWord("face");
}
