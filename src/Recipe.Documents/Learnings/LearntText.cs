using Recipe.Documents.Quantities;
using Recipe.Engineering;
using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Units;
using UnitsNet;
using UnitSystem = Recipe.Model.UnitSystem;

namespace Recipe.Documents.Learnings;

/// <summary>Learnt figures as people read them, and as lines of a shop.</summary>
internal sealed class LearntText(Shop? shop)
{
    private readonly bool _us = shop?.Units == UnitSystem.Us;

    /// <summary>What the figure is, in words.</summary>
    public static string NameOf(LearntFigure figure) => figure.Kind switch
    {
        LearntKind.ResinContent => $"resin in {figure.Of}{(figure.Process is { } process ? $", {Process(process)}" : "")}",
        LearntKind.Pickup => $"resin taken by {figure.Of}",
        LearntKind.Pace => figure.Of is { } by ? $"pace of {by}" : "pace of wetting out",
        LearntKind.Loss => "left in pots, brush and roller",
        LearntKind.LeakRise => "rise in the leak check",
        _ => $"in the mould with {figure.Of}",
    };

    /// <summary>A value with its unit.</summary>
    public string Say(LearntKind kind, double si) => $"{Number(kind, si)} {UnitOf(kind).Symbol}";

    /// <summary>From a low to a high end with the unit once.</summary>
    public string Say(LearntKind kind, double low, double high) => $"{Number(kind, low)} to {Number(kind, high)} {UnitOf(kind).Symbol}";

    /// <summary>The line of a shop block that holds the figure, its source with it; null for what a shop block has no line for.</summary>
    public string? LineOf(LearntFigure figure)
    {
        if (!figure.IsOfShop || !figure.IsEnough || KeyOf(figure) is not { } key)
        {
            return null;
        }

        var estimate = figure.Estimate!;
        var last = figure.Values.Select(value => value.Build.On).Max();
        var source = $"{Numbers.Whole(estimate.Count)} of our builds{(last is { } day ? $" to {Numbers.Day(day)}" : "")}, 95 % of the next {Say(figure.Kind, Least(figure, estimate), estimate.Mean + estimate.NextHalfWidth)}";
        return $"{key} {Say(figure.Kind, estimate.Mean)}{(figure.Kind == LearntKind.ResinContent ? " by weight" : "")}   source \"{source}\"";
    }

    /// <summary>The words that such a line begins with.</summary>
    public static string? KeyOf(LearntFigure figure) => figure.Kind switch
    {
        LearntKind.ResinContent when figure.Process is { } process => $"resin-content {figure.Of} {Process(process)}",
        LearntKind.Pickup => $"resin-pickup {figure.Of}",
        LearntKind.Pace => "pace",
        LearntKind.Loss => "loss",
        _ => null,
    };

    /// <summary>Lower end of the interval of the next value: nothing here is below 0.</summary>
    public static double Least(LearntFigure figure, Estimate estimate)
    {
        ArgumentNullException.ThrowIfNull(figure);
        return Math.Max(0, estimate.Mean - estimate.NextHalfWidth);
    }

    private string Number(LearntKind kind, double si) => kind switch
    {
        LearntKind.ResinContent => Numbers.AtMost(si * 100, 1),
        LearntKind.LeakRise => Numbers.AtMost(UnitOf(kind).FromSi(si), _us ? 3 : 1),
        LearntKind.Demould => Numbers.AtMost(Duration.FromSeconds(si).Hours, 1),
        _ => Numbers.Significant(UnitOf(kind).FromSi(si), 3),
    };

    private Unit UnitOf(LearntKind kind) => UnitTable.Get((kind, _us) switch
    {
        (LearntKind.ResinContent, _) => "%",
        (LearntKind.Pickup, false) => "g/m2",
        (LearntKind.Pickup, true) => "oz/yd2",
        (LearntKind.Pace, false) => "min/m2",
        (LearntKind.Pace, true) => "min/ft2",
        (LearntKind.Loss, false) => "g",
        (LearntKind.Loss, true) => "oz",
        (LearntKind.LeakRise, false) => "mbar/min",
        (LearntKind.LeakRise, true) => "inHg/min",
        _ => "h",
    });

    private static string Process(Process process) => process.ToString().ToLowerInvariant();
}
