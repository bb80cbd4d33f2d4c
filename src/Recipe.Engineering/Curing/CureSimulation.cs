using UnitsNet;

namespace Recipe.Engineering;

/// <summary>
/// The cure of a resin whose temperature is known: set by a schedule, or read. Thin parts in a mould that they do not warm; what a pot
/// or a thick laminate adds by its own heat is not in it.
/// </summary>
/// <remarks>
/// The degree of cure is good to 1e-6 for the model's constants; what the model is worth for the resin in the tin is another matter.
/// The maker's data sheet, and a witness cup beside the part, win.
/// </remarks>
public static class CureSimulation
{
    /// <summary>The cure along a schedule.</summary>
    /// <param name="kinetics">How fast the resin cures.</param>
    /// <param name="schedule">The part's temperature over time; an empty one gives a curve of no length.</param>
    /// <param name="options">Start, glass transition and brake; none of them when null.</param>
    /// <exception cref="ArgumentOutOfRangeException">A temperature is beyond the model's range, or the start is not from 0 to 1.</exception>
    /// <exception cref="ArgumentException">There is a brake and no glass transition, or the rates are too high to be followed.</exception>
    public static CureCurve Along(CureKinetics kinetics, CureSchedule schedule, CureOptions? options = null)
    {
        options ??= new CureOptions();
        Reaction reaction = new(kinetics, options);
        ArgumentNullException.ThrowIfNull(schedule);
        return Run(reaction, ThermalPath.Of(schedule, kinetics, options.IdleBelowRange), options);
    }

    /// <summary>Degree of cure at the end of a schedule, without the curve.</summary>
    internal static Ratio EndOf(CureKinetics kinetics, CureSchedule schedule, CureOptions options) =>
        Ratio.FromDecimalFractions(CureSolver.Run(
            new Reaction(kinetics, options), ThermalPath.Of(schedule, kinetics, options.IdleBelowRange), null));

    private static CureCurve Run(in Reaction reaction, ThermalPath path, CureOptions options)
    {
        List<CureStep> steps = new(64);
        double end = CureSolver.Run(reaction, path, steps);
        return new CureCurve(steps, reaction.Start, end, path.Last, options.GlassTransition);
    }
}
