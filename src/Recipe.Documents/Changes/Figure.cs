using Recipe.Model;
using Recipe.Planning;

namespace Recipe.Documents.Changes;

/// <summary>A figure by which parts and versions of a part are compared, as papers say it.</summary>
/// <param name="Kind">Which figure it is.</param>
/// <param name="Key">What programs call it, with its SI unit: <c>trimmed_mass_kg</c>.</param>
/// <param name="Label">What people call it.</param>
/// <param name="Text">How it is written in the shop's units.</param>
/// <param name="Scale">The unit that the axis of a picture has, given the largest value on it.</param>
/// <param name="InShares">Whether a difference is said in per cent too.</param>
internal sealed record Figure(PartFigure Kind, string Key, string Label, Func<QuantityText, double, string> Text, Func<QuantityText, double, AxisUnit> Scale, bool InShares = false)
{
    /// <summary>The figure in SI, or null when a plan has none.</summary>
    public double? Value(Plan plan) => PlanFigures.Of(Kind, plan);
}

/// <summary>The unit of an axis.</summary>
/// <param name="Name">As it is written behind the label; empty for a plain number.</param>
/// <param name="FromSi">The number in that unit.</param>
internal sealed record AxisUnit(string Name, Func<double, double> FromSi)
{
    /// <summary>A unit that is so many SI units.</summary>
    public static AxisUnit Of(string name, double si) => new(name, value => value / si);
}
