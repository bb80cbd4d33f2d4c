using Recipe.Model;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>Short questions about cores.</summary>
internal static class CoreFacts
{
    /// <summary>The dampest air that core is kept in, relative humidity of 0 to 1 (common practice).</summary>
    public const double DampestStore = 0.65;

    /// <summary>The cores of the stack, mould side first.</summary>
    public static IEnumerable<CoreItem> Cores(this Part part) => part.Stack.OfType<CoreItem>();

    /// <summary>Whether it is honeycomb with open cells.</summary>
    public static bool IsHoneycomb(this Core core) =>
        core.Family?.Contains("honeycomb", StringComparison.OrdinalIgnoreCase) == true && !core.Family.Contains("filled", StringComparison.OrdinalIgnoreCase);

    /// <summary>Whether it drinks water from the air as wood and paper do.</summary>
    public static bool IsThirsty(this Core core) =>
        core.Family is { } family && (family.Contains("balsa", StringComparison.OrdinalIgnoreCase) || family.Contains("paper", StringComparison.OrdinalIgnoreCase)
            || family.Contains("cork", StringComparison.OrdinalIgnoreCase) || family.Contains("wood", StringComparison.OrdinalIgnoreCase));

    /// <summary>Whether the part is laid wet, so that air has to get out from under the core.</summary>
    public static bool IsLaidWet(this Part part) => part.Process.Value is Process.Hand or Process.Bagged;

    /// <summary>The foam whose sheet is nearest in thickness, by name where two are as near; null when there is none.</summary>
    public static Core? NearestFoam(this RecipeModel model, Length? thickness) => model.Materials.Values
        .OfType<Core>()
        .Where(c => c.Family?.EndsWith("foam", StringComparison.Ordinal) == true && c.CompressiveStrength is { Value.Megapascals: > 0.5 })
        .OrderBy(c => Math.Abs((c.Thickness?.Value.Meters ?? 1) - (thickness?.Meters ?? 0)))
        .ThenBy(c => c.Name, StringComparer.Ordinal)
        .FirstOrDefault();
}
