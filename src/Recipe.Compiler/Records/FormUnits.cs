using System.Globalization;
using UnitsNet;

namespace Recipe.Compiler.Records;

/// <summary>Quantities as lines of the language, in the units of the shop, with as many digits as a bench can read.</summary>
internal sealed class FormUnits(Model.UnitSystem units)
{
    private readonly bool _us = units == Model.UnitSystem.Us;

    public string Of(Mass mass) => _us ? Say(mass.Ounces, 2, "oz") : mass.Kilograms >= 10 ? Say(mass.Kilograms, 2, "kg") : Say(mass.Grams, 1, "g");

    public string Of(Length thickness) => _us ? Say(thickness.Inches, 4, "in") : Say(thickness.Millimeters, 2, "mm");

    public string Of(Area area) => _us ? Say(area.SquareFeet, 3, "ft2") : Say(area.SquareMeters, 4, "m2");

    public string Of(Temperature temperature) => _us ? Say(temperature.DegreesFahrenheit, 1, "degF") : Say(temperature.DegreesCelsius, 1, "degC");

    public string Of(Pressure pressure) => _us ? Say(pressure.InchesOfMercury, 2, "inHg") : Say(pressure.Millibars, 1, "mbar");

    public static string Of(Duration time) => time.Hours >= 3 ? Say(time.Hours, 1, "h") : Say(time.Minutes, 0, "min");

    public static string Minutes(Duration time) => Say(time.Minutes, 1, "min");

    public static string Share(double share) => Say(share * 100, 1, "%");

    private static string Say(double value, int decimals, string unit) =>
        $"{Math.Round(value, decimals).ToString("0.####", CultureInfo.InvariantCulture)} {unit}";
}
