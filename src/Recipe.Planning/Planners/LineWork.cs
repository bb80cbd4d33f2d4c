using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning.Ledger;

namespace Recipe.Planning.Planners;

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

    public Known<Content>? Content { get; init; }

    public Num? NetResin { get; init; }

    public Num? CutResin { get; init; }

    public Num? Thickness { get; init; }

    /// <summary>Volume of the fibre inside the trim line, m3.</summary>
    public Num? FibreVolume { get; init; }

    public Num? WetOut { get; init; }

    /// <summary>Share added for waste when it is cut.</summary>
    public Num? Waste { get; init; }

    public ImmutableArray<PiecePlan> Pieces { get; init; } = [];

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
        Thickness = ledger.PublishLength(Thickness),
        WetOut = ledger.PublishTime(WetOut),
        Pieces = Pieces,
    };
}
