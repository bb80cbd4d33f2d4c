using System.Collections.Immutable;
using Recipe.Planning;
using UnitsNet;

namespace Recipe.Documents.Histories;

/// <summary>A figure of every build that a run chart can be drawn of.</summary>
/// <param name="Name">Its name: <c>resin</c>.</param>
/// <param name="Title">What it is, in words.</param>
/// <param name="Value">Its value, SI; null when the record does not tell.</param>
/// <param name="Say">A value with its unit.</param>
/// <param name="Shown">The number on the axis.</param>
/// <param name="Unit">The unit of the axis.</param>
internal sealed record RunFigure(
    string Name, string Title, Func<LoggedBuild, double?> Value, Func<QuantityText, double, string> Say, Func<QuantityText, double, double> Shown, Func<QuantityText, string> Unit)
{
    public static RunFigure MassFigure { get; } = new(
        "mass", "mass", build => build.Record.Mass?.Value.Kilograms, (text, si) => text.Weight(Mass.FromKilograms(si)).Main,
        (text, si) => text.ScaleUnit == "oz" ? Mass.FromKilograms(si).Ounces : si * 1000, text => text.ScaleUnit);

    /// <summary>All of them.</summary>
    public static ImmutableArray<RunFigure> All { get; } =
    [
        MassFigure,
        new("resin", "resin share", build => ResinFound.Share(build.Record, build.Planned), (_, si) => QuantityText.Share(si), (_, si) => si * 100, _ => "%"),
        new(
            "thickness", "thickness", build => build.Record.Thickness.IsEmpty ? null : build.Record.Thickness.Average(one => one.Value.Meters),
            (text, si) => text.Thickness(Length.FromMeters(si)).Main, (text, si) => text.ThicknessUnit == "in" ? Length.FromMeters(si).Inches : si * 1000, text => text.ThicknessUnit),
        new(
            "leak", "rise in the leak check", build => build.Record.Rise?.Value.Pascals, (text, si) => text.Pressure(Pressure.FromPascals(si)).Main,
            (text, si) => text.PressureUnit == "inHg" ? Pressure.FromPascals(si).InchesOfMercury : si / 100, text => text.PressureUnit),
    ];

    /// <summary>The figure of that name.</summary>
    /// <exception cref="ArgumentException">There is none.</exception>
    public static RunFigure Of(string name) => All.FirstOrDefault(figure => figure.Name == name) ?? throw new ArgumentException($"There is no run chart of '{name}'.", nameof(name));
}
