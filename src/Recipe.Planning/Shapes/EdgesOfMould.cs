using UnitsNet;

namespace Recipe.Planning;

/// <summary>
/// The tightest inside corner and the draft of a mould: what its block says, else what was measured on a surface from a file. A surface that is made of
/// numbers, such as a box, is drawn with sharp edges and upright walls; that says nothing of the mould.
/// </summary>
public static class EdgesOfMould
{
    private const double SharpMm = 0.05;
    private const double UprightDegrees = 0.05;

    /// <summary>The smallest inside radius and whether the mould states it; null when nobody knows.</summary>
    /// <param name="plan">The plan.</param>
    public static (Length Radius, bool IsStated)? InsideRadius(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Part.Mould?.InsideRadius is { } stated ? (stated.Value, true)
            : plan.Shape is { Model.Measures.SmallestInsideRadius: { } found } shape && (shape.IsMeasured || found.Millimeters > SharpMm) ? (found, false)
            : null;
    }

    /// <summary>The smallest draft against the pull and whether the mould states it; null when nobody knows.</summary>
    /// <param name="plan">The plan.</param>
    public static (Angle Draft, bool IsStated)? Draft(Plan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return plan.Part.Mould?.Draft is { } stated ? (stated.Value, true)
            : plan.Shape is { Model.Measures.Draft: { } found } shape && (shape.IsMeasured || found.Smallest.Degrees > UprightDegrees) ? (found.Smallest, false)
            : null;
    }
}
