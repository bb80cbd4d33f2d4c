using UnitsNet;

namespace Recipe.Engineering;

/// <summary>A glass transition curve and a brake laid through the data sheet's glass transition after a named cure.</summary>
/// <param name="Curve">Glass transition over the degree of cure.</param>
/// <param name="Brake">The brake; null where there is none.</param>
/// <param name="Sought">Glass transition on the data sheet.</param>
/// <param name="Reached">
/// Where the sheet's cure ends with this curve and brake. When it does not go through, the reachable glass transition nearest to the
/// sheet's: kinetics, limit and sheet contradict each other, and a measurement or the maker must decide.
/// </param>
/// <param name="Degree">Degree of cure there.</param>
public sealed record GlassTransitionFit(
    DiBenedetto Curve, DiffusionBrake? Brake, Temperature Sought, Temperature Reached, Ratio Degree)
{
    private const int Halvings = 14;
    private const double Near = 0.05;
    private static readonly double[] UncuredCelsius = [-35, -50, -20, -70, 0, -100, 20];

    /// <summary>Whether the cure ends within 0.1 K of what the data sheet says.</summary>
    public bool GoesThrough => Math.Abs(Reached.Kelvins - Sought.Kelvins) <= 2 * Near;

    internal static GlassTransitionFit OfUncured(
        CureKinetics kinetics, CureSchedule soak, Temperature sought, Temperature limit, DiffusionBrake? brake, double lambda)
    {
        Check(kinetics, soak, sought, limit);
        double highest = Math.Min(20, limit.DegreesCelsius - 1);
        GlassTransitionFit Try(double celsius) =>
            Of(kinetics, soak, sought, new DiBenedetto(Temperature.FromDegreesCelsius(celsius), limit, lambda), brake);

        // Braked cures do not rise evenly with the uncured Tg: look outwards from the usual one for a pair that straddles.
        List<(double At, GlassTransitionFit Fit)> tried = [];
        foreach (double celsius in UncuredCelsius)
        {
            if (celsius > highest)
            {
                continue;
            }

            GlassTransitionFit fit = Try(celsius);
            if (Math.Abs(fit.Miss) <= Near)
            {
                return fit;
            }

            int place = tried.FindIndex(one => one.At > celsius);
            place = place < 0 ? tried.Count : place;
            tried.Insert(place, (celsius, fit));
            for (int low = Math.Max(0, place - 1); low < Math.Min(place + 1, tried.Count - 1); low++)
            {
                if (tried[low].Fit.Miss * tried[low + 1].Fit.Miss < 0)
                {
                    return Halve(tried[low].At, tried[low + 1].At, tried[low].Fit, tried[low + 1].Fit, Try);
                }
            }
        }

        return tried.Count > 0 ? tried.MinBy(one => Math.Abs(one.Fit.Miss)).Fit : Try(highest);
    }

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
        CureKinetics kinetics, CureSchedule soak, Temperature sought, DiBenedetto curve, DiffusionBrake? brake)
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
