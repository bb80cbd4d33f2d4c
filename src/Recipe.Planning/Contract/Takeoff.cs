using System.Collections.Immutable;
using Recipe.Model;
using Recipe.Planning.Planners;
using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Planning;

/// <summary>Groups of the takeoff, in the order they are printed.</summary>
public enum TakeoffGroup
{
    /// <summary>Cloth, mat, veil.</summary>
    Reinforcement,

    /// <summary>Cores.</summary>
    Core,

    /// <summary>Laminating resin and hardener.</summary>
    Resin,

    /// <summary>Gel coats and surface coats.</summary>
    Coat,

    /// <summary>Adhesives and seam fillers.</summary>
    Adhesive,

    /// <summary>Inserts.</summary>
    Insert,

    /// <summary>Peel ply, films, felts, tape, hose.</summary>
    Bag,

    /// <summary>Release agents.</summary>
    Release,
}

/// <summary>An amount of something, in SI with the unit it is bought in.</summary>
/// <param name="Si">SI value (m2, kg, m, m3, or pieces).</param>
/// <param name="Unit">The unit papers show, or null for pieces.</param>
public readonly record struct Amount(double Si, Unit? Unit)
{
    /// <summary>The number in that unit.</summary>
    public double Value => Unit is null ? Si : Unit.FromSi(Si);
}

/// <summary>One line of the takeoff.</summary>
public sealed record TakeoffLine
{
    /// <summary>Its group.</summary>
    public required TakeoffGroup Group { get; init; }

    /// <summary>The material.</summary>
    public required Material Material { get; init; }

    /// <summary>What papers call the line; a hardener is a line of its own under its resin.</summary>
    public required string Label { get; init; }

    /// <summary>The label, behind that of a liquid the volume of what the parts need: <c>Laminating epoxy, slow, resin (271 mL)</c>.</summary>
    public string LabelWithVolume => LabelOf(Net.Value.Si);

    /// <summary>Density of a liquid, which is weighed; null for what is no liquid, and where it is not known.</summary>
    public Density? Density { get; init; }
    /// <summary>The name under which shelf and prices know it: that of the material, or that of its hardener where they know it.</summary>
    public string ShelfName { get => field ?? Material.Name; init; }

    /// <summary>Whether it is the hardener of a resin.</summary>
    public bool IsHardener { get; init; }

    /// <summary>What the parts need.</summary>
    public required Computed<Amount> Net { get; init; }

    /// <summary>Share added for waste, 0 to 1.</summary>
    public required Computed<double> Waste { get; init; }

    /// <summary>Net and waste.</summary>
    public required Computed<Amount> Gross { get; init; }

    /// <summary>On the shelf, or null when nothing is recorded or the amounts do not compare.</summary>
    public Amount? InStock { get; init; }

    /// <summary>The lines of the shelf that record it, with lot and expiry, as written.</summary>
    public ImmutableArray<StockLine> Shelf { get; init; } = [];

    /// <summary>Still to buy; null when the shelf is not recorded.</summary>
    public Amount? ToBuy { get; init; }

    /// <summary>The price used, or null.</summary>
    public Price? Price { get; init; }

    /// <summary>What the gross amount costs, in the currency of the price; null without a price.</summary>
    public decimal? Cost { get; init; }

    /// <summary>The label, behind that of a liquid the volume of another amount.</summary>
    /// <param name="si">The amount, SI.</param>
    public string LabelOf(double si) => Density is { } density ? $"{Label} ({Words.Millilitres(si / density.KilogramsPerCubicMeter)})" : Label;
}

/// <summary>What the materials cost.</summary>
/// <param name="Total">The sum of the lines with a price.</param>
/// <param name="Currency">ISO 4217 code.</param>
/// <param name="WithoutPrice">Number of lines without a price (or in another currency); the sum is a lower bound when it is not 0.</param>
public sealed record CostPlan(decimal Total, string Currency, int WithoutPrice);
