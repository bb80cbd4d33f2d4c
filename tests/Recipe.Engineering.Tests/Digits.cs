using System.Globalization;

namespace Recipe.Engineering.Tests;

/// <summary>Comparisons of computed numbers with published ones.</summary>
internal static class Digits
{
    /// <summary>The number agrees with a printed one in every printed digit: within half a unit of the last.</summary>
    internal static void AsPrinted(string printed, double actual)
    {
        double expected = double.Parse(printed, CultureInfo.InvariantCulture);
        int point = printed.IndexOf('.', StringComparison.Ordinal);
        int decimals = point < 0 ? 0 : printed.Length - point - 1;
        double half = 0.5 * Math.Pow(10, -decimals);
        Assert.True(
            Math.Abs(actual - expected) <= half * (1 + 1e-9),
            string.Create(CultureInfo.InvariantCulture, $"printed {printed}, computed {actual:R}"));
    }

    /// <summary>The number agrees with another one to a relative error; 1e-9 where both are exact formulas.</summary>
    internal static void Close(double expected, double actual, double relative = 1e-9) =>
        Assert.True(
            IsClose(expected, actual, relative),
            string.Create(CultureInfo.InvariantCulture, $"expected {expected:R}, computed {actual:R}"));

    internal static bool IsClose(double expected, double actual, double relative = 1e-9) =>
        Math.Abs(actual - expected) <= relative * Math.Max(Math.Abs(expected), double.Epsilon);
}
