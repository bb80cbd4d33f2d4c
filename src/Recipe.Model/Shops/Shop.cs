using System.Collections.Immutable;
using Recipe.Text;
using UnitsNet;

namespace Recipe.Model;

/// <summary>Which units papers show beside the author's own.</summary>
public enum UnitSystem
{
    /// <summary>Metric.</summary>
    Metric,

    /// <summary>US customary.</summary>
    Us,

    /// <summary>Both.</summary>
    Both,
}

/// <summary>Paper size.</summary>
public enum PaperSize
{
    /// <summary>210 by 297 mm.</summary>
    A4,

    /// <summary>8.5 by 11 in.</summary>
    Letter,
}

/// <summary>The shop: where it stands and what it has.</summary>
public sealed record Shop
{
    /// <summary>Its name.</summary>
    public required string Name { get; init; }

    /// <summary>Where its name is declared.</summary>
    public required SourceSpan Where { get; init; }

    /// <summary>Height above sea level.</summary>
    public Figure<Length>? Altitude { get; init; }

    /// <summary>Room temperature, or the lower end of its range.</summary>
    public Figure<Temperature>? Room { get; init; }

    /// <summary>Upper end of the room's range, or null.</summary>
    public Figure<Temperature>? RoomHigh { get; init; }

    /// <summary>Coldest the room gets at night.</summary>
    public Figure<Temperature>? Night { get; init; }

    /// <summary>Relative humidity, 0 to 1.</summary>
    public Figure<double>? Humidity { get; init; }

    /// <summary>Pairs of hands.</summary>
    public Figure<int>? Laminators { get; init; }

    /// <summary>Time per square metre and ply.</summary>
    public Figure<Pace>? Pace { get; init; }

    /// <summary>Free flow of the pump.</summary>
    public Figure<VolumeFlow>? Pump { get; init; }

    /// <summary>Lowest absolute pressure the pump reaches.</summary>
    public Figure<Pressure>? PumpUltimate { get; init; }

    /// <summary>Where the pump's oil mist goes.</summary>
    public Figure<PumpExhaust>? PumpExhaust { get; init; }

    /// <summary>Rise at which a switched pump starts again.</summary>
    public Figure<Pressure>? PumpBand { get; init; }

    /// <summary>Whether a valve or reservoir holds the bag when the pump stops.</summary>
    public Figure<bool>? CheckValve { get; init; }

    /// <summary>The day the gauge was last compared with another, or null.</summary>
    public DateOnly? GaugeChecked { get; init; }

    /// <summary>Where that stands.</summary>
    public SourceSpan? GaugeCheckedWhere { get; init; }

    /// <summary>Whether a second thermostat of its own cuts the heat off.</summary>
    public Figure<bool>? OvenCutOut { get; init; }

    /// <summary>The line of the oven.</summary>
    public SourceSpan? OvenWhere { get; init; }

    /// <summary>Temperature where materials are kept, or the lower end of its range.</summary>
    public Figure<Temperature>? StoreTemperature { get; init; }

    /// <summary>Upper end of that range, or null.</summary>
    public Figure<Temperature>? StoreTemperatureHigh { get; init; }

    /// <summary>Relative humidity where materials are kept, 0 to 1.</summary>
    public Figure<double>? StoreHumidity { get; init; }

    /// <summary>When the shop closes.</summary>
    public Figure<TimeOnly>? Closes { get; init; }

    /// <summary>What the shop does so that nobody is hurt, or null.</summary>
    public ShopSafety? Safety { get; init; }

    /// <summary>Resolution of the scale.</summary>
    public Figure<Mass>? ScaleResolution { get; init; }

    /// <summary>The hottest the oven, lamp or heater gets.</summary>
    public Figure<Temperature>? OvenLimit { get; init; }

    /// <summary>Resin lost in pot, brush and roller.</summary>
    public Figure<Mass>? Loss { get; init; }

    /// <summary>Resin content that the shop finds in its cloths.</summary>
    public ImmutableArray<ShopContent> Contents { get; init; } = [];

    /// <summary>Resin that consumables carry away in this shop.</summary>
    public ImmutableArray<ShopPickup> Pickups { get; init; } = [];

    /// <summary>ISO 4217 code, or null.</summary>
    public string? Currency { get; init; }

    /// <summary>Units of the papers.</summary>
    public UnitSystem Units { get; init; }

    /// <summary>Paper size.</summary>
    public PaperSize Paper { get; init; }

    /// <summary>What the shop finds in a cloth, or null.</summary>
    public Figure<Content>? ContentOf(string material, Process process)
    {
        foreach (var line in Contents)
        {
            if (line.Material == material && line.Process == process)
            {
                return line.Content;
            }
        }

        return null;
    }

    /// <summary>What a consumable carries away in this shop, or null.</summary>
    public Figure<AreaDensity>? PickupOf(string material)
    {
        foreach (var line in Pickups)
        {
            if (line.Material == material)
            {
                return line.Pickup;
            }
        }

        return null;
    }
}

/// <summary>What is on the shelf.</summary>
/// <param name="Material">Name of the material.</param>
/// <param name="Amount">SI amount (kg, m2, m, m3 or pieces), or null when the line has none.</param>
/// <param name="Written">The amount as written.</param>
/// <param name="Where">The line.</param>
public sealed record StockLine(string Material, StockAmount? Amount, string Written, SourceSpan Where)
{
    /// <summary>Lot of the tin or roll, or null.</summary>
    public string? Lot { get; init; }

    /// <summary>Length along the roll and width across it when it is an offcut, or null.</summary>
    public (Length Along, Length Across)? Offcut { get; init; }

    /// <summary>Day the amount was counted, or null when it is what came.</summary>
    public DateOnly? Counted { get; init; }

    /// <summary>Day it came, or null.</summary>
    public DateOnly? Received { get; init; }

    /// <summary>Day it was opened, or null.</summary>
    public DateOnly? Opened { get; init; }

    /// <summary>Day it expires, or null.</summary>
    public DateOnly? Expires { get; init; }
}

/// <summary>An amount on the shelf: mass, area, length, volume or pieces.</summary>
/// <param name="Si">SI value.</param>
/// <param name="Dimension">What it is an amount of.</param>
public readonly record struct StockAmount(double Si, Text.Units.Dimension Dimension);

/// <summary>A price line.</summary>
/// <param name="Material">Name of the material.</param>
/// <param name="Price">The price.</param>
/// <param name="Where">The line.</param>
public sealed record PriceLine(string Material, Figure<Price> Price, SourceSpan Where);
