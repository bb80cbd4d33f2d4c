using UnitsNet;

namespace Recipe.Model;

/// <summary>A fibre: what cloths are made of.</summary>
public sealed record Fibre : Material
{
    /// <summary>Modulus along the fibre.</summary>
    public Figure<Pressure>? Modulus { get; init; }

    /// <summary>Modulus across the fibre.</summary>
    public Figure<Pressure>? TransverseModulus { get; init; }

    /// <summary>Shear modulus.</summary>
    public Figure<Pressure>? ShearModulus { get; init; }

    /// <summary>Poisson's ratio along the fibre.</summary>
    public Figure<double>? Poisson { get; init; }

    /// <summary>Thermal expansion along the fibre.</summary>
    public Figure<CoefficientOfThermalExpansion>? Expansion { get; init; }

    /// <summary>Thermal expansion across the fibre.</summary>
    public Figure<CoefficientOfThermalExpansion>? TransverseExpansion { get; init; }
}

/// <summary>How the fibres of a reinforcement are held.</summary>
public enum ReinforcementForm
{
    /// <summary>Woven or stitched cloth.</summary>
    Fabric,

    /// <summary>All fibres one way.</summary>
    Unidirectional,

    /// <summary>Chopped strands, no direction.</summary>
    Mat,

    /// <summary>A light tissue, no direction, mostly resin when wet.</summary>
    Veil,
}

/// <summary>A cloth, tape, mat or veil: what a ply is cut from.</summary>
public sealed record Reinforcement : Material
{
    /// <summary>How its fibres are held.</summary>
    public required ReinforcementForm Form { get; init; }

    /// <summary>Its fibre, or null when not given.</summary>
    public Fibre? Fibre { get; init; }

    /// <summary>Plain, twill, satin, stitched: a word of the trade, or null.</summary>
    public string? Weave { get; init; }

    /// <summary>Dry mass per area.</summary>
    public Figure<AreaDensity>? ArealWeight { get; init; }

    /// <summary>Angle by which warp and weft can be sheared before the cloth wrinkles.</summary>
    public Figure<Angle>? LockingAngle { get; init; }

    /// <summary>Share of the dry mass that runs along the roll, 0 to 1.</summary>
    public Figure<double>? WarpShare { get; init; }

    /// <summary>Directions of a stitched cloth relative to the roll.</summary>
    public Figure<Orientation>? FibreAngles { get; init; }

    /// <summary>Usable width of the roll.</summary>
    public Figure<Length>? Width { get; init; }

    /// <summary>Length of a whole roll.</summary>
    public Figure<Length>? RollLength { get; init; }

    /// <summary>Resin content when laid by hand without a bag.</summary>
    public Figure<Content>? HandContent { get; init; }

    /// <summary>Resin content left under a bag.</summary>
    public Figure<Content>? BaggedContent { get; init; }

    /// <summary>Resin content after infusion.</summary>
    public Figure<Content>? InfusedContent { get; init; }

    /// <summary>Resin content of a prepreg as delivered.</summary>
    public Figure<Content>? PrepregContent { get; init; }

    /// <summary>Binder of a mat: powder, emulsion, stitched; or null.</summary>
    public string? Binder { get; init; }

    /// <summary>Resin that its finish suits: epoxy, polyester, any; or null.</summary>
    public string? Sizing { get; init; }

    /// <summary>How long a prepreg keeps out of the freezer.</summary>
    public Figure<Duration>? OutLife { get; init; }

    /// <summary>Time to wet out one square metre of one ply by one pair of hands.</summary>
    public Figure<Pace>? WetOutPace { get; init; }

    /// <summary>Cured ply thickness as its maker states it, to compare with the computed one.</summary>
    public Figure<Length>? Thickness { get; init; }

    /// <summary>Permeability in its plane once compacted under a bag, m2.</summary>
    public Figure<Area>? Permeability { get; init; }

    /// <summary>Strains that a cured layer of it is taken to bear; null when none is given.</summary>
    public LayerLimits? StrainLimits { get; init; }
}

/// <summary>
/// Strains that a cured layer is taken to bear, as shares of its length, in the direction of its yarns and across it; null where
/// nobody gave one. A layer without direction (mat, veil, core) bears <see cref="Stretch"/> and <see cref="Press"/> any way.
/// </summary>
public sealed record LayerLimits
{
    /// <summary>Pulled along its yarns.</summary>
    public Figure<double>? Stretch { get; init; }

    /// <summary>Pressed along its yarns.</summary>
    public Figure<double>? Press { get; init; }

    /// <summary>Pulled across its yarns.</summary>
    public Figure<double>? StretchAcross { get; init; }

    /// <summary>Pressed across its yarns.</summary>
    public Figure<double>? PressAcross { get; init; }

    /// <summary>Sheared in its plane, either way.</summary>
    public Figure<double>? Shear { get; init; }
}

/// <summary>Time that one pair of hands needs for one square metre of one ply.</summary>
/// <param name="PerSquareMetre">Time per square metre.</param>
public readonly record struct Pace(Duration PerSquareMetre);

/// <summary>How a core sheet is cut or drilled.</summary>
public enum CoreCut
{
    /// <summary>As it comes.</summary>
    Plain,

    /// <summary>Holes through it.</summary>
    Perforated,

    /// <summary>Grooves for resin.</summary>
    Grooved,

    /// <summary>Slit to bend.</summary>
    Slit,
}

/// <summary>A sheet between two skins.</summary>
public sealed record Core : Material
{
    /// <summary>Family: pvc-foam, balsa, honeycomb; or null.</summary>
    public string? Family { get; init; }

    /// <summary>Thickness of the sheet.</summary>
    public Figure<Length>? Thickness { get; init; }

    /// <summary>Length of a sheet.</summary>
    public Figure<Length>? SheetLength { get; init; }

    /// <summary>Width of a sheet.</summary>
    public Figure<Length>? SheetWidth { get; init; }

    /// <summary>Compressive strength at room temperature.</summary>
    public Figure<Pressure>? CompressiveStrength { get; init; }

    /// <summary>Resin that each face drinks.</summary>
    public Figure<AreaDensity>? ResinUptake { get; init; }

    /// <summary>Compressive or flexural modulus.</summary>
    public Figure<Pressure>? Modulus { get; init; }

    /// <summary>Shear modulus.</summary>
    public Figure<Pressure>? ShearModulus { get; init; }

    /// <summary>Thermal expansion.</summary>
    public Figure<CoefficientOfThermalExpansion>? Expansion { get; init; }

    /// <summary>How the sheet is cut or drilled.</summary>
    public Figure<CoreCut>? Cut { get; init; }

    /// <summary>Width of a honeycomb cell.</summary>
    public Figure<Length>? Cell { get; init; }

    /// <summary>Whether it was heated so that it gives off no more gas.</summary>
    public Figure<bool>? HeatStabilised { get; init; }

    /// <summary>Share of water by weight, 0 to 1.</summary>
    public Figure<double>? Moisture { get; init; }

    /// <summary>Strains that it is taken to bear; null when none is given.</summary>
    public LayerLimits? StrainLimits { get; init; }
}

/// <summary>Something laid in: a nut, a hard point.</summary>
public sealed record Insert : Material
{
    /// <summary>Mass of one.</summary>
    public Figure<Mass>? Mass { get; init; }

    /// <summary>What it is made of: aluminium, stainless; or null.</summary>
    public string? Stuff { get; init; }
}
