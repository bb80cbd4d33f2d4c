using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning.Ledger;

namespace Recipe.Planning.Planners;

/// <summary>What a ply is made of.</summary>
/// <param name="Weight">Dry cloth, kg/m2.</param>
/// <param name="Solid">Density of its fibre, or the default for it, kg/m3.</param>
/// <param name="Cured">Density of the cured resin, kg/m3.</param>
/// <param name="Layers">How many lie on each other.</param>
internal sealed record PlyStuff(Num Weight, Num Solid, Num Cured, int Layers);

/// <summary>One line of the stack while the plan is made, SI numbers throughout; null is unknown.</summary>
internal sealed record LineWork
{
    public required StackItem Item { get; init; }

    /// <summary>Ply number from the mould; 0 for cores and inserts.</summary>
    public required int Number { get; init; }

    /// <summary>Whether it covers the whole surface.</summary>
    public bool CoversAll { get; init; }

    public Num? NetArea { get; init; }

    public Num? CutArea { get; init; }

    public Num? NetMass { get; init; }

    public Num? CutMass { get; init; }

    /// <summary>What the content and the thickness of a ply are worked out from; null for cores and inserts, and where it is not known.</summary>
    public PlyStuff? Stuff { get; init; }

    public Known<Content>? Content { get; init; }

    /// <summary>Whether the content is the one laid, from which the bag still takes its share.</summary>
    public bool IsAsLaid { get; init; }

    public Num? NetResin { get; init; }

    public Num? CutResin { get; init; }

    public Num? LaidResin { get; init; }

    public Num? Thickness { get; init; }

    /// <summary>Volume of the fibre inside the trim line, m3.</summary>
    public Num? FibreVolume { get; init; }

    public Num? WetOut { get; init; }

    /// <summary>Share added for waste when it is cut.</summary>
    public Num? Waste { get; init; }

    public ImmutableArray<PiecePlan> Pieces { get; init; } = [];

    /// <summary>The same ply with so much resin in it, kg/m2: masses inside the trim line and as cut, thickness.</summary>
    public LineWork Holding(Num? resinPerArea) => this with
    {
        NetResin = NetArea * resinPerArea,
        CutResin = CutArea * resinPerArea,
        Thickness = Stuff is { } stuff ? ((stuff.Weight / stuff.Solid) + (resinPerArea / stuff.Cured)) * stuff.Layers : null,
    };

    public StackPlan Publish(PlanLedger ledger) => new()
    {
        Item = Item,
        Number = Number,
        NetArea = ledger.PublishArea(NetArea),
        CutArea = ledger.PublishArea(CutArea),
        NetMass = ledger.PublishMass(NetMass),
        CutMass = ledger.PublishMass(CutMass),
        Content = ledger.Publish(Content),
        NetResin = ledger.PublishMass(NetResin),
        CutResin = ledger.PublishMass(CutResin),
        LaidResin = ledger.PublishMass(LaidResin),
        Thickness = ledger.PublishLength(Thickness),
        WetOut = ledger.PublishTime(WetOut),
        Pieces = Pieces,
    };
}
