using Recipe.Semantics.Values;
using Recipe.Text.Units;

namespace Recipe.Semantics.Reading;

/// <summary>
/// The air over a shop, for what is said of a vacuum while it is read. The plan has its own (<c>Atmosphere</c> of Recipe.Engineering), which this layer may
/// not know; a test holds both to the table of the standard.
/// </summary>
/// <param name="Altitude">Height above the sea in m; null where the shop says none, and the sea is meant.</param>
internal sealed record StandardAir(double? Altitude)
{
    // ISO 2533: 101325 Pa and 288.15 K at the sea, 0.0065 K/m, g / (R x lapse) = 5.25588.
    private const double SeaLevel = 101325;

    // Good pumps reach 98 % of the air (common practice); the weather lifts a barometer by 2 % (common practice).
    private const double AlmostAll = 0.98;
    private const double FineDay = 1.02;

    /// <summary>The standard atmosphere at the sea, Pa.</summary>
    public static StandardAir AtTheSea { get; } = new((double?)null);

    /// <summary>Its pressure, Pa.</summary>
    public double Pascals => SeaLevel * Math.Pow(1 - (0.0065 * (Altitude ?? 0) / 288.15), 5.25588);

    /// <summary>Where it is measured: <c>at sea level</c>, <c>at 1500 m</c>.</summary>
    public string Place => Altitude is { } height and not 0 ? $"at {Numbers.Format(Math.Round(height))} m" : "at sea level";

    /// <summary>Whether a pump can draw so much below it, Pa. Where nobody says how high the shop lies, a high barometer is let pass.</summary>
    public bool CanDraw(double below) => below <= Pascals * (Altitude is null ? FineDay : AlmostAll);

    /// <summary>What a good pump draws below it: nine tenths (common practice), in a unit, rounded down to two figures.</summary>
    public string GoodVacuum(Unit unit)
    {
        var number = unit.FromSi(Pascals * 0.9);
        var step = Math.Pow(10, Math.Floor(Math.Log10(number)) - 1);
        return Shown(unit.ToSi(Math.Floor(number / step) * step), unit, "G3");
    }

    /// <summary>
    /// What is left, absolute, where so much is drawn: of the air over the shop, from which its gauge counts, and of the standard atmosphere, from which a
    /// maker's sheet does. At the sea the two are one; where there is less air than that, there is none.
    /// </summary>
    /// <param name="below">How much is drawn, Pa.</param>
    /// <param name="unit">The unit to say it in.</param>
    public IEnumerable<(string Absolute, string Air)> LeftBelow(double below, Unit unit) => CountedFrom()
        .Where(air => air.Pascals > below)
        .Select(air => (Shown(air.Pascals - below, unit, "G3"), air.Said(unit)));

    /// <summary>The airs that a level below ambient may be counted from, in words.</summary>
    /// <param name="unit">The unit to say them in.</param>
    public string SaidFrom(Unit unit) => string.Join(" and ", CountedFrom().Select(air => air.Said(unit)));

    /// <summary>A pressure in a unit, with so many figures as <paramref name="figures"/> says.</summary>
    public static string Shown(double pascals, Unit unit, string figures)
    {
        var invariant = System.Globalization.CultureInfo.InvariantCulture;
        return $"{Numbers.Format(double.Parse(unit.FromSi(pascals).ToString(figures, invariant), invariant))} {unit.Symbol}";
    }

    private StandardAir[] CountedFrom() => Altitude is null or 0 ? [AtTheSea] : [this, AtTheSea];

    private string Said(Unit unit) => $"{Shown(Pascals, unit, "G4")} {Place}";
}
