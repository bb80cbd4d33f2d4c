using Recipe.Text;

namespace Recipe.Model;

/// <summary>Where a pump's oil mist goes.</summary>
public enum PumpExhaust
{
    /// <summary>Into the room.</summary>
    Indoors,

    /// <summary>Out of the room.</summary>
    Outdoors,
}

/// <summary>How cured laminate is cut and sanded.</summary>
public enum DustControl
{
    /// <summary>Wet.</summary>
    Wet,

    /// <summary>With extraction at the tool.</summary>
    Extracted,

    /// <summary>Dry, without extraction.</summary>
    Dry,
}

/// <summary>Where mixed resin that is left over goes.</summary>
public enum LeftoverPlace
{
    /// <summary>Spread thin in a tray.</summary>
    Tray,

    /// <summary>Outdoors, on stone or in sand.</summary>
    Outdoors,

    /// <summary>Into a steel bucket of water.</summary>
    Water,

    /// <summary>Into the bin.</summary>
    Bin,
}

/// <summary>What spills are taken up with.</summary>
public enum SpillBinder
{
    /// <summary>Sand or clay granules.</summary>
    Mineral,

    /// <summary>Rags or paper.</summary>
    Rags,

    /// <summary>Sawdust.</summary>
    Sawdust,
}

/// <summary>Where peroxide is kept.</summary>
public enum PeroxidePlace
{
    /// <summary>Cool, alone, in its own vented bottle.</summary>
    Apart,

    /// <summary>On one shelf with the accelerator.</summary>
    WithAccelerator,

    /// <summary>In the sun or beside a heater.</summary>
    Warm,
}

/// <summary>What the shop says it does so that nobody is hurt; null where it does not say.</summary>
public sealed record ShopSafety
{
    /// <summary>Where the block stands.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>Which gloves, in words.</summary>
    public string? Gloves { get; init; }

    /// <summary>The line of the gloves.</summary>
    public SourceSpan? GlovesWhere { get; init; }

    /// <summary>Which mask, in words.</summary>
    public string? Respirator { get; init; }

    /// <summary>How vapour leaves the room, in words.</summary>
    public string? Ventilation { get; init; }

    /// <summary>How cured laminate is cut and sanded.</summary>
    public Figure<DustControl>? Dust { get; init; }

    /// <summary>Where mixed resin that is left over goes.</summary>
    public Figure<LeftoverPlace>? Leftover { get; init; }

    /// <summary>What spills are taken up with.</summary>
    public Figure<SpillBinder>? Spills { get; init; }

    /// <summary>Where peroxide is kept.</summary>
    public Figure<PeroxidePlace>? Peroxide { get; init; }

    /// <summary>Whether solvents are used away from heat and sparks.</summary>
    public Figure<bool>? SolventsApart { get; init; }

    /// <summary>Whether power tools have enclosed motors, or run on air.</summary>
    public Figure<bool>? ToolsEnclosed { get; init; }
}
