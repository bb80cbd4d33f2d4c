using System.Collections.Immutable;
using Recipe.Semantics.Values;
using Recipe.Text;
using Recipe.Text.Findings;

namespace Recipe.Semantics.Findings;

/// <summary>A unit whose dimension is not that of the line.</summary>
public static class WrongKindOfUnit
{
    /// <summary>What is the same for every such finding.</summary>
    public static FindingDescriptor Descriptor { get; } = new()
    {
        Code = "RC1102",
        Name = "wrong-kind-of-unit",
        Severity = Severity.Error,
        Title = "The unit is of another kind",
        Reason = "The number then means something else than the line says.",
        Remedy = "Use a unit of the kind that the line takes, or move the figure to the line it belongs to.",
        Source = "common practice",
        BadExample =
            """
            fabric my-twill {
              areal-weight 163 g/m2
              heat-limit 120 g
            }

            """,
        GoodExample =
            """
            fabric my-twill {
              areal-weight 163 g/m2
              heat-limit 120 degC
            }

            """,
    };

    internal static Finding Create(SourceSpan where, string head, string noun, ImmutableArray<string> units, string written, string given, SourceSpan? unit = null)
    {
        var finding = Finding.Of(Descriptor, where, $"`{head}` takes {noun} ({Numbers.Or(units)}), but {written} is {Numbers.A(given)}.");

        // The nearest fitting unit begins like the one that stands there: g -> g/m2.
        var near = unit is { } u ? units.FirstOrDefault(x => x.StartsWith(u.Text + "/", StringComparison.Ordinal)) : null;
        return near is null
            ? finding
            : finding with { Fixes = [new Fix($"Write {near}", FixSafety.NeedsALook, new TextEdit(unit!.Value, near))] };
    }

    /// <summary>A difference where a temperature is wanted.</summary>
    internal static Finding Difference(SourceSpan where, string head, string written, double kelvin, bool canReplace)
    {
        var celsius = Numbers.Format(Math.Round(kelvin - 273.15, 2)) + " degC";
        return Finding.Of(Descriptor, where, $"`{head}` takes a temperature (degC or degF), but {written} is a temperature difference.") with
        {
            Fixes = canReplace && kelvin >= 200
                ? [new Fix($"Write {celsius}", FixSafety.NeedsALook, new TextEdit(where, celsius))]
                : [],
        };
    }

    /// <summary>A unit where a plain number is wanted.</summary>
    internal static Finding NoUnit(SourceSpan where, string head, string noun, string written, SourceSpan? unit) =>
        Finding.Of(Descriptor, where, $"`{head}` takes {noun} without a unit, but {written} has one.") with
        {
            Fixes = unit is { } u ? [new Fix("Take the unit off", FixSafety.NeedsALook, new TextEdit(u, ""))] : [],
        };
}
