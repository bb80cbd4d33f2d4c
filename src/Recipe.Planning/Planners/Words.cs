using System.Globalization;

namespace Recipe.Planning.Planners;

/// <summary>Short text for labels: three figures, a decimal point, no culture.</summary>
internal static class Words
{
    public static string Area(double squareMetres) => squareMetres < 0.1
        ? $"{Number(squareMetres * 1e4)} cm2"
        : $"{Number(squareMetres)} m2";

    public static string Grams(double kilograms) => $"{Number(kilograms * 1e3)} g";

    public static string Millilitres(double cubicMetres) => $"{Number(cubicMetres * 1e6)} mL";

    public static string Millimetres(double metres) => $"{Number(metres * 1e3)} mm";

    public static string Percent(double share) => $"{Number(share * 100)} %";

    /// <summary>Three figures where they matter, never an exponent.</summary>
    public static string Number(double value)
    {
        if (value == 0 || !double.IsFinite(value))
        {
            return value.ToString(CultureInfo.InvariantCulture);
        }

        var decimals = Math.Clamp(2 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, 6);
        return Math.Round(value, decimals).ToString("0.######", CultureInfo.InvariantCulture);
    }
}
