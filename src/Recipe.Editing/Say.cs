using System.Globalization;
using UnitsNet;

namespace Recipe.Editing;

/// <summary>Computed figures, short: three digits at the most, since nobody knows more of them.</summary>
internal static class Say
{
    public static string Of(Mass mass) => mass.Kilograms >= 1 ? $"{Number(mass.Kilograms)} kg" : $"{Number(mass.Grams)} g";

    public static string Of(Length length) => length.Meters >= 1 ? $"{Number(length.Meters)} m" : $"{Number(length.Millimeters)} mm";

    public static string Of(Area area) => area.SquareMeters < 0.01 ? $"{Number(area.SquareCentimeters)} cm2" : $"{Number(area.SquareMeters)} m2";

    public static string Of(Temperature temperature) => $"{Number(Math.Round(temperature.DegreesCelsius))} degC";

    public static string Of(Pressure pressure) => $"{Number(pressure.Millibars)} mbar";

    public static string Of(Duration time)
    {
        var minutes = Math.Round(time.Minutes);
        return minutes < 1 ? $"{Number(time.Seconds)} s"
            : minutes < 120 ? string.Create(CultureInfo.InvariantCulture, $"{minutes} min")
            : minutes < 72 * 60 ? string.Create(CultureInfo.InvariantCulture, $"{Math.Floor(minutes / 60)} h{(minutes % 60 == 0 ? "" : $" {minutes % 60} min")}")
            : string.Create(CultureInfo.InvariantCulture, $"{Math.Round(minutes / 1440, 1)} d");
    }

    public static string Percent(double share) => Number(share * 100) + " %";

    public static string Number(double value)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value.ToString(CultureInfo.InvariantCulture);
        }

        var digits = Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 9);
        return Math.Round(value, digits, MidpointRounding.AwayFromZero).ToString("0.#########", CultureInfo.InvariantCulture);
    }
}
