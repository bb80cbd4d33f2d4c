using UnitsNet;

namespace Recipe.Model;

/// <summary>What a mould is made of.</summary>
public sealed record MouldMaterial : Material
{
    /// <summary>What kind of stuff: polystyrene-foam, plaster; or null.</summary>
    public string? Family { get; init; }

    /// <summary>Resin it is laid with, when it is laid up.</summary>
    public Chemistry Chemistry { get; init; }

    /// <summary>Thermal expansion.</summary>
    public Figure<CoefficientOfThermalExpansion>? Expansion { get; init; }

    /// <summary>Whether air comes through it.</summary>
    public bool? Porous { get; init; }

    /// <summary>Whether resin does not stick to it (polypropylene, silicone).</summary>
    public bool? SelfReleasing { get; init; }
}

/// <summary>How a release agent works.</summary>
public enum ReleaseKind
{
    /// <summary>Paste or liquid wax, buffed.</summary>
    Wax,

    /// <summary>A liquid that dries to a film (PVA).</summary>
    LiquidFilm,

    /// <summary>A bonded release that stands several pulls.</summary>
    SemiPermanent,

    /// <summary>A sheet, film or tape.</summary>
    Sheet,
}

/// <summary>What keeps the part from sticking.</summary>
public sealed record ReleaseAgent : Material
{
    /// <summary>How it works.</summary>
    public ReleaseKind? Kind { get; init; }

    /// <summary>Whether it holds silicone; null when not said.</summary>
    public bool? HoldsSilicone { get; init; }

    /// <summary>Pulls it usually stands before it is put on again.</summary>
    public Figure<int>? Lasts { get; init; }

    /// <summary>Usual number of coats on a new mould.</summary>
    public Figure<int>? Coats { get; init; }

    /// <summary>Time between coats.</summary>
    public Figure<Duration>? Wait { get; init; }

    /// <summary>Time from the last coat to the lay-up.</summary>
    public Figure<Duration>? Dry { get; init; }

    /// <summary>Area that a litre covers, in square metres per litre.</summary>
    public Figure<double>? CoveragePerLitre { get; init; }
}
