using Recipe.Model;
using Recipe.Planning;
using Recipe.Text.Findings;
using UnitsNet;

namespace Recipe.Checks;

/// <summary>What the checks of parts that are opened or pulled hot share: how cool a part is to be, and how the lines say that it cools first.</summary>
internal static class Cooling
{
    private static readonly Temperature Cool = Temperature.FromDegreesCelsius(50);
    private static readonly Temperature CoolPrepreg = Temperature.FromDegreesCelsius(60);

    /// <summary>The warmest at which a part keeps its shape when the bag or the mould lets go of it (common practice).</summary>
    public static Temperature Wanted(Part part) => part.Process.Value == Process.Prepreg ? CoolPrepreg : Cool;

    /// <summary>Whether a part is warmer than that as a step begins.</summary>
    public static bool IsHot(Part part, CureStepPlan step) => step.From > Wanted(part) + Heat.Rounding;

    /// <summary>Lets the part cool before a step: by a line of its own, or further where the step stands behind the <c>then</c> of a line that cools.</summary>
    /// <param name="steps">The steps of the cure.</param>
    /// <param name="at">Which of them comes after the cooling.</param>
    /// <param name="title">What the fix does.</param>
    /// <param name="degrees">To what it cools: "30 degC".</param>
    /// <param name="manner">What else a line of its own says: " under vacuum", or nothing.</param>
    public static Fix? First(IReadOnlyList<CureStepPlan> steps, int at, string title, string degrees, string manner = "")
    {
        var step = steps[at].Step;
        var line = steps.First(s => s.Step.Where == step.Where).Step;
        return line.LetsVacuumGo
            ? new Fix(title, FixSafety.NeedsALook, Edits.Before(step.Where, $"cool to {degrees}{manner}"))
            : Edits.Fix(title, FixSafety.NeedsALook, FigureEdits.Rewrite(line.Temperature, degrees));
    }
}
