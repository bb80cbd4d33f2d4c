using Recipe.Text.Units;
using UnitsNet;

namespace Recipe.Model;

/// <summary>What a percentage of content is of.</summary>
public enum ContentBasis
{
    /// <summary>Resin as a share of the mass of the laminate.</summary>
    ResinByWeight,

    /// <summary>Fibre as a share of the volume of the laminate.</summary>
    FibreByVolume,
}

/// <summary>How much of a laminate is resin (or fibre), and of what.</summary>
/// <param name="Basis">Of what.</param>
/// <param name="Fraction">Between 0 and 1.</param>
public readonly record struct Content(ContentBasis Basis, double Fraction);

/// <summary>Whether a mix ratio is weighed or measured by volume.</summary>
public enum MixBasis
{
    /// <summary>By weight.</summary>
    Weight,

    /// <summary>By volume.</summary>
    Volume,
}

/// <summary>Parts of resin to parts of hardener (or peroxide).</summary>
/// <param name="Resin">Parts of resin, more than 0.</param>
/// <param name="Hardener">Parts of hardener, more than 0.</param>
/// <param name="Basis">Weighed or by volume; null when the author left it out (a finding says so).</param>
public readonly record struct MixRatio(double Resin, double Hardener, MixBasis? Basis);

/// <summary>A time that holds at a temperature and, for a pot, in a mass: <c>60 min at 23 degC in 100 g</c>.</summary>
/// <param name="Time">The time.</param>
/// <param name="At">The temperature it holds at.</param>
/// <param name="In">The mass mixed at once, or null.</param>
public readonly record struct TimeAt(Duration Time, Temperature At, Mass? In = null);

/// <summary>A temperature held for a time: <c>50 degC for 16 h</c>.</summary>
public readonly record struct Soak(Temperature At, Duration For);

/// <summary>A glass transition temperature, and the cure it belongs to when one is named.</summary>
public readonly record struct GlassTransition(Temperature Tg, Soak? After);

/// <summary>Which way a vacuum is counted.</summary>
public enum VacuumConvention
{
    /// <summary>How far below the air outside.</summary>
    BelowAmbient,

    /// <summary>Pressure counted from nothing.</summary>
    Absolute,
}

/// <summary>A vacuum level with its convention.</summary>
/// <param name="Value">The pressure, 0 or more.</param>
/// <param name="Convention">How it is counted; null when the author left it out (a finding says so).</param>
public readonly record struct VacuumLevel(Pressure Value, VacuumConvention? Convention);

/// <summary>Money for something.</summary>
/// <param name="Amount">Amount per one <see cref="Unit"/>.</param>
/// <param name="Currency">ISO 4217 code.</param>
/// <param name="Unit">The unit it buys: <c>m2</c>, <c>kg</c>, <c>m</c>, <c>L</c>; null for a piece.</param>
/// <param name="On">The day of the price, or null.</param>
public sealed record Price(decimal Amount, string Currency, Unit? Unit, DateOnly? On);

/// <summary>How the fibres of a ply lie.</summary>
public enum OrientationKind
{
    /// <summary>One direction.</summary>
    Single,

    /// <summary>Warp and weft, or two stitched layers.</summary>
    Pair,

    /// <summary>No direction: mat and veil.</summary>
    Random,
}

/// <summary>
/// Ply orientation in degrees, positive counter-clockwise looking at the tool face; for a pair the first is the warp.
/// </summary>
/// <param name="Kind">One direction, two, or none.</param>
/// <param name="First">First direction, degrees, -90 to 90.</param>
/// <param name="Second">Second direction, degrees; 0 unless a pair.</param>
public readonly record struct Orientation(OrientationKind Kind, double First = 0, double Second = 0)
{
    /// <summary>No direction.</summary>
    public static Orientation Random => new(OrientationKind.Random);

    /// <summary>As the trade writes it: <c>0/90</c>, <c>+/-45</c>, <c>30</c>, <c>random</c>.</summary>
    public override string ToString() => Kind switch
    {
        OrientationKind.Random => "random",
        OrientationKind.Single => FormattableString.Invariant($"{First}"),
        _ when First == -Second && First > 0 => FormattableString.Invariant($"+/-{First}"),
        _ => FormattableString.Invariant($"{First}/{Second}"),
    };
}
