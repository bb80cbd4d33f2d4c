using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A brake laid through the data sheet's glass transition after a named cure, with the curve that it goes with.</summary>
/// <param name="Curve">Glass transition over the degree of cure.</param>
/// <param name="Brake">The brake.</param>
/// <param name="Sought">Glass transition on the data sheet.</param>
/// <param name="Reached">
/// Where the sheet's cure ends with this curve and brake. When it does not go through, the reachable glass transition nearest to the
/// sheet's: kinetics, limit and sheet contradict each other, and a measurement or the maker must decide.
/// </param>
/// <param name="Degree">Degree of cure there.</param>
public sealed record GlassTransitionFit(
    DiBenedetto Curve, DiffusionBrake Brake, Temperature Sought, Temperature Reached, Ratio Degree)
{
    private const int Halvings = 14;
    private const double Near = 0.05;

    /// <summary>Whether the cure ends within 0.1 K of what the data sheet says.</summary>
    public bool GoesThrough => Math.Abs(Reached.Kelvins - Sought.Kelvins) <= 2 * Near;

    internal static GlassTransitionFit OfBrake(
        CureKinetics kinetics, CureSchedule soak, Temperature sought, Temperature limit, Temperature uncured, double lambda)
    {
        Check(kinetics, soak, sought, limit);
        DiBenedetto curve = new(uncured, limit, lambda);
        GlassTransitionFit Try(double power) =>
            Of(kinetics, soak, sought, curve, new DiffusionBrake(Frequency.FromHertz(Math.Pow(10, power))));

        // A weaker brake always ends higher.
        const double strongest = -12;
        const double weakest = 12;
        GlassTransitionFit usual = Try(0);
        if (Math.Abs(usual.Miss) <= Near)
        {
            return usual;
        }

        double end = usual.Miss < 0 ? weakest : strongest;
        GlassTransitionFit last = Try(end);
        return usual.Miss * last.Miss < 0 ? Halve(0, end, usual, last, Try) : last;
    }

    private double Miss => Reached.Kelvins - Sought.Kelvins;

    // Regula falsi would need fewer, but a bisection cannot be fooled by a curve that flattens.
    private static GlassTransitionFit Halve(
        double one, double other, GlassTransitionFit atOne, GlassTransitionFit atOther, Func<double, GlassTransitionFit> attempt)
    {
        for (int i = 0; i < Halvings; i++)
        {
            double middle = (one + other) / 2;
            GlassTransitionFit there = attempt(middle);
            if (Math.Abs(there.Miss) <= Near)
            {
                return there;
            }

            if (there.Miss * atOne.Miss > 0)
            {
                (one, atOne) = (middle, there);
            }
            else
            {
                (other, atOther) = (middle, there);
            }
        }

        return Math.Abs(atOne.Miss) < Math.Abs(atOther.Miss) ? atOne : atOther;
    }

    private static GlassTransitionFit Of(
        CureKinetics kinetics, CureSchedule soak, Temperature sought, DiBenedetto curve, DiffusionBrake brake)
    {
        CureOptions options = new() { GlassTransition = curve, Brake = brake };
        Ratio degree = CureSimulation.EndOf(kinetics, soak, options);
        return new GlassTransitionFit(curve, brake, sought, curve.At(degree), degree);
    }

    private static void Check(CureKinetics kinetics, CureSchedule soak, Temperature sought, Temperature limit)
    {
        ArgumentNullException.ThrowIfNull(kinetics);
        ArgumentNullException.ThrowIfNull(soak);
        CureGuard.Kelvin(limit, nameof(limit));
        CureGuard.Kelvin(sought, "glassTransition");
        if (sought >= limit)
        {
            throw Guard.Refuse(sought.DegreesCelsius, "degC", "glassTransition", "must be below the limiting glass transition");
        }
    }
}
