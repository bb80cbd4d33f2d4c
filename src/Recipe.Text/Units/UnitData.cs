namespace Recipe.Text.Units;

/// <summary>One row of the unit table: the canonical spelling, other spellings read as the same, and the SI factor.</summary>
internal readonly record struct UnitRow(string Symbol, string[] Synonyms, Dimension Dimension, double Factor, double Offset = 0, UnitScale Scale = UnitScale.Proportional);

/// <summary>
/// The units of the trade, as data. Factors follow from the exact definitions in NIST SP 811 (2008) appendix B: inch 25.4 mm,
/// pound 0.453 592 37 kg, US gallon 231 in3, standard gravity 9.806 65 m/s2; the conventional inch of mercury is 3386.389 Pa.
/// Anything with a slash or a dot (<c>oz/yd2</c>, <c>mPa.s</c>, <c>EUR/kg</c>) is put together from these.
/// </summary>
internal static class UnitData
{
    private const double Inch = 0.0254;
    private const double Foot = 12 * Inch;
    private const double Yard = 36 * Inch;
    private const double Pound = 0.45359237;
    private const double Ounce = Pound / 16;
    private const double Gallon = 231 * Inch * Inch * Inch;
    private const double PoundForce = Pound * 9.80665;
    private const double Psi = PoundForce / (Inch * Inch);

