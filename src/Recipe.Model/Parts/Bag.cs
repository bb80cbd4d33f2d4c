using System.Collections.Immutable;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>The bag, from the part outwards.</summary>
public sealed record Bag
{
    /// <summary>Where the block stands: its head word.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>The layers, the one next to the laminate first.</summary>
    public ImmutableArray<BagLayer> Layers { get; init; } = [];

    /// <summary>Sealant tape, or null when the recipe names none.</summary>
    public Placed<Tape>? SealantTape { get; init; }

    /// <summary>Ports, in order.</summary>
    public ImmutableArray<Placed<Fitting>> Ports { get; init; } = [];

    /// <summary>Hose, or null.</summary>
    public Placed<Fitting>? Hose { get; init; }

    /// <summary>Catch pot, or null.</summary>
    public Placed<Fitting>? CatchPot { get; init; }

    /// <summary>Where the gauge reads, in the author's words, or null.</summary>
    public string? GaugeAt { get; init; }

    /// <summary>The line of the gauge, or null.</summary>
    public SourceSpan? GaugeWhere { get; init; }

    /// <summary>Number of pleats, or null.</summary>
    public Figure<int>? Pleats { get; init; }

    /// <summary>Whether the bag goes round the whole mould.</summary>
    public bool IsEnvelope { get; init; }

    /// <summary>The line that says so, or null.</summary>
    public SourceSpan? EnvelopeWhere { get; init; }

    /// <summary>Time to close the bag, as the author plans it.</summary>
    public Figure<Duration>? Time { get; init; }
}

/// <summary>One layer of the bag.</summary>
public sealed record BagLayer
{
    /// <summary>What it does.</summary>
    public required LayerClass Class { get; init; }

    /// <summary>The material, the author's or the book's default for the class.</summary>
    public required Consumable Material { get; init; }

    /// <summary>Whether the author named only the class.</summary>
    public bool ChosenByDefault { get; init; }

    /// <summary>The line.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>Layers of it; 1 when not given.</summary>
    public int Count { get; init; } = 1;

    /// <summary>How open it is: the line's word, or the material's figure; null when neither says.</summary>
    public Figure<Perforation>? Perforation { get; init; }

    /// <summary>Whether it was used before.</summary>
    public bool Reused { get; init; }

    /// <summary>How much smaller than the layer below, all round; of a flow medium, how far inside the edge of the plies it ends.</summary>
    public Figure<Length>? Smaller { get; init; }

    /// <summary>How far past the ply edge.</summary>
    public Figure<Length>? Beyond { get; init; }
}

/// <summary>A thing of the bag that is not a layer.</summary>
/// <param name="Material">What it is.</param>
/// <param name="ChosenByDefault">Whether the author named only the class.</param>
/// <param name="At">Where it sits, in the author's words, or null.</param>
/// <param name="Where">The line.</param>
public sealed record Placed<T>(T Material, bool ChosenByDefault, string? At, SourceSpan Where)
    where T : Material
{
    /// <summary>What a port sits on; null when not said, and for other things.</summary>
    public PortSeat? Sits { get; init; }
}

/// <summary>What a port sits on.</summary>
public enum PortSeat
{
    /// <summary>A pad or strip of breather.</summary>
    Breather,

    /// <summary>The part, inside the trim line.</summary>
    Part,

    /// <summary>The bare flange.</summary>
    Flange,

    /// <summary>The feed or vacuum line of an infusion.</summary>
    Line,
}
