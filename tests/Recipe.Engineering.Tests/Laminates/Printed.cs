using System.Globalization;

namespace Recipe.Engineering.Tests;

/// <summary>Comparisons with published figures that are printed with a power of ten.</summary>
internal static class Printed
{
    /// <summary>The number agrees with a printed one in every printed digit: within half a unit of the last.</summary>
    internal static void Agrees(string printed, double actual)
    {
        double expected = double.Parse(printed, CultureInfo.InvariantCulture);
        Assert.True(
            Math.Abs(actual - expected) <= HalfUnit(printed) * (1 + 1e-9),
            string.Create(CultureInfo.InvariantCulture, $"printed {printed}, computed {actual:R}"));
    }

    /// <summary>A triple agrees with three printed numbers, separated by blanks.</summary>
    internal static void Agrees(string printed, PlaneVector actual)
    {
        string[] all = Split(printed, 3);
        Agrees(all[0], actual.X);
        Agrees(all[1], actual.Y);
        Agrees(all[2], actual.XY);
    }

    /// <summary>A matrix agrees with its six printed entries 11 12 16 22 26 66; where 0 is printed it is nil beside its largest entry.</summary>
    internal static void Agrees(string printed, PlaneMatrix actual) =>
        ForEach(printed, actual, (expected, entry, largest) =>
        {
            if (expected == "0")
            {
                Assert.True(Math.Abs(entry) <= 1e-9 * largest, string.Create(CultureInfo.InvariantCulture, $"printed 0, computed {entry:R}"));
            }
            else
            {
                Agrees(expected, entry);
            }
        });

    /// <summary>
    /// A matrix agrees with six entries to an error relative to each, or in every printed digit where those are coarser; where 0 is
    /// stated, to its largest entry.
    /// </summary>
    internal static void Close(string stated, PlaneMatrix actual, double relative) =>
        ForEach(stated, actual, (expected, entry, largest) =>
        {
            double value = double.Parse(expected, CultureInfo.InvariantCulture);
            double error = value == 0 ? relative * largest : Math.Max(relative * Math.Abs(value), HalfUnit(expected));
            Assert.True(
                Math.Abs(entry - value) <= error,
                string.Create(CultureInfo.InvariantCulture, $"stated {expected}, computed {entry:R}"));
        });

    /// <summary>Two matrices agree, entry by entry, to an error relative to the largest of them.</summary>
    internal static void Same(PlaneMatrix expected, PlaneMatrix actual, double relative = 1e-9) =>
        Assert.True(IsSame(expected, actual, relative), $"expected {expected}, computed {actual}");

    internal static bool IsSame(PlaneMatrix expected, PlaneMatrix actual, double relative = 1e-9) =>
        Largest(expected + (-1 * actual)) <= relative * Math.Max(Largest(expected), double.Epsilon);

    internal static double Largest(PlaneMatrix m) => Entries(m).Max(Math.Abs);

    internal static double[] Entries(PlaneMatrix m) => [m.M11, m.M12, m.M16, m.M22, m.M26, m.M66];

    private static double HalfUnit(string printed)
    {
        int e = printed.IndexOf('e', StringComparison.Ordinal);
        string mantissa = e < 0 ? printed : printed[..e];
        int power = e < 0 ? 0 : int.Parse(printed[(e + 1)..], CultureInfo.InvariantCulture);
        int point = mantissa.IndexOf('.', StringComparison.Ordinal);
        return 0.5 * Math.Pow(10, power - (point < 0 ? 0 : mantissa.Length - point - 1));
    }

    private static void ForEach(string printed, PlaneMatrix actual, Action<string, double, double> check)
    {
        string[] all = Split(printed, 6);
        double[] entries = Entries(actual);
        for (int i = 0; i < 6; i++)
        {
            check(all[i], entries[i], Largest(actual));
        }
    }

    private static string[] Split(string printed, int count)
    {
        string[] all = printed.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(count, all.Length);
        return all;
    }
}