    public static readonly UnitRow[] Rows =
    [
        new("m", ["metre", "meter", "metres", "meters"], DimensionNames.Length, 1),
        new("cm", [], DimensionNames.Length, 0.01),
        new("mm", ["millimetre", "millimeter"], DimensionNames.Length, 0.001),
        new("um", ["µm", "μm", "micron", "microns"], DimensionNames.Length, 1e-6),
        new("km", [], DimensionNames.Length, 1000),
        new("in", ["inch", "inches"], DimensionNames.Length, Inch),
        new("ft", ["foot", "feet"], DimensionNames.Length, Foot),
        new("yd", ["yard", "yards"], DimensionNames.Length, Yard),
        new("mil", ["thou"], DimensionNames.Length, Inch / 1000),

        new("m2", ["m²", "sqm"], DimensionNames.Area, 1),
        new("cm2", ["cm²"], DimensionNames.Area, 1e-4),
        new("mm2", ["mm²"], DimensionNames.Area, 1e-6),
        new("dm2", ["dm²"], DimensionNames.Area, 1e-2),
        new("in2", ["in²", "sqin"], DimensionNames.Area, Inch * Inch),
        new("ft2", ["ft²", "sqft"], DimensionNames.Area, Foot * Foot),
        new("yd2", ["yd²", "sqyd"], DimensionNames.Area, Yard * Yard),

        new("m3", ["m³"], DimensionNames.Volume, 1),
        new("cm3", ["cm³", "cc"], DimensionNames.Volume, 1e-6),
        new("mm3", ["mm³"], DimensionNames.Volume, 1e-9),
        new("L", ["l", "litre", "liter", "litres", "liters"], DimensionNames.Volume, 1e-3),
        new("mL", ["ml"], DimensionNames.Volume, 1e-6),
        new("in3", ["in³"], DimensionNames.Volume, Inch * Inch * Inch),
        new("ft3", ["ft³"], DimensionNames.Volume, Foot * Foot * Foot),
        new("gal", [], DimensionNames.Volume, Gallon),
        new("qt", [], DimensionNames.Volume, Gallon / 4),
        new("floz", [], DimensionNames.Volume, Gallon / 128),

        new("kg", [], DimensionNames.Mass, 1),
        new("g", ["gram", "grams"], DimensionNames.Mass, 1e-3),
        new("mg", [], DimensionNames.Mass, 1e-6),
        new("lb", ["lbs"], DimensionNames.Mass, Pound),
        new("oz", [], DimensionNames.Mass, Ounce),

        new("s", ["sec", "second", "seconds"], DimensionNames.Time, 1),
        new("min", ["minute", "minutes"], DimensionNames.Time, 60),
        new("h", ["hr", "hour", "hours"], DimensionNames.Time, 3600),
        new("d", ["day", "days"], DimensionNames.Time, 86400),
        new("week", ["weeks"], DimensionNames.Time, 7 * 86400),
        new("month", ["months"], DimensionNames.Time, 365.25 / 12 * 86400),
        new("year", ["years"], DimensionNames.Time, 365.25 * 86400),

        // The masculine ordinal and the ring above are what some keyboards give for the degree sign.
        new("degC", ["°C", "℃", "ºC", "˚C"], DimensionNames.Temperature, 1, 273.15, UnitScale.Offset),
        new("degF", ["°F", "℉", "ºF", "˚F"], DimensionNames.Temperature, 5.0 / 9.0, 459.67 * 5.0 / 9.0, UnitScale.Offset),
        new("K", [], DimensionNames.Temperature, 1),
        new("degC-diff", [], DimensionNames.Temperature, 1),
        new("degF-diff", [], DimensionNames.Temperature, 5.0 / 9.0),

        new("deg", ["°", "º", "˚"], DimensionNames.Angle, Math.PI / 180),

        new("N", ["newton", "newtons"], DimensionNames.Force, 1),
        new("kN", [], DimensionNames.Force, 1000),
        new("lbf", [], DimensionNames.Force, PoundForce),

        new("Pa", [], DimensionNames.Pressure, 1),
        new("hPa", [], DimensionNames.Pressure, 100),
        new("kPa", [], DimensionNames.Pressure, 1000),
        new("MPa", [], DimensionNames.Pressure, 1e6),
        new("GPa", [], DimensionNames.Pressure, 1e9),
        new("mPa", [], DimensionNames.Pressure, 1e-3),
        new("mbar", [], DimensionNames.Pressure, 100),
        new("bar", [], DimensionNames.Pressure, 1e5),
        new("atm", [], DimensionNames.Pressure, 101325),
        new("psi", [], DimensionNames.Pressure, Psi),
        new("ksi", [], DimensionNames.Pressure, Psi * 1e3),
        new("Msi", [], DimensionNames.Pressure, Psi * 1e6),
        new("inHg", [], DimensionNames.Pressure, 3386.389),
        new("mmHg", [], DimensionNames.Pressure, 133.3224),
        new("torr", ["Torr"], DimensionNames.Pressure, 101325.0 / 760.0),

        new("cP", [], DimensionNames.Viscosity, 1e-3),
        new("cfm", [], DimensionNames.VolumeFlow, Foot * Foot * Foot / 60),
        new("gsm", [], DimensionNames.ArealWeight, 1e-3),

        new("J", [], DimensionNames.Energy, 1),
        new("kJ", [], DimensionNames.Energy, 1e3),
        new("W", [], DimensionNames.Power, 1),
        new("kW", [], DimensionNames.Power, 1e3),

        new("tex", [], DimensionNames.LinearDensity, 1e-6),
        new("dtex", [], DimensionNames.LinearDensity, 1e-7),
        new("denier", [], DimensionNames.LinearDensity, 1e-3 / 9000),

        new("%", ["percent"], Dimension.None, 0.01),
        new("ppm", [], Dimension.None, 1e-6),
    ];

    /// <summary>
    /// Currency codes of ISO 4217 that a price may carry. Codes only: no rates, so two currencies are never added.
    /// </summary>
    public static readonly string[] Currencies =
    [
        "AUD", "BRL", "CAD", "CHF", "CNY", "CZK", "DKK", "EUR", "GBP", "HKD", "HUF", "IDR", "ILS", "INR", "ISK", "JPY", "KRW",
        "MXN", "MYR", "NOK", "NZD", "PHP", "PLN", "RON", "RSD", "SEK", "SGD", "THB", "TRY", "TWD", "UAH", "USD", "VND", "ZAR",
    ];
}
