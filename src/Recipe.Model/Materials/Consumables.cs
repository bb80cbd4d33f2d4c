using UnitsNet;

namespace Recipe.Model;

/// <summary>What a layer of the bag does.</summary>
public enum LayerClass
{
    /// <summary>Comes off and leaves a texture to bond to.</summary>
    PeelPly,

    /// <summary>Keeps what is above it from sticking.</summary>
    ReleaseFilm,

    /// <summary>Takes resin.</summary>
    Bleeder,

    /// <summary>Takes air.</summary>
    Breather,

    /// <summary>Closes the bag.</summary>
    BagFilm,

    /// <summary>Carries resin in an infusion.</summary>
    FlowMedium,

    /// <summary>A pressure plate or sheet.</summary>
    Caul,
}

/// <summary>How open a release film is.</summary>
public enum Perforation
{
    /// <summary>Solid.</summary>
    None,

    /// <summary>Pin pricks, wide pitch.</summary>
    PinPrick,

    /// <summary>Medium.</summary>
    Medium,

    /// <summary>Open.</summary>
    Open,
}

/// <summary>A sheet that is laid over the part and thrown away (or kept, a caul).</summary>
public sealed record Consumable : Material
{
    /// <summary>What it does.</summary>
    public required LayerClass Class { get; init; }

    /// <summary>Whether a recipe that names only the class gets this one.</summary>
    public bool IsDefault { get; init; }

    /// <summary>Dry mass per area.</summary>
    public Figure<AreaDensity>? ArealWeight { get; init; }

    /// <summary>Width of the roll.</summary>
    public Figure<Length>? Width { get; init; }

    /// <summary>Length of a whole roll.</summary>
    public Figure<Length>? RollLength { get; init; }

    /// <summary>Thickness.</summary>
    public Figure<Length>? Thickness { get; init; }

    /// <summary>Resin it usually carries away, per area.</summary>
    public Figure<AreaDensity>? ResinPickup { get; init; }

    /// <summary>Resin it holds when soaked, per area.</summary>
    public Figure<AreaDensity>? Capacity { get; init; }

    /// <summary>How open it is (release films).</summary>
    public Figure<Perforation>? Perforation { get; init; }

    /// <summary>Resin its holes let through, per area.</summary>
    public Figure<AreaDensity>? Bleed { get; init; }

    /// <summary>In-plane permeability (flow media), m2.</summary>
    public Figure<Area>? Permeability { get; init; }

    /// <summary>What it is made of: nylon, polyester, polyethylene; or null.</summary>
    public string? Stuff { get; init; }

    /// <summary>Whether it carries a release coat (peel plies).</summary>
    public bool? Coated { get; init; }
}

/// <summary>A tape: sealant or flash tape.</summary>
public sealed record Tape : Material
{
    /// <summary>Whether it seals the bag (or else holds things in place inside).</summary>
    public required bool Seals { get; init; }

    /// <summary>Whether a recipe that names only the class gets this one.</summary>
    public bool IsDefault { get; init; }

    /// <summary>Width.</summary>
    public Figure<Length>? Width { get; init; }

    /// <summary>Length of a roll.</summary>
    public Figure<Length>? RollLength { get; init; }
}

/// <summary>What a fitting is.</summary>
public enum FittingKind
{
    /// <summary>Vacuum hose.</summary>
    Hose,

    /// <summary>Fitting through the bag.</summary>
    Port,

    /// <summary>Pot that keeps resin out of the pump.</summary>
    CatchPot,
}

/// <summary>Hose, port or catch pot.</summary>
public sealed record Fitting : Material
{
    /// <summary>What it is.</summary>
    public required FittingKind Kind { get; init; }

    /// <summary>Whether a recipe that names only the class gets this one.</summary>
    public bool IsDefault { get; init; }

    /// <summary>Inner diameter of a hose.</summary>
    public Figure<Length>? InnerDiameter { get; init; }

    /// <summary>Length of a hose from bag to pump.</summary>
    public Figure<Length>? Length { get; init; }

    /// <summary>Whether a hose holds its shape under full vacuum and heat; null when not said.</summary>
    public bool? Reinforced { get; init; }

    /// <summary>Volume of a pot.</summary>
    public Figure<Volume>? Volume { get; init; }
}
