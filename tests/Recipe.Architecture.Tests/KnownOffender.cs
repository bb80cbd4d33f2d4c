using System.Globalization;

namespace Recipe.Architecture.Tests;

/// <summary>Breaks the rules of the pure layers on purpose, so that the scan of assemblies can be shown to see it.</summary>
internal static class KnownOffender
{
    public static string Touch()
    {
        Thread.Sleep(0);
        Console.Error.Flush();
        var unseeded = new Random();
        var seeded = new Random(1);
        return string.Create(
            CultureInfo.CurrentCulture,
            $"{File.Exists("none")}{DateTime.Now}{unseeded.Next()}{seeded.Next()}{Environment.ProcessorCount}{UnitsNet.Mass.Parse("1 kg", null)}");
    }

    public static IEnumerable<int> Iterate()
    {
        yield return 1;
    }
}
