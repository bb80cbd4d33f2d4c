using System.Globalization;
using UnitsNet;

namespace Recipe.Engineering;

/// <summary>Range checks shared by the calculations, so that every refusal reads alike.</summary>
internal static class Guard
{
    /// <summary>Returns <paramref name="value"/> when it is finite and above zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is zero, negative or not finite.</exception>
    internal static double Positive(double value, string unit, string parameter) =>
        double.IsFinite(value) && value > 0
            ? value
            : throw Refuse(value, unit, parameter, "must be greater than 0");

    /// <summary>Returns <paramref name="value"/> when it is finite and not below zero.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value is negative or not finite.</exception>
    internal static double NotNegative(double value, string unit, string parameter) =>
        double.IsFinite(value) && value >= 0
            ? value
            : throw Refuse(value, unit, parameter, "must not be below 0");

    /// <summary>Returns <paramref name="value"/> when it lies between the two ends, both included.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The value lies outside or is not a number.</exception>
    internal static double Between(double value, double low, double high, string unit, string parameter) =>
        value >= low && value <= high
            ? value
            : throw Refuse(
                value,
                unit,
                parameter,
                string.Create(CultureInfo.InvariantCulture, $"must be from {low:G6} to {high:G6}"));

    /// <summary>Returns the fraction when it lies strictly between 0 and 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The fraction is 0 or less, or 1 or more.</exception>
    internal static double OpenFraction(Ratio ratio, string parameter)
    {
        double value = ratio.DecimalFractions;
        return value > 0 && value < 1
            ? value
            : throw Refuse(value * 100, "%", parameter, "must be more than 0 and less than 100");
    }

    /// <summary>Returns the fraction when it is at least 0 and less than 1.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The fraction is negative, or 1 or more.</exception>
    internal static double FractionBelowOne(Ratio ratio, string parameter)
    {
        double value = ratio.DecimalFractions;
        return value >= 0 && value < 1
            ? value
            : throw Refuse(value * 100, "%", parameter, "must be at least 0 and less than 100");
    }

    /// <summary>Returns the count when it is not below the least allowed.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The count is too small.</exception>
    internal static int AtLeast(int value, int least, string parameter) =>
        value >= least
            ? value
            : throw Refuse(
                value,
                string.Empty,
                parameter,
                string.Create(CultureInfo.InvariantCulture, $"must be at least {least}"));

    /// <summary>Builds the exception for a value out of its range.</summary>
    internal static ArgumentOutOfRangeException Refuse(double value, string unit, string parameter, string rule)
    {
        string suffix = unit.Length == 0 ? string.Empty : " " + unit;
        string message = string.Create(
            CultureInfo.InvariantCulture,
            $"'{parameter}' {rule}{suffix}; it is {value:G9}{suffix}.");
        return new ArgumentOutOfRangeException(parameter, message);
    }
}
